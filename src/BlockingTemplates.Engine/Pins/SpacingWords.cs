using BlockingTemplates.Engine.Pieces;

namespace BlockingTemplates.Engine.Pins;

/// <summary>Tells in words how the spacing of an edge came about, and its repeat where stitches are counted.</summary>
internal static class SpacingWords
{
    public static string Of(PinPlan plan, int edge)
    {
        var said = plan.Edges[edge];
        var how = said.Treatment switch
        {
            { Hold: Holding.None } => "no pins between its corners",
            { Points: { } points } => $"a mark at each of its {points.Words}, valleys {(points.Valleys == Valleys.Free ? "free" : "pinned")}",
            { Every: not null } => "as asked",
            { HeldBy: Holding.Wire } => "a wire, held where it would dip too far",
            { HeldBy: Holding.Comb } => "combs, with gaps as between pins",
            _ when plan.Profile is not null => "as the cloth needs",
            _ when said.Stretch < -EdgePlans.ReadingOfATape => "half spacing: the edge must shrink",
            _ => "full spacing, half of it near corners",
        };
        return said.Treatment.Hold != Holding.None && StitchRepeat.Of(plan, edge) is { } repeat ? $"{how}; {repeat}" : how;
    }
}
