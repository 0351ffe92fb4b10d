using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Fabrics;

/// <summary>An elastic wire through the stitches of an edge, straight when nothing bends it.</summary>
/// <remarks>
/// It adds its bending energy, half EI times curvature squared over its length, to the cloth's: curvature across the pinned
/// line by second differences of the rim nodes, so that stitches slide along the wire freely. The energy is a sum of squares, so
/// the tangent stays positive semi-definite. Its ends carry no moment.
/// </remarks>
/// <param name="Edge">Number of the edge.</param>
/// <param name="From">Where it enters, as a fraction of the pinned edge, 0 to 1.</param>
/// <param name="To">Where it leaves, beyond <paramref name="From"/>.</param>
/// <param name="Stiffness">Bending stiffness EI in the cloth's stiffness unit (force a width) times cubic millimetres, at least 0.</param>
/// <param name="Line">The pinned edge.</param>
public sealed record EdgeWire(int Edge, double From, double To, double Stiffness, EdgeCurve Line)
{
    /// <summary>Which point of the unblocked edge belongs where on the pinned line.</summary>
    public Correspondence Match { get; init; } = Correspondence.Even;
}
