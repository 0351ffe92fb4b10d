using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Sheets;

/// <summary>The crosses by which neighbouring sheets are laid together: on the cut line, two a joint.</summary>
public static class JointCrosses
{
    /// <summary>How far a cross reaches from its middle, in millimetres.</summary>
    public const double HalfSizeMm = 4;

    private static readonly double[] Fractions = [0.2, 0.14, 0.26, 0.32, 0.08, 0.38, 0.44];

    /// <summary>The middles of all crosses, sheet by sheet, left joint before lower joint.</summary>
    /// <param name="layout">The sheets.</param>
    /// <param name="marks">The marks, which crosses keep away from where the joint is long enough.</param>
    public static IReadOnlyList<Point> Of(SheetLayout layout, IReadOnlyList<Point> marks)
    {
        ArgumentNullException.ThrowIfNull(layout);
        ArgumentNullException.ThrowIfNull(marks);
        List<Point> crosses = [];
        foreach (var sheet in layout.Sheets)
        {
            var w = sheet.Window;
            if (layout.At(sheet.Row, sheet.Column - 1) is not null)
                crosses.AddRange(Pair(new(w.Left, w.Lower), new(w.Left, w.Upper), marks));
            if (layout.At(sheet.Row - 1, sheet.Column) is not null)
                crosses.AddRange(Pair(new(w.Left, w.Lower), new(w.Right, w.Lower), marks));
        }

        return crosses;
    }

    private static IEnumerable<Point> Pair(Point from, Point to, IReadOnlyList<Point> marks)
    {
        yield return Free(from, to, marks);
        yield return Free(to, from, marks);
    }

    private static Point Free(Point from, Point to, IReadOnlyList<Point> marks)
    {
        var best = from.Toward(to, Fractions[0]);
        var bestAway = 0.0;
        foreach (var fraction in Fractions)
        {
            var at = from.Toward(to, fraction);
            var away = marks.Count == 0 ? double.PositiveInfinity : marks.Min(m => m.DistanceTo(at));
            if (away >= 3 * HalfSizeMm)
                return at;
            if (away > bestAway)
                (best, bestAway) = (at, away);
        }

        return best;
    }
}
