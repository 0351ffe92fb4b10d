namespace BlockingTemplates.Engine.Fabrics;

/// <summary>A mesh node on the outline.</summary>
/// <param name="Edge">Number of the edge it lies on; a corner belongs to the edge that starts there.</param>
/// <param name="Fraction">Its fraction of that edge's arc length, 0 up to but not 1.</param>
/// <param name="ArcMm">Its arc length from the first corner of the outline, in millimetres.</param>
public readonly record struct RimNode(int Edge, double Fraction, double ArcMm);
