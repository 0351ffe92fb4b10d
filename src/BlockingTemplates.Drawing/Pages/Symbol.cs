namespace BlockingTemplates.Drawing.Pages;

/// <summary>A small drawing used many times: drawn once, placed by <see cref="SymbolElement"/>.</summary>
/// <param name="Name">Name of the symbol, letters and hyphens; equal names in one document mean the same symbol.</param>
/// <param name="HalfSizeMm">Everything it draws lies within this distance of its origin along x and y.</param>
/// <param name="Content">What it draws about its origin. Holds no symbols, layers or clips.</param>
public sealed record Symbol(string Name, double HalfSizeMm, IReadOnlyList<Element> Content);
