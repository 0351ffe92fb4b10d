namespace BlockingTemplates.Engine.Pins.Settling;

/// <summary>From the scallops of one spacing to the spacing that keeps the tolerance.</summary>
/// <remarks>
/// In each gap the scallop follows K p ln(p / (pi a)) with a the effective half-width of the held stitch, as in the closed
/// form of <see cref="ScallopEstimate"/>; K is fitted to the computed scallop of the gap.
/// </remarks>
internal static class NeededSpacing
{
    private const double MostWider = 2.2;
    private const double MostNarrower = 0.3;
    private const int Halvings = 50;

    /// <summary>The spacing needed round the outline.</summary>
    /// <param name="settled">Pins and the cloth at rest under them.</param>
    /// <param name="limits">What the gaps shall keep.</param>
    /// <param name="aim">Share of the greatest scallop to aim at.</param>
    internal static SpacingProfile Of(SettledPins settled, SpacingLimits limits, double aim)
    {
        var plan = settled.Plan;
        double[] needed = [.. settled.Gaps.Select(g => Needed(g, StitchMm(plan, g.Edge), limits, aim))];
        return Profile(plan, settled.Gaps, Mirrored(plan, settled.Gaps, needed));
    }

    /// <summary>A profile with one spacing for each gap of a plan, linear between their middles, and breaks at corners.</summary>
    internal static SpacingProfile Profile(PinPlan plan, IReadOnlyList<MarkGap> gaps, IReadOnlyList<double> spacings)
    {
        var length = plan.Edges.Sum(e => e.PinnedMm);
        List<(double Arc, double Mm)> knots = [];
        foreach (var (gap, mm) in gaps.Zip(spacings).OrderBy(g => g.First.FromMm))
        {
            if (IsBreak(plan, gap.From))
                knots.Add((gap.FromMm, mm));
            knots.Add((gap.MiddleMm >= length ? gap.MiddleMm - length : gap.MiddleMm, mm));
            if (IsBreak(plan, gap.To))
                knots.Add((Math.Min(length, gap.FromMm + gap.WidthMm), mm));
        }

        return new(plan.Pinned, knots.OrderBy(k => k.Arc));
    }

    /// <summary>Width of a stitch on the pinned edge, in millimetres.</summary>
    internal static double StitchMm(PinPlan plan, int edge) =>
        plan.Edges[edge].StitchMm ?? PinnedCloth.StitchUnsaid.Millimetres * (1 + (plan.Edges[edge].Stretch ?? 0));

    /// <summary>For each gap the lesser of its own value and that of the gap that mirrors it.</summary>
    internal static double[] Mirrored(PinPlan plan, IReadOnlyList<MarkGap> gaps, double[] values)
    {
        if (plan.Mirror is null)
            return values;
        var byEnds = new Dictionary<(int, int), int>();
        for (var i = 0; i < gaps.Count; i++)
            byEnds[(gaps[i].From, gaps[i].To)] = i;
        return [.. gaps.Select((g, i) =>
            plan.PartnerOf(plan.Marks[g.From - 1]) is { } from && plan.PartnerOf(plan.Marks[g.To - 1]) is { } to && byEnds.TryGetValue((to.Number, from.Number), out var other)
                ? Math.Min(values[i], values[other])
                : values[i])];
    }

    private static bool IsBreak(PinPlan plan, int number) =>
        plan.Marks[number - 1] is { IsCorner: true } mark && (!plan.Pinned.Corners[mark.Edge].Smooth || Holds(plan, mark.Edge) || Holds(plan, (mark.Edge + plan.Edges.Count - 1) % plan.Edges.Count));

    private static bool Holds(PinPlan plan, int edge) => plan.Edges[edge].Treatment.HeldBy is Pieces.Holding.Wire or Pieces.Holding.Comb;

    private static double Needed(MarkGap gap, double stitchMm, SpacingLimits limits, double aim)
    {
        if (gap.Determined == false)
            return limits.SlackMm;
        var narrow = Math.PI * ScallopEstimate.HalfWidthOverWidth * stitchMm;
        double Shape(double p) => p * Math.Log(Math.Max(p / narrow, 1.05));
        var share = aim * limits.ScallopMm / Math.Max(Math.Abs(gap.ScallopMm), 1e-9);
        var (low, high) = (MostNarrower * gap.WidthMm, MostWider * gap.WidthMm);
        var wanted = share * Shape(gap.WidthMm);
        for (var k = 0; k < Halvings; k++)
        {
            var middle = (low + high) / 2;
            if (Shape(middle) > wanted)
                high = middle;
            else
                low = middle;
        }

        // On stitches the least gap is a whole number of them.
        var least = Math.Ceiling((limits.LeastMm / stitchMm) - 1e-6) * stitchMm;
        return Math.Max(Math.Min(low, limits.MostMm), Math.Min(least, limits.MostMm));
    }
}
