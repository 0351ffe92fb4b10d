namespace BlockingTemplates.Engine.Pins;

/// <summary>Moves a mark along its edge by whole stitches.</summary>
public static class MarkShift
{
    private const double Contact = 1e-6;

    /// <summary>The plan with a mark (and its mirror partner on a symmetric piece) moved along its edge.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="number">Number of the mark.</param>
    /// <param name="stitches">How many stitches, forward positive.</param>
    /// <returns>The plan, or null where the mark may not move: a corner, an anchor, a comb or a wire's mark, a mark on the axis, an edge whose
    /// stitch is not known or whose marks stand where the maker said, onto or past a neighbour, a gap that would break the spacing rule.</returns>
    public static PinPlan? Moved(PinPlan plan, int number, int stitches)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var mark = plan.Marks[number - 1];
        if (MovedMark(plan, mark, stitches) is not { } moved)
            return null;
        var marks = plan.Marks.ToList();
        marks[number - 1] = moved;
        if (plan.Mirror is not null)
        {
            var partner = plan.PartnerOf(mark);
            if (partner is null || partner.Number == number || partner.IsAnchor)
                return null;
            marks[partner.Number - 1] = MarkMaker.At(
                partner with { Fraction = 1 - moved.Fraction, Count = plan.Edges[partner.Edge].Treatment.Count - moved.Count }, plan.Pinned, plan.LayLine, plan.Edges[partner.Edge].Match);
        }

        var next = plan with { Marks = marks };
        return KeepsSpacing(plan, next) ? next : null;
    }

    private static Mark? MovedMark(PinPlan plan, Mark mark, int stitches)
    {
        var edge = plan.Edges[mark.Edge];
        if (mark.IsCorner || mark.IsAnchor || mark.Kind != PinKind.Pin || edge.Treatment.HasSetPlaces || edge.StitchMm is not { } stitch)
            return null;
        var count = mark.Count + stitches;
        var fraction = edge.Treatment.Count is { } n && count is { } at ? edge.Match.PinnedAt(Math.Clamp(at / n, 0, 1)) : mark.Fraction + (stitches * stitch / edge.PinnedMm);
        return fraction is > 0 and < 1 ? MarkMaker.At(mark with { Fraction = fraction, Count = count }, plan.Pinned, plan.LayLine, edge.Match) : null;
    }

    /// <summary>Whether the marks still stand in the same order and every gap that changed keeps the rule.</summary>
    private static bool KeepsSpacing(PinPlan before, PinPlan after)
    {
        int[] ring = [.. before.Marks.OrderBy(m => m.Edge).ThenBy(m => m.Fraction).Select(m => m.Number - 1)];
        var starts = new double[after.Edges.Count + 1];
        for (var e = 0; e < after.Edges.Count; e++)
            starts[e + 1] = starts[e] + after.Edges[e].PinnedMm;
        for (var i = 0; i < ring.Length; i++)
        {
            int from = ring[i], to = ring[(i + 1) % ring.Length];
            if (before.Marks[from] == after.Marks[from] && before.Marks[to] == after.Marks[to])
                continue;
            var a = Position(after.Marks[from]);
            var gap = Position(after.Marks[to]) + (i + 1 == ring.Length ? starts[^1] : 0) - a;
            if (gap < Contact || !(after.Profile is { } profile ? profile.Holds(a, a + gap) : KeepsRule(a, gap)))
                return false;
        }

        return true;
        bool KeepsRule(double from, double gap)
        {
            var middle = (from + (gap / 2)) % starts[^1];
            var edge = Math.Min(Array.FindLastIndex(starts, s => s <= middle), after.Edges.Count - 1);
            return gap <= after.Rule.At(edge, (middle - starts[edge]) / after.Edges[edge].PinnedMm) + Contact;
        }

        double Position(Mark m) => starts[m.Edge] + (m.Fraction * after.Edges[m.Edge].PinnedMm);
    }
}
