namespace BlockingTemplates.Drawing.Pages;

/// <summary>How a line is drawn: round joins and butt ends.</summary>
/// <param name="WidthMm">Width in millimetres, above 0.</param>
/// <param name="Grey">0 black to 1 white.</param>
/// <param name="DashMm">Lengths of dash and gap in turn, in millimetres; null or empty for a whole line.</param>
public sealed record Stroke(double WidthMm, double Grey = 0, IReadOnlyList<double>? DashMm = null);
