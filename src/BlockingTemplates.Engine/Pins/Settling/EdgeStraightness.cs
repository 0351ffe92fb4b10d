namespace BlockingTemplates.Engine.Pins.Settling;

/// <summary>How straight an edge lies between its pins.</summary>
/// <param name="Edge">Index of the edge.</param>
/// <param name="Worst">Its worst gap among those whose line is determined, or null where there is none.</param>
/// <param name="IsKept">Whether no determined gap dips more than asked.</param>
/// <param name="Slack">Gaps whose line the cloth does not determine.</param>
/// <param name="NarrowestMm">Its narrowest gap, in millimetres.</param>
/// <param name="WidestMm">Its widest gap, in millimetres.</param>
public sealed record EdgeStraightness(int Edge, MarkGap? Worst, bool IsKept, IReadOnlyList<MarkGap> Slack, double NarrowestMm, double WidestMm)
{
    /// <summary>Whether the cloth decides the line of all its gaps; false where one is slack, null where that is not known.</summary>
    public required bool? IsDetermined { get; init; }

    /// <summary>The holds of the edges of a plan, in order; of edges on which no gap lies, null.</summary>
    internal static IReadOnlyList<EdgeStraightness?> Of(SettledPins settled, SpacingLimits limits) => [.. settled.Plan.Edges.Select((_, e) =>
    {
        var gaps = settled.Gaps.Where(g => g.Edge == e).ToList();
        var sure = gaps.Where(g => g.Determined != false).ToList();
        return gaps.Count == 0 ? null : new EdgeStraightness(
            e,
            sure.Count == 0 ? null : sure.MaxBy(g => Math.Abs(g.ScallopMm)),
            sure.TrueForAll(g => limits.Keeps(g with { IsSet = false })),
            [.. gaps.Where(g => g.Determined == false)],
            gaps.Min(g => g.WidthMm),
            gaps.Max(g => g.WidthMm))
        {
            IsDetermined = gaps.Exists(g => g.Determined == false) ? false : gaps.TrueForAll(g => g.Determined == true) ? true : null,
        };
    })];
}
