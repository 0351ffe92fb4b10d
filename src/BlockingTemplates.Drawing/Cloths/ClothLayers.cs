using BlockingTemplates.Drawing.Guides;
using BlockingTemplates.Drawing.Overviews;
using BlockingTemplates.Drawing.Pages;
using BlockingTemplates.Engine;
using BlockingTemplates.Engine.Pins.Settling;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Drawing.Cloths;

/// <summary>The cloth on the overview: layers that a viewer can switch on.</summary>
internal static class ClothLayers
{
    private const double FlatMm = 0.5;
    private const double SmallMm = 3.2;
    private static readonly Stroke Free = new(0.4, 0.2);

    /// <summary>The greater of the two stretches in greys, regions hatched, and what the greys mean.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="cloth">Its cloth.</param>
    /// <param name="placing">How the frame lies on the page.</param>
    /// <param name="free">Boxes of the page to leave unpainted.</param>
    /// <param name="legendEnd">Where the legend ends.</param>
    public static LayerElement Stretch(Plan plan, ClothPlan cloth, FramePlacing placing, IReadOnlyList<Box> free, Point legendEnd)
    {
        var scale = ToneScale.For(cloth.Stretch);
        var area = new InsideArea([.. plan.Pins.Pinned.Ring(FlatMm).Select(placing.On)]);
        var regions = NamedRegion.Of(cloth);
        return new(GuideLayers.Stretch,
        [
            .. StretchTones.Of(cloth.Stretch, c => Math.Max(c.Along, c.Across), scale, area, placing, free),
            .. regions.SelectMany(r => RegionHatch.Hatch(r.Region, cloth.Stretch, area, placing, r.IsBeyond)),
            .. regions.SelectMany(r => RegionHatch.Border(r.Region, cloth.Stretch, placing)),
            .. StretchLegend.Small(scale, regions.Count > 0 ? "Stretch one way or the other, slack or too far hatched:" : "Stretch along or across the rows, the greater:", legendEnd, SmallMm),
        ]);
    }

    /// <summary>The free edge where it lies off its line, to scale, with a word on it.</summary>
    public static LayerElement PredictedEdge(ClothPlan cloth, FramePlacing placing, Point words) => new(GuideLayers.PredictedEdge,
    [
        .. cloth.OffLine.Select(line => new PathElement(PathSteps.Polyline(line.Select(placing.On), false), Free)),
        new TextElement("Grey line beside the outline: where the edge will lie between the pins, to scale, where that is more than 1 mm off.", words, SmallMm, Grey: 0.2),
    ]);
}
