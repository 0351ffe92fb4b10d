using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Drawing.Pages;

/// <summary>One line of text.</summary>
/// <param name="Text">Any text; control characters are drawn as nothing. Characters the font lacks show as its missing-glyph box.</param>
/// <param name="At">The point of the baseline that <paramref name="Align"/> names.</param>
/// <param name="SizeMm">Font size (em) in millimetres, above 0.</param>
/// <param name="Weight">Regular or bold.</param>
/// <param name="Align">Which point of the baseline stands at <paramref name="At"/>.</param>
/// <param name="AngleDegrees">Turn of the baseline about <paramref name="At"/>, counter-clockwise.</param>
/// <param name="Grey">0 black to 1 white.</param>
public sealed record TextElement(
    string Text,
    Point At,
    double SizeMm,
    FontWeight Weight = FontWeight.Regular,
    TextAlign Align = TextAlign.Left,
    double AngleDegrees = 0,
    double Grey = 0) : Element;
