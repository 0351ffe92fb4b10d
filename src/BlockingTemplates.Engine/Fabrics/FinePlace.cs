namespace BlockingTemplates.Engine.Fabrics;

/// <summary>A place on the outline where the mesh resolves a stitch of edge that may be held.</summary>
/// <param name="Edge">Number of the edge.</param>
/// <param name="Fraction">The stitch's middle, as a fraction of the edge's arc length; at 0 or 1 half the stitch lies on each
/// of the two edges that meet there.</param>
/// <param name="WidthMm">Width of the stitch along the edge, in millimetres, above 0.</param>
public readonly record struct FinePlace(int Edge, double Fraction, double WidthMm);
