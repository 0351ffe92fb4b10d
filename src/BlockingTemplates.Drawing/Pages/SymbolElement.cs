using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Drawing.Pages;

/// <summary>A symbol at a place.</summary>
/// <param name="Symbol">The symbol.</param>
/// <param name="At">Where its origin stands.</param>
/// <param name="AngleDegrees">Turn about its origin, counter-clockwise.</param>
public sealed record SymbolElement(Symbol Symbol, Point At, double AngleDegrees = 0) : Element;
