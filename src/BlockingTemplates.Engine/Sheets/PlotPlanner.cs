using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Pins;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Sheets;

/// <summary>The whole guide on one page for a print shop or a projector; larger than the longest page, on the fewest pages.</summary>
public static class PlotPlanner
{
    private const double MarginMm = 15;
    private const double OverlapMm = 15;

    /// <summary>The plot: a guide on a page of its own size.</summary>
    /// <param name="plan">The marks.</param>
    /// <param name="use">How the guide is used.</param>
    /// <param name="style">How numbers are set.</param>
    /// <param name="findings">Takes a note where the plot had to be cut.</param>
    public static Guide Plan(PinPlan plan, GuideUse use, NumberStyle style, Findings findings)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(findings);
        var ring = plan.Pinned.Ring();
        var cutLine = use == GuideUse.Frame ? GuidePlanner.CutLine(plan.Pinned) : null;
        var shown = Box.Around(plan.LayLine is { } lay ? ring.Concat(lay.Ring()) : ring).Grown(GuidePlanner.NumberRoomMm + MarginMm);
        var most = Paper.MostLength.Millimetres;
        double width = Math.Min(shown.Width + (2 * MarginMm), most), height = Math.Min(shown.Height + (2 * MarginMm), most);
        var paper = new Paper("one page", Length.FromMillimetres(Math.Min(width, height)), Length.FromMillimetres(Math.Max(width, height)));
        var spots = NumberSpots.Of(plan, style);
        Guide On(SheetLayout layout) => new(paper, PrinterCheck.True, layout, [], [], cutLine, null);
        if (shown.Width + (2 * MarginMm) <= most && shown.Height + (2 * MarginMm) <= most)
            return GuidePlanner.WithNumbers(plan, On(new(paper, width > height, [new(1, 1, shown, false)], shown.Width, shown.Height, 0, MarginMm)), spots, findings);
        var grid = PageGrid.Search(paper, Length.FromMillimetres(MarginMm), Length.FromMillimetres(OverlapMm), ring, [.. plan.Marks.Select(m => m.At)], cutLine);
        findings.Note("plot.pdf", $"The piece is larger than the longest page that programs open ({findings.Say(most)}): the plot is cut into {grid.Least} pages, where the fewest numbers are in the way.", "Join them like the sheets of the guide, by their crosses.");
        return GuidePlanner.Best(plan, grid, spots, On(grid.Layout(grid.Tied[0])), findings);
    }
}
