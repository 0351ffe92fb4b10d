namespace BlockingTemplates.Engine.Fabrics;

/// <summary>What holds and pulls the cloth.</summary>
public sealed record MembraneSupport
{
    /// <summary>Pins.</summary>
    public IReadOnlyList<HeldStitch> Pins { get; init; } = [];

    /// <summary>Wires through the edge.</summary>
    public IReadOnlyList<EdgeWire> Wires { get; init; } = [];

    /// <summary>Nodes held exactly.</summary>
    public IReadOnlyList<FixedNode> Fixed { get; init; } = [];

    /// <summary>Forces on nodes.</summary>
    public IReadOnlyList<NodeLoad> Loads { get; init; } = [];
}
