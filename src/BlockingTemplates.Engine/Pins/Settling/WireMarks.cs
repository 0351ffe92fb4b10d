using BlockingTemplates.Engine.Fabrics;
using BlockingTemplates.Engine.Pieces;

namespace BlockingTemplates.Engine.Pins.Settling;

/// <summary>Places the marks of wires by the computed sag, where the maker gave the spacing of single pins.</summary>
internal static class WireMarks
{
    private const int Passes = 12;
    private const int Pulls = 20;

    /// <summary>
    /// The fewest marks found whose wires and cloth together keep the scallop, single pins as they are; the most tried where
    /// none keeps it; null where no equilibrium converged.
    /// </summary>
    /// <param name="cloth">The cloth.</param>
    /// <param name="piece">The piece.</param>
    /// <param name="plan">Its marks by the spacing setting.</param>
    /// <param name="computation">Ends it.</param>
    internal static SettledPins? Fitted(PinnedCloth cloth, Piece piece, PinPlan plan, Computation computation)
    {
        var limits = SpacingLimits.Of(plan.Settings);
        var pulls = new WirePulls();
        SettledPins? kept = null, last = null;
        for (var pass = 0; pass < Passes; pass++)
        {
            if (last is not null && computation.IsTimeUp)
                break;
            computation.Tell("placing the marks of wires", (double)pass / Passes);
            var now = cloth.Settle(plan, last?.Rest.Places, computation);
            if (!now.Rest.Converged)
                break;
            last = now;
            if (IsKept(now) && (kept is null || plan.Marks.Count < kept.Plan.Marks.Count))
                kept = now;
            if (plan.Wired.Count == 0)
                break;
            if (Next(now) is not { } next)
                break;
            plan = next;
        }

        return kept ?? last;

        bool IsKept(SettledPins now) => now.Gaps.Where(g => plan.Edges[g.Edge].Treatment.HeldBy == Holding.Wire).All(limits.Keeps);

        // Other marks than these, or null where none are wanted: while wires sag too far the pull grows until marks change.
        PinPlan? Next(SettledPins now)
        {
            for (var k = 0; k < Pulls; k++)
            {
                var next = PinPlanner.Respaced(now.Plan with { Pulls = pulls.Fitted(now) }, piece, null);
                if (!next.Marks.SequenceEqual(plan.Marks))
                    return next;
                if (IsKept(now))
                    return null;
                now = now with { Plan = next };
            }

            return null;
        }
    }
}
