using System.Globalization;
using BlockingTemplates.Drawing.Cloths;
using BlockingTemplates.Drawing.Guides;
using BlockingTemplates.Drawing.Pages;
using BlockingTemplates.Drawing.Text;
using BlockingTemplates.Engine;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Drawing.Overviews;

/// <summary>The plan on its mats for a screen: every part on a layer of its own.</summary>
public sealed class PlanView
{
    private const double UsualWidthMm = 280;
    private const double MostWidthMm = 900;
    private const double MarkGapMm = 6;
    private const double BorderMm = 10;
    private const double NumberMm = 3.4;
    private const double LeastArrowMm = 2;
    private const double LabelMm = 4.4;
    private const double LegendMm = 3;

    private PlanView(Page page, FramePlacing placing) => (Page, Placing) = (page, placing);

    /// <summary>The picture.</summary>
    public Page Page { get; }

    /// <summary>Where the frame stands on it.</summary>
    public FramePlacing Placing { get; }

    /// <summary>The view of a plan, as wide as its marks need for their numbers.</summary>
    public static PlanView Of(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var extent = FieldPicture.Extent(plan);
        var gap = plan.Pins.Pinned.Length / plan.Pins.Marks.Count;
        var width = Math.Clamp((extent.Width * MarkGapMm / gap) + (2 * BorderMm), UsualWidthMm, MostWidthMm);
        var height = ((width - (2 * BorderMm)) * extent.Height / extent.Width) + (2 * BorderMm);
        var placing = FramePlacing.Fit(extent, new Box(0, 0, width, height).Grown(-BorderMm));
        var picture = new FieldPicture(plan, placing);
        List<Element> content =
        [
            new LayerElement(GuideLayers.Mats, [.. picture.Mats(true)]),
            new LayerElement(GuideLayers.Sheets, [.. Sheets(plan, placing)]),
            plan.Cloth is { } cloth
                ? ClothLayers.Stretch(plan, cloth, placing, [], new(width - BorderMm, LegendMm))
                : new LayerElement(GuideLayers.Stretch, [.. Stretch(plan, placing)]),
            .. plan.Cloth is { OffLine.Count: > 0 } off ? [ClothLayers.PredictedEdge(off, placing, new(BorderMm, height - (2 * LegendMm)))] : Array.Empty<LayerElement>(),
            new LayerElement(GuideLayers.LayLine, [.. picture.LayLine()]),
            new LayerElement(GuideLayers.Arrows, [.. Arrows(plan, placing)]),
            new LayerElement(GuideLayers.OutlineAndMarks, [.. picture.Outline(), .. picture.Marks(0.75)]),
            new LayerElement(GuideLayers.Numbers, [.. picture.Numbers(NumberMm)]),
        ];
        return new(new(width, height, [.. content.Where(e => e is not LayerElement { Content.Count: 0 })], "view"), placing);
    }

    private static IEnumerable<Element> Sheets(Plan plan, FramePlacing placing)
    {
        foreach (var sheet in plan.Guides[0].Layout.Sheets)
        {
            var box = placing.On(sheet.Window);
            yield return new PathElement(PathSteps.Rectangle(box), new(0.3, 0, [4, 2]));
            yield return new TextElement(sheet.Name, new(box.Right - 1.2, box.Upper - 4.4), NumberMm, FontWeight.Bold, TextAlign.Right);
        }
    }

    private static IEnumerable<Element> Arrows(Plan plan, FramePlacing placing)
    {
        foreach (var mark in plan.Pins.Marks)
        {
            if (mark.Rest is not { } rest)
                continue;
            Point from = placing.On(rest), to = placing.On(mark.At);
            if (from.DistanceTo(to) < LeastArrowMm)
                continue;
            var along = (to - from).Unit;
            var tip = to - (1.1 * along);
            Vector back = 1.5 * along, side = 0.6 * along.TurnedLeft;
            yield return new PathElement(PathSteps.Line(from, tip - back), new(0.25, 0.3));
            yield return new PathElement(PathSteps.Polyline([tip, tip - back + side, tip - back - side], true), null, new Fill(0.3));
        }
    }

    /// <summary>The stretch of each edge as a band along it, the wider the more, with its figure.</summary>
    private static IEnumerable<Element> Stretch(Plan plan, FramePlacing placing)
    {
        for (var i = 0; i < plan.Pins.Edges.Count; i++)
        {
            if (plan.Pins.Edges[i].Stretch is not { } stretch)
                continue;
            var curve = plan.Pins.Pinned.Edges[i].Curve;
            var width = Math.Clamp(0.8 + (20 * Math.Abs(stretch)), 0.8, 8);
            yield return new PathElement(PathSteps.Polyline(curve.Flatten(0.5).Select(placing.On), false), new(width, 0.8));
            var at = placing.On(curve.At(0.5)) - (8 * curve.Direction(0.5).TurnedRight);
            var words = string.Create(CultureInfo.InvariantCulture, $"{plan.Pins.Edges[i].Name}: {100 * stretch:+0.#;-0.#;0} %");
            foreach (var element in Label(words, at))
                yield return element;
        }
    }

    private static IEnumerable<Element> Label(string words, Point at)
    {
        var half = TextMeasure.AdvanceMm(words, LabelMm, FontWeight.Bold) / 2;
        yield return new PathElement(PathSteps.Rectangle(Box.About(at + new Vector(0, 0.32 * LabelMm), (2 * half) + 1.5, 1.3 * LabelMm)), null, new Fill(1));
        yield return new TextElement(words, at, LabelMm, FontWeight.Bold, TextAlign.Centre);
    }
}
