using System.Globalization;
using BlockingTemplates.Drawing.Pages;
using BlockingTemplates.Drawing.Text;
using BlockingTemplates.Drawing.Writing;
using BlockingTemplates.Engine;
using BlockingTemplates.Engine.Pins.Settling;
using BlockingTemplates.Engine.Shapes;
using BlockingTemplates.Engine.Sheets;

namespace BlockingTemplates.Drawing.Cloths;

/// <summary>How the cloth lies once all pins are set: stretch, loads, the free edge, and what is known of the cloth.</summary>
public static class ClothPages
{
    private const double LegendMm = 6;
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
        var trial = Flow();
        Words(plan, cloth, trial);
        var room = flow.Column.Height - (trial.Column.Height - trial.Left) - (2 * LegendMm) - 4;
        if (trial.Finish().Count > 1 || room < PairLeastMm)
            room = PairLeastMm;
        Pins(plan, cloth, flow, shape.Grown(RoomMm), room);
        Words(plan, cloth, flow);
        return flow.Finish();
    }

    private static void Stretch(Plan plan, ClothPlan cloth, PageFlow flow, Box shape)
    {
        var scale = ToneScale.For(cloth.Stretch);
        var regions = NamedRegion.Of(cloth);
        flow.Paragraph("How the cloth lies", TextStyle.Title);
        if (cloth.IsBestSoFar)
            flow.Paragraph("The best found so far: the time for computing was up.", TextStyle.Strong);
        flow.Paragraph("Computed for the piece held by all its pins. Grey and figures tell how much longer the cloth is there than at rest; less than nothing means shorter.", TextStyle.Body);
        string[] words = [.. regions.Select(r => r.Words(plan, cloth))];
        if (regions.Count == 0)
            words = [cloth.Material.Took is null ? "No region stays slack." : "No region stays slack, and none is stretched further than your swatch took."];
        flow.Gap(1);
        StretchLegend.Draw(flow, scale, regions);
        var reserve = words.Sum(w => 0.8 + (TextStyle.Body.LineMm * TextMeasure.Wrap(w, flow.Column.Width - 4, TextStyle.Body.SizeMm).Count)) + 3;
        var rows = RowDirection.Of(plan);
        PicturePair.Draw(
            flow,
            shape,
            flow.Left - reserve,
            (b => RowDirection.Caption("Along the rows", rows, b), b => new StretchPicture(plan, cloth, regions, scale, b).Draw(c => c.Along)),
            (b => RowDirection.Caption("Across the rows", rows.TurnedLeft, b), b => new StretchPicture(plan, cloth, regions, scale, b).Draw(c => c.Across)));
        flow.Gap(2);
        foreach (var line in words)
            flow.Point(line);
    }

    private static void Pins(Plan plan, ClothPlan cloth, PageFlow flow, Box shape, double mostMm)
    {
        var heavy = ClothWords.LargestLoad(cloth) is { } load ? $": the longest bar is {load}" : "";
        var most = plan.Pins.Marks.MaxBy(m => cloth.LoadShares[m.Number - 1])!;
        var isOff = cloth.OffLine.Count > 0 || cloth.Gaps.Any(g => g.Determined == false);
        var enlarged = 1.0;
        PicturePair.Draw(
            flow,
            shape,
            mostMm,
            (b => Caption("Load of each pin", b), b => LoadPicture.Draw(plan, cloth, b)),
            isOff ? (b => Caption("Where the free edge lies", b), b =>
            {
                var picture = new FreeEdgePicture(plan, cloth, b);
                enlarged = picture.Enlarged;
                return picture.Draw();
            }) : null);
        flow.Gap(1);
        flow.Paragraph(string.Create(CultureInfo.InvariantCulture, $"Load: bars as long as the pull on the pin, the longest at mark {most.Number}{heavy}; the heaviest are numbered. The mean is {ToneScale.Percent(cloth.LoadShares.Average())} of the largest."), TextStyle.Small);
        if (isOff)
        {
            var slack = cloth.Gaps.Any(g => g.Determined == false) ? " Broad grey: slack, the line there is not determined." : "";
            var off = cloth.OffLine.Count == 0 ? "" : string.Create(CultureInfo.InvariantCulture, $" Heavy line: the edge where it lies more than 1 mm off{(enlarged > 1 ? $", that distance drawn {enlarged:0} times as large as the piece" : "")}; the worst gap of each edge is lettered with its marks.");
            flow.Paragraph($"Free edge: dots are pins, the dashed line is the one asked for.{off}{slack}", TextStyle.Small);
        }
        else
        {
            flow.Paragraph("The free edge lies nowhere more than 1 mm off its line.", TextStyle.Small);
        }
    }

    private static void Words(Plan plan, ClothPlan cloth, PageFlow flow)
    {
        HoldTable.Draw(plan, cloth, flow);
        AnchorTable.Draw(cloth, flow);
        flow.Heading("What the cloth was taken to be");
        flow.Paragraph(cloth.Material.Told, TextStyle.Small);
        if (ClothWords.Ends(plan, cloth) is { } ends)
            flow.Paragraph(ends, TextStyle.Small);
    }

    private static IEnumerable<Element> Caption(string words, Box box) => [new TextElement(words, new(box.Left, box.Lower + 2.2), TextStyle.Strong.SizeMm, FontWeight.Bold)];
}
