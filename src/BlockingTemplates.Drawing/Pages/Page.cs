namespace BlockingTemplates.Drawing.Pages;

/// <summary>One finished page or picture: what is drawn where, in millimetres.</summary>
/// <remarks>Origin at the lower left of the page, x to the right, y up. Immutable; every writer shows the same.</remarks>
/// <param name="WidthMm">Width of the page in millimetres, above 0.</param>
/// <param name="HeightMm">Height of the page in millimetres, above 0.</param>
/// <param name="Content">What is drawn, in drawing order (later on top).</param>
/// <param name="Label">The page's own name, such as "2-4" or "cover": a PDF's page label.</param>
/// <param name="Bookmark">Title in the document's bookmarks, or null for none.</param>
public sealed record Page(
    double WidthMm,
    double HeightMm,
    IReadOnlyList<Element> Content,
    string Label = "",
    string? Bookmark = null);
