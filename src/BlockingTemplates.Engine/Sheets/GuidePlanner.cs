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

    /// <summary>Room that numbers take outside the outline.</summary>
    internal const double NumberRoomMm = 30;

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
        var cutLine = settings.Use == GuideUse.Frame ? CutLine(plan.Pinned) : null;
        var (cut, whole) = Search(plan, paper, check, settings, cutLine, null);
        var half = Half(plan, settings, whole.Least, findings);
        var grid = whole;
        if (half is not null)
            (cut, grid) = Search(plan, paper, check, settings, cutLine, half);
        var spots = NumberSpots.Of(plan, style, half);
        return Best(plan, grid, spots, new(cut, check, grid.Layout(grid.Tied[0]), [], [], cutLine, half), findings);
    }

    /// <summary>The guide on the best of the page grids that need equally few sheets, with its numbers.</summary>
    internal static Guide Best(PinPlan plan, PageGrid grid, NumberSpots spots, Guide guide, Findings findings)
    {
        // Numbers that have no spot outside on any grid do not count: a grid with none beside them ends the search.
        var always = spots.OfMarks.Count(m => !m.Outside.Any());
        var least = int.MaxValue;
        var layout = grid.Layout(grid.Best(placing => (least = Math.Min(least, NumberPlacer.CountInside(spots, grid.Layout(placing), least))) - always));
        return WithNumbers(plan, guide with { Layout = layout }, spots, findings);
    }

    /// <summary>The guide with its crosses and numbers; a note where numbers may touch.</summary>
    internal static Guide WithNumbers(PinPlan plan, Guide guide, NumberSpots spots, Findings findings)
    {
        var crosses = JointCrosses.Of(guide.Layout, [.. plan.Marks.Select(m => m.At)]);
        var kept = crosses.Select(c => Box.About(c, 2 * JointCrosses.HalfSizeMm, 2 * JointCrosses.HalfSizeMm));
        var numbers = NumberPlacer.Place(plan, spots, guide.Layout, kept);
        if (numbers.Where(n => n.IsCrowded).Select(n => n.Number).ToList() is { Count: > 0 } crowded)
            findings.Note($"guide on {guide.Paper.Name}", $"The marks stand so close that these numbers may touch others: {string.Join(", ", crowded)}.", "Read them off the pin table, or plan a wider spacing.");
        return guide with { Crosses = crosses, Numbers = numbers };
    }

    /// <summary>The paper as it is cut, and its page grids.</summary>
    private static (Paper Cut, PageGrid Grid) Search(PinPlan plan, Paper paper, PrinterCheck check, SheetSettings settings, IReadOnlyList<Point>? cutLine, HalfGuide? half)
    {
        var ring = plan.Pinned.Ring();
        var lines = half is null ? ring : ThereAndBack(half.Kept(ring));
        var cutAlong = half is null || cutLine is null ? cutLine : ThereAndBack(half.Kept(cutLine));
        IReadOnlyList<Point> marks = half is null ? [.. plan.Marks.Select(m => m.At)] : [.. half.Kept(plan).Select(m => m.At), .. half.BeyondSpine(plan)];
        PageGrid Of(Paper sold) => PageGrid.Search(check.Printed(sold), settings.Margin, settings.Overlap, lines, marks, cutAlong, settings.All);
        if (!paper.IsRoll)
            return (paper, Of(paper));
        // As long as the piece either way first; then only as long as the better way takes.
        var box = Box.Around(cutAlong is null ? lines.Concat(marks) : lines.Concat(marks).Concat(cutAlong));
        var roll = Cut(paper, Math.Max(box.Width, box.Height), settings);
        var cut = Cut(paper, Of(roll).Tied[0].Landscape ? box.Width : box.Height, settings);
        return (cut, Of(cut));
    }

    /// <summary>A piece of a roll that shows so much of the piece, with room for numbers at both ends.</summary>
    private static Paper Cut(Paper roll, double showsMm, SheetSettings settings)
    {
        var length = showsMm + (2 * NumberRoomMm) + (2 * settings.Margin.Millimetres) + settings.Overlap.Millimetres;
        return roll with { Long = Length.FromMillimetres(Math.Clamp(Math.Ceiling(length / 10) * 10, roll.Short.Millimetres, Paper.MostLength.Millimetres)) };
    }

    /// <summary>Open lines as one closed ring that runs along each and back, so that no sheet is asked for by the spine between them.</summary>
    private static List<Point> ThereAndBack(IReadOnlyList<IReadOnlyList<Point>> lines)
    {
        // A symmetric outline crosses its axis twice, so its half is one line; further ones hang on by the spine.
        List<Point> ring = [];
        foreach (var line in lines)
            ring.AddRange(line.Concat(line.Reverse().Skip(1)));
        return ring;
    }

    private static HalfGuide? Half(PinPlan plan, SheetSettings settings, int wholeCount, Findings findings)
    {
        if (!settings.Half)
            return null;
        if (settings.Use != GuideUse.Prick)
        {
            findings.Note("sheets.half", "Half a guide is turned over to prick the other half; under film or as a frame that cannot be done: the whole guide is printed.", "Write \"use\": \"prick\", or \"half\": false.");
            return null;
        }

        if (plan.Mirror is { } mirror)
            return new(mirror.Centre, mirror.Axis, wholeCount);
        findings.Note("sheets.half", "The piece is not the same on both sides of a spine line, so half a guide would not do: the whole guide is printed.", "Even the measurements out (\"evenOut\": true) if both sides were worked alike, or write \"half\": false.");
        return null;
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

    internal static IReadOnlyList<Point> CutLine(Outline pinned)
    {
        var around = new BufferParameters(ArcSteps) { JoinStyle = JoinStyle.Round };
        var ring = BufferOp.Buffer(pinned.ToPolygon(), CutLineMm, around).Boundary.GetGeometryN(0).Coordinates;
        return [.. ring.SkipLast(1).Select(c => new Point(c.X, c.Y))];
    }
}
