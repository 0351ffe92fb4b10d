using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Drawing.Pages;

/// <summary>Things drawn elsewhere, moved and scaled, and cut at a rectangle if one is given.</summary>
/// <param name="Content">What is drawn, in its own millimetres.</param>
/// <param name="At">Where the content's origin stands in the surrounding millimetres.</param>
/// <param name="ScaleX">Surrounding millimetres for one of the content's along x, above 0. Line widths and text scale too.</param>
/// <param name="ScaleY">Surrounding millimetres for one of the content's along y, above 0.</param>
/// <param name="Clip">What of it shows, in the surrounding millimetres, or null for all.</param>
public sealed record PlacedElement(IReadOnlyList<Element> Content, Point At, double ScaleX = 1, double ScaleY = 1, Box? Clip = null) : Element;
