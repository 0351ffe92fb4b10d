using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Drawing.Pages;

/// <summary>Things drawn elsewhere, moved and scaled, and cut at a rectangle if one is given.</summary>
/// <param name="Content">What is drawn, in its own millimetres.</param>
/// <param name="At">Where the content's origin stands in the surrounding millimetres.</param>
/// <param name="Scale">Surrounding millimetres for one of the content's, above 0.</param>
/// <param name="Clip">What of it shows, in the surrounding millimetres, or null for all.</param>
/// <param name="ScaleY">The same along y where it differs, above 0. Line widths, text and symbols then scale by the geometric mean.</param>
public sealed record PlacedElement(IReadOnlyList<Element> Content, Point At, double Scale = 1, Box? Clip = null, double? ScaleY = null) : Element;
