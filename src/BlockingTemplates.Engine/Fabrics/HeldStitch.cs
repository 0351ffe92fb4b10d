using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Fabrics;

/// <summary>A pin: the mean place of one stitch of edge, held at a mark.</summary>
/// <remarks>
/// A pin is no point: a single held node would let the scallop grow without end as the mesh is refined. At a corner
/// (fraction 0 or 1) half the stitch lies on each of the two edges.
/// </remarks>
/// <param name="Edge">Number of the edge.</param>
/// <param name="Fraction">The stitch's middle, as a fraction of the unblocked edge's arc length, 0 to 1.</param>
/// <param name="WidthMm">Width of the unblocked stitch along the edge, in millimetres, above 0.</param>
/// <param name="Mark">Where it is held.</param>
public readonly record struct HeldStitch(int Edge, double Fraction, double WidthMm, Point Mark);
