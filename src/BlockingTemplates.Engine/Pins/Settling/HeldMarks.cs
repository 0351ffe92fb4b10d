using BlockingTemplates.Engine.Fabrics;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Pins.Settling;

/// <summary>The stitches that some marks hold: one for a pin, one for each prong of a comb, and one more beside a corner where a wire ends.</summary>
/// <param name="Support">The held stitches, and the wires.</param>
/// <param name="MarkOf">For each held stitch the place of its mark in the list of marks.</param>
public sealed record HeldMarks(MembraneSupport Support, IReadOnlyList<int> MarkOf)
{
    /// <summary>Force of each mark on the cloth, in the order of the list of marks.</summary>
    /// <param name="rest">The cloth at rest under them.</param>
    /// <param name="marks">How many marks there are.</param>
    public Vector[] Loads(Equilibrium rest, int marks)
    {
        ArgumentNullException.ThrowIfNull(rest);
        var loads = new Vector[marks];
        for (var i = 0; i < MarkOf.Count; i++)
            loads[MarkOf[i]] += rest.PinLoads[i];
        return loads;
    }
}
