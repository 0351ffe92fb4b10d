namespace BlockingTemplates.Engine.Pins;

/// <summary>Moves a mark along its edge by whole stitches.</summary>
public static class MarkShift
{
    private const double Contact = 1e-6;

    /// <summary>The plan with a mark (and its mirror partner on a symmetric piece) moved along its edge.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="number">Number of the mark.</param>
    /// <param name="stitches">How many stitches, forward positive.</param>
    /// <returns>The plan, or null where the mark may not move: a corner, an anchor, an edge whose stitch is not known, a gap that would break the spacing rule.</returns>
    public static PinPlan? Moved(PinPlan plan, int number, int stitches)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var mark = plan.Marks[number - 1];
        if (MovedMark(plan, mark, stitches) is not { } moved)
            return null;
        var marks = plan.Marks.ToList();
        marks[number - 1] = moved;
        int[] touched = [number];
        if (plan.Mirror is { } mirror)
        {
            var fraction = mark.IsCorner ? 0 : 1 - mark.Fraction;
            var partner = plan.Marks.FirstOrDefault(m => m.Edge == mirror.Partner[mark.Edge] && Math.Abs(m.Fraction - fraction) < 1e-9);
            if (partner is null || partner.Number == number || MovedMark(plan, partner, -stitches) is not { } other)
                return null;
            marks[partner.Number - 1] = other;
            touched = [number, partner.Number];
        }

        var next = plan with { Marks = marks };
        return touched.All(t => KeepsRule(next, t)) ? next : null;
    }

    private static Mark? MovedMark(PinPlan plan, Mark mark, int stitches)
    {
        var edge = plan.Edges[mark.Edge];
        if (mark.IsCorner || mark.IsAnchor || edge.StitchMm is not { } stitch)
            return null;
        double fraction;
        double? count = null;
        if (edge.Treatment.Count is { } n)
        {
            count = mark.Count + stitches;
            fraction = count!.Value / n;
        }
        else
        {
            fraction = mark.Fraction + (stitches * stitch / edge.PinnedMm);
        }

        return fraction is > 0 and < 1 ? MarkMaker.At(mark with { Fraction = fraction, Count = count }, plan.Pinned, plan.LayLine) : null;
    }

    private static bool KeepsRule(PinPlan plan, int number)
    {
        var ring = plan.Marks.OrderBy(m => m.Edge).ThenBy(m => m.Fraction).ToList();
        var i = ring.FindIndex(m => m.Number == number);
        var n = ring.Count;
        return Keeps(plan, ring[(i + n - 1) % n], ring[i]) && Keeps(plan, ring[i], ring[(i + 1) % n]);
    }

    private static bool Keeps(PinPlan plan, Mark from, Mark to)
    {
        var starts = new double[plan.Edges.Count];
        for (var e = 1; e < starts.Length; e++)
            starts[e] = starts[e - 1] + plan.Edges[e - 1].PinnedMm;
        var round = starts[^1] + plan.Edges[^1].PinnedMm;
        double a = Position(from), gap = Position(to) - a;
        if (gap <= 0)
            gap += round;
        var middle = (a + (gap / 2)) % round;
        var edge = Array.FindLastIndex(starts, s => s <= middle);
        return gap <= plan.Rule.At(edge, (middle - starts[edge]) / plan.Edges[edge].PinnedMm) + Contact;
        double Position(Mark m) => starts[m.Edge] + (m.Fraction * plan.Edges[m.Edge].PinnedMm);
    }
}
