namespace BlockingTemplates.Engine.Fabrics;

/// <summary>A node held at a place, exactly.</summary>
/// <param name="Node">Its number.</param>
/// <param name="X">Where it is held along x, in millimetres, or null if free along x.</param>
/// <param name="Y">Where it is held along y, in millimetres, or null if free along y.</param>
public readonly record struct FixedNode(int Node, double? X, double? Y);
