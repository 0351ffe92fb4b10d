using BlockingTemplates.Engine.Pieces;

namespace BlockingTemplates.Engine.Pins;

/// <summary>The stretch of pinned outline between two neighbouring marks, from bar to bar where there are combs.</summary>
/// <param name="From">Number of the mark before it, counter-clockwise.</param>
/// <param name="To">Number of the mark after it.</param>
/// <param name="FromMm">Arc length round the pinned outline where it begins, in millimetres.</param>
/// <param name="WidthMm">Its length.</param>
/// <param name="IsWired">Whether a wire runs along it.</param>
public readonly record struct MarkSpan(int From, int To, double FromMm, double WidthMm, bool IsWired)
{
    /// <summary>The spans of a plan, once round from its first corner.</summary>
    public static IReadOnlyList<MarkSpan> Of(PinPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var starts = new double[plan.Edges.Count + 1];
        for (var e = 0; e < plan.Edges.Count; e++)
            starts[e + 1] = starts[e] + plan.Edges[e].PinnedMm;
        var ring = plan.Marks.OrderBy(m => m.Edge).ThenBy(m => m.Fraction).ToList();
        return [.. ring.Select((from, i) =>
        {
            var to = ring[(i + 1) % ring.Count];
            var (begins, ends) = (Arc(from, from.Bar?.ToFraction), Arc(to, to.Bar?.FromFraction) + (i + 1 == ring.Count ? starts[^1] : 0));
            return new MarkSpan(from.Number, to.Number, begins, ends - begins, plan.Edges[from.Edge].Treatment.HeldBy == Holding.Wire);
        })];
        double Arc(Mark mark, double? fraction) => starts[mark.Edge] + ((fraction ?? mark.Fraction) * plan.Edges[mark.Edge].PinnedMm);
    }
}
