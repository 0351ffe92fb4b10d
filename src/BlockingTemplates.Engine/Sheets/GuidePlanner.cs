using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Pins;
using BlockingTemplates.Engine.Shapes;
using NetTopologySuite.Operation.Buffer;

namespace BlockingTemplates.Engine.Sheets;

/// <summary>From marks to the fewest sheets and the places of the numbers.</summary>
public static class GuidePlanner
{
    /// <summary>How far outside the outline the inside of a frame is cut away, in millimetres.</summary>
    public const double CutLineMm = 5;

    /// <summary>Least margin: the sheet's name, its neighbours and its bars stand there, off the unprintable border of most printers.</summary>
    public const double LeastMarginMm = 11;

    /// <summary>Least width and height of a sheet's own window.</summary>
    public const double LeastWindowMm = 60;

    private const int ArcSteps = 16;

    /// <summary>The guide on one paper, or null after adding a problem.</summary>
    public static Guide? Plan(PinPlan plan, Paper paper, SheetSettings settings, NumberStyle style, Findings findings)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(paper);
        ArgumentNullException.ThrowIfNull(settings);
        ArgumentNullException.ThrowIfNull(findings);
        if (!Fits(paper, settings, findings) || PrinterCheck.Of(paper, settings.Measured, findings) is not { } check)
            return null;
        // As large as the paper comes out of this printer: lengths of the frame are true ones.
        var printed = paper with
        {
            Short = Length.FromMillimetres(paper.Short.Millimetres * check.AlongShort),
            Long = Length.FromMillimetres(paper.Long.Millimetres * check.AlongLong),
        };
        var marks = plan.Marks.Select(m => m.At).ToList();
        var cutLine = settings.Use == GuideUse.Frame ? CutLine(plan.Pinned) : null;
        var grid = PageGrid.Search(printed, settings.Margin, settings.Overlap, plan.Pinned.Ring(), marks, cutLine);
        var spots = NumberSpots.Of(plan, style);
        var least = int.MaxValue;
        var layout = grid.Layout(grid.Best(placing => least = Math.Min(least, NumberPlacer.CountInside(spots, grid.Layout(placing), least))));
        var crosses = JointCrosses.Of(layout, marks);
        var kept = crosses.Select(c => Box.About(c, 2 * JointCrosses.HalfSizeMm, 2 * JointCrosses.HalfSizeMm));
        var numbers = NumberPlacer.Place(plan, spots, layout, kept);
        if (numbers.Where(n => n.IsCrowded).Select(n => n.Number).ToList() is { Count: > 0 } crowded)
            findings.Note($"guide on {paper.Name}", $"The marks stand so close that these numbers may touch others: {string.Join(", ", crowded)}.", "Read them off the pin table, or plan a wider spacing.");
        return new(paper, check, layout, crosses, numbers, cutLine);
    }

    private static bool Fits(Paper paper, SheetSettings settings, Findings findings)
    {
        var fits = true;
        if (settings.Margin.Millimetres < LeastMarginMm)
        {
            fits = false;
            findings.Problem("sheets.margin", $"A margin of {findings.Say(settings.Margin.Millimetres)} has no room for a sheet's name, its neighbours and its measuring bars.", $"Give at least {findings.Say(LeastMarginMm)}.");
        }

        var (x, y) = PageGrid.Pitch(paper, false, settings.Margin, settings.Overlap);
        if (Math.Min(x, y) < LeastWindowMm)
        {
            fits = false;
            findings.Problem("sheets.paper", $"Margins and overlap leave {findings.Say(Math.Max(0, x))} by {findings.Say(Math.Max(0, y))} of {paper.Name} to print on.", $"Choose a larger paper, or less margin and overlap: {findings.Say(LeastWindowMm)} each way are needed.");
        }

        return fits;
    }

    private static IReadOnlyList<Point> CutLine(Outline pinned)
    {
        var around = new BufferParameters(ArcSteps) { JoinStyle = JoinStyle.Round };
        var ring = BufferOp.Buffer(pinned.ToPolygon(), CutLineMm, around).Boundary.GetGeometryN(0).Coordinates;
        return [.. ring.SkipLast(1).Select(c => new Point(c.X, c.Y))];
    }
}
