using BlockingTemplates.Engine.Pieces;

namespace BlockingTemplates.Engine.Pins;

/// <summary>What one way of holding an edge would take, its corners left out.</summary>
/// <param name="Hold">Pins, combs or wires.</param>
/// <param name="Pins">Single pins, those that hold wires among them.</param>
/// <param name="Combs">Combs.</param>
/// <param name="Wires">Wires: their lengths in millimetres, and whether each is at hand.</param>
/// <param name="Serves">Whether it does what it should: a wire follows the edge and is not too limp, a bar follows the edge somewhere.</param>
/// <param name="IsOwned">Whether all it takes is at hand; null where that is not said.</param>
public sealed record EdgeWay(Holding Hold, int Pins, int Combs, IReadOnlyList<(double LengthMm, bool Owned)> Wires, bool Serves, bool? IsOwned)
{
    /// <summary>Pins where the cloth is as soft as the published range goes; as many as <see cref="Pins"/> but for wires.</summary>
    public int PinsIfSoft { get; init; } = Pins;

    /// <summary>How often something is set and taken out.</summary>
    public int Settings => Pins + Combs + Wires.Count;
}
