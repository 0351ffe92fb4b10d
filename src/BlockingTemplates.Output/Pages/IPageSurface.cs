using BlockingTemplates.Drawing.Pages;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Output.Pages;

/// <summary>What a format draws on: everything arrives in the millimetres of the page (or of the symbol), y up.</summary>
internal interface IPageSurface
{
    /// <summary>Draws a line or area.</summary>
    void Draw(IReadOnlyList<PathStep> steps, Stroke? stroke, Fill? fill);

    /// <summary>Draws a text, already without what is not drawn; never empty.</summary>
    void Draw(TextElement text);

    /// <summary>Draws a symbol at a place, scaled and turned.</summary>
    void Draw(Symbol symbol, Point at, double scale, double angleDegrees);

    /// <summary>Draws what shows inside a rectangle.</summary>
    void DrawInside(Box clip, Action content);

    /// <summary>Draws on a layer.</summary>
    void DrawOn(Layer layer, Action content);
}
