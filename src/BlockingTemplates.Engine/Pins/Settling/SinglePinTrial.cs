using BlockingTemplates.Engine.Fabrics;
using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Pieces;

namespace BlockingTemplates.Engine.Pins.Settling;

/// <summary>Asks the cloth how single pins would hold the edges that wires or combs hold now, so that all ways can be compared for one scallop.</summary>
internal static class SinglePinTrial
{
    private const int Passes = 3;
    private const double Aim = 0.975;

    /// <summary>How wide gaps between single pins might be; null where no edge is held otherwise, or no equilibrium converged.</summary>
    /// <param name="cloth">The cloth.</param>
    /// <param name="piece">The piece.</param>
    /// <param name="settled">Its marks and the cloth at rest under them.</param>
    /// <param name="computation">Ends it.</param>
    internal static SpacingProfile? Of(PinnedCloth cloth, Piece piece, SettledPins settled, Computation computation)
    {
        if (piece.Edges.All(e => e.HeldBy is Holding.Pins or Holding.None))
            return null;
        var pinned = piece with { Edges = [.. piece.Edges.Select(e => e.HeldBy is Holding.Wire or Holding.Comb ? e with { Hold = Holding.Pins } : e)] };
        var limits = SpacingLimits.Of(settled.Plan.Settings);
        var plan = PinPlanner.Placed(pinned, settled.Plan.Settings, new Findings());
        var places = settled.Rest.Places;
        SpacingProfile? profile = null;
        for (var pass = 0; pass < Passes && plan is not null && !computation.IsTimeUp; pass++)
        {
            computation.Tell("comparing ways of holding", (double)pass / Passes);
            var now = cloth.Settle(plan, places, computation);
            if (!now.Rest.Converged)
                break;
            profile = NeededSpacing.Of(now, limits, Aim);
            places = now.Rest.Places;
            plan = PinPlanner.Respaced(plan, pinned, profile);
        }

        return profile;
    }
}
