using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Mats;

/// <summary>Finds the fewest mats over all shifts and allowed turns.</summary>
internal static class MatSearch
{
    /// <summary>What counts as contact only, in millimetres.</summary>
    public const double ContactMm = 0.01;

    /// <summary>The mats of the best way to lay the lattice.</summary>
    /// <remarks>With no shift a corner of the lattice stands at the lower left of the box of outline and border, so that an exact fit is always tried.</remarks>
    /// <param name="ring">The pinned outline.</param>
    /// <param name="marks">The marks.</param>
    /// <param name="settings">The mats.</param>
    public static (LaidMats Mats, int TurnDegrees) Fewest(IReadOnlyList<Point> ring, IReadOnlyList<Point> marks, MatSettings settings)
    {
        var border = settings.Border.Millimetres;
        var shape = new RegionShadow(ring, border, ContactMm);
        var box = Box.Around(ring).Grown(border);
        var covers = new Dictionary<int, LatticeCover>();
        foreach (var turn in Turns(settings))
        {
            var (x, y) = (settings.Width.Millimetres, settings.Height.Millimetres);
            covers[turn] = turn == 0 ? new(shape, new(box.Left, box.Lower), x, y) : new(shape, new(box.Left, box.Lower), y, x);
        }

        var least = covers.Values.Min(c => c.Least);
        var best = new MatPlacing(int.MaxValue, int.MaxValue, 0, 0, 0);
        foreach (var (turn, cover) in covers.Where(c => c.Value.Least == least))
            best = Best(cover, turn, marks, settings.SeamClearance.Millimetres, best);
        return (Laid(covers[best.TurnDegrees], best), best.TurnDegrees);
    }

    private static IEnumerable<int> Turns(MatSettings settings)
    {
        var turns = settings.Turns.Distinct().Order().ToArray();
        if (turns.Length == 0 || turns.Any(t => t is not (0 or 90)))
            throw new ArgumentException("Mats turn by 0 or 90 degrees.", nameof(settings));
        return settings.Width == settings.Height ? turns.Take(1) : turns;
    }

    private static MatPlacing Best(LatticeCover cover, int turn, IReadOnlyList<Point> marks, double clearance, MatPlacing best)
    {
        var near = new MarksNearSeams(cover, marks, clearance);
        foreach (var (x, y) in cover.LeastShifts())
        {
            var count = near.Count(x, y, best.NearMarks == int.MaxValue ? int.MaxValue : best.NearMarks + 1);
            if (count > best.NearMarks)
                continue;
            var placing = new MatPlacing(count, cover.BoxSize(x, y), turn, x, y);
            if (placing.IsBetterThan(best))
                best = placing;
        }

        return best;
    }

    private static LaidMats Laid(LatticeCover cover, MatPlacing placing)
    {
        var cells = cover.Cells(placing.ShiftX, placing.ShiftY).ToArray();
        var first = new Cell(cells.Min(c => c.Column), cells.Min(c => c.Row));
        return new(
            cells.Select(c => new Cell(c.Column - first.Column, c.Row - first.Row)),
            cover.At(placing.ShiftX, placing.ShiftY, first),
            cover.PitchX,
            cover.PitchY);
    }
}
