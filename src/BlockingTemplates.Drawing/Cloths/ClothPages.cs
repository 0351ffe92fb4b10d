using System.Globalization;
using BlockingTemplates.Drawing.Pages;
using BlockingTemplates.Drawing.Writing;
using BlockingTemplates.Engine;
using BlockingTemplates.Engine.Pins.Settling;
using BlockingTemplates.Engine.Shapes;
using BlockingTemplates.Engine.Sheets;

namespace BlockingTemplates.Drawing.Cloths;

/// <summary>How the cloth lies once all pins are set: stretch, loads, the free edge, and what is known of the cloth.</summary>
public static class ClothPages
{
    private const double SlackMm = 5;
    private const double PairLeastMm = 110;
    private const double RoomMm = 30;

    /// <summary>The pages; none where the cloth was not computed.</summary>
    public static IReadOnlyList<Page> Draw(Plan plan, Paper reading)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(reading);
        if (plan.Cloth is not { } cloth)
            return [];
        PageFlow Flow() => new(reading.Short.Millimetres, reading.Long.Millimetres, "cloth", "How the cloth lies");
        var flow = Flow();
        var shape = Box.Around(plan.Pins.Pinned.Ring(0.5));
        Stretch(plan, cloth, flow, shape);
        flow.NewPage();
        // The words are set once for their height, so that the pictures get all room they leave.
        var room = flow.Column.Height - Height(Flow(), f => Tables(plan, cloth, f)) - Height(Flow(), f => PinWords(plan, cloth, 2, f)) - SlackMm;
        Pins(plan, cloth, flow, shape.Grown(RoomMm), Math.Max(room, PairLeastMm));
        Tables(plan, cloth, flow);
        return flow.Finish();
    }

    /// <summary>How much of a page is filled, in millimetres; pages that follow count whole.</summary>
    private static double Height(PageFlow trial, Action<PageFlow> write)
    {
        write(trial);
        var last = trial.Column.Height - trial.Left;
        return ((trial.Finish().Count - 1) * trial.Column.Height) + last;
    }

    private static void Stretch(Plan plan, ClothPlan cloth, PageFlow flow, Box shape)
    {
        var scale = ToneScale.For(cloth.Stretch);
        var regions = NamedRegion.Of(cloth);
        flow.Paragraph("How the cloth lies", TextStyle.Title);
        if (cloth.IsBestSoFar)
            flow.Paragraph("The best found so far: the time for computing was up.", TextStyle.Strong);
        flow.Paragraph("Computed for the piece held by all its pins. Grey and figures tell how much longer the cloth is there than at rest; below 0 it is shorter.", TextStyle.Body);
        string[] words = [.. regions.Select(r => r.Words(plan, cloth))];
        if (regions.Count == 0)
            words = [cloth.Material.Took is null ? "No region stays slack." : "No region stays slack, and none is stretched further than your swatch took."];
        flow.Gap(1);
        StretchLegend.Draw(flow, scale, regions);
        var reserve = Height(new(flow.Paper.Width, flow.Paper.Height, "", ""), f => Regions(plan, cloth, words, f)) + SlackMm;
        var rows = RowDirection.Of(plan);
        PicturePair.Draw(
            flow,
            shape,
            flow.Left - reserve,
            (b => RowDirection.Caption("Along the rows", rows, b), b => new StretchPicture(plan, cloth, regions, scale, b).Draw(c => c.Along)),
            (b => RowDirection.Caption("Across the rows", rows.TurnedLeft, b), b => new StretchPicture(plan, cloth, regions, scale, b).Draw(c => c.Across)));
        flow.Gap(2);
        Regions(plan, cloth, words, flow);
    }

    private static void Regions(Plan plan, ClothPlan cloth, IEnumerable<string> words, PageFlow flow)
    {
        foreach (var line in words)
            flow.Point(line);
        flow.Heading("What the cloth was taken to be");
        flow.Paragraph(cloth.Material.Told, TextStyle.Small);
        flow.Gap(1.5);
        if (ClothWords.Ends(plan, cloth) is { } ends)
            flow.Point(ends);
    }

    private static void Pins(Plan plan, ClothPlan cloth, PageFlow flow, Box shape, double mostMm)
    {
        var isOff = cloth.OffLine.Count > 0 || cloth.Gaps.Any(g => g.Determined == false);
        var enlarged = 1.0;
        PicturePair.Draw(
            flow,
            shape,
            mostMm,
            (b => Caption("Load of each pin", b), b => LoadPicture.Draw(plan, cloth, b)),
            isOff ? (b => Caption("Where the free edge lies", b), FreeEdge) : null);
        flow.Gap(1);
        PinWords(plan, cloth, enlarged, flow);

        IEnumerable<Element> FreeEdge(Box box)
        {
            var picture = new FreeEdgePicture(plan, cloth, box);
            enlarged = picture.Enlarged;
            return picture.Draw();
        }
    }

    private static void PinWords(Plan plan, ClothPlan cloth, double enlarged, PageFlow flow)
    {
        var heavy = ClothWords.LargestLoad(cloth) is { } load ? $": the longest bar is {load}" : "";
        var most = plan.Pins.Marks.MaxBy(m => cloth.LoadShares[m.Number - 1])!;
        var isSlack = cloth.Gaps.Any(g => g.Determined == false);
        flow.Paragraph(string.Create(CultureInfo.InvariantCulture, $"Load: bars as long as the pull on the pin, the longest at mark {most.Number}{heavy}; the heaviest are numbered. The mean is {ToneScale.Percent(cloth.LoadShares.Average())} of the largest."), TextStyle.Small);
        if (cloth.OffLine.Count == 0 && !isSlack)
        {
            flow.Paragraph("The free edge lies nowhere more than 1 mm off its line.", TextStyle.Small);
            return;
        }

        var larger = enlarged > 1 ? string.Create(CultureInfo.InvariantCulture, $", that distance drawn {enlarged:0} times as large as the piece") : "";
        var off = cloth.OffLine.Count == 0 ? "" : $" Heavy line: the edge where it lies more than 1 mm off{larger}; the worst gap of each edge stands with its two marks.";
        flow.Paragraph($"Free edge: dots are marks, the dashed line is the one asked for.{off}{(isSlack ? " Broad grey: slack, the line there is not determined." : "")}", TextStyle.Small);
    }

    private static void Tables(Plan plan, ClothPlan cloth, PageFlow flow)
    {
        StraightnessTable.Draw(plan, cloth, flow);
        AnchorTable.Draw(plan, cloth, flow);
    }

    private static IEnumerable<Element> Caption(string words, Box box) => [new TextElement(words, new(box.Left, box.Lower + 2.2), TextStyle.Strong.SizeMm, FontWeight.Bold)];
}
