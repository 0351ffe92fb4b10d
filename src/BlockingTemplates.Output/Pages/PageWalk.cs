using BlockingTemplates.Drawing.Pages;
using BlockingTemplates.Drawing.Text;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Output.Pages;

/// <summary>Walks through the elements of a page in drawing order, for every format alike.</summary>
/// <remarks>Throws <see cref="ArgumentException"/> for numbers that cannot be drawn (not finite, or a size that is not above 0).</remarks>
internal static class PageWalk
{
    public static void Draw(Page page, IPageSurface surface)
    {
        Check(IsSize(page.WidthMm) && IsSize(page.HeightMm), "A page's width and height are finite numbers above 0.");
        Draw(page.Content, Placement.Identity, surface);
    }

    /// <summary>Draws a symbol about the origin.</summary>
    public static void Draw(Symbol symbol, IPageSurface surface, double scale = 1) => Draw(symbol.Content, new(scale, scale, Point.Origin), surface);

    private static void Draw(IReadOnlyList<Element> content, Placement place, IPageSurface surface)
    {
        foreach (var element in content)
        {
            switch (element)
            {
                case PathElement path:
                    Draw(path, place, surface);
                    break;
                case TextElement text:
                    Draw(text, place, surface);
                    break;
                case SymbolElement symbol:
                    Check(IsPlace(symbol.At) && double.IsFinite(symbol.AngleDegrees), "A symbol's place and turn are finite numbers.");
                    Check(IsSize(symbol.Symbol.HalfSizeMm), "A symbol's half size is a finite number above 0.");
                    surface.Draw(symbol.Symbol, place.Map(symbol.At), place.Scale, symbol.AngleDegrees);
                    break;
                case LayerElement layer:
                    surface.DrawOn(layer.Layer, () => Draw(layer.Content, place, surface));
                    break;
                case PlacedElement placed:
                    Draw(placed, place, surface);
                    break;
                default:
                    throw new ArgumentException($"Nothing is known about drawing a {element.GetType().Name}.", nameof(content));
            }
        }
    }

    private static void Draw(PathElement path, Placement place, IPageSurface surface)
    {
        if (path.Steps.Count == 0 || (path.Stroke is null && path.Fill is null)) return;
        Check(path.Steps[0].Kind == PathStepKind.Move, "A path starts with a move.");
        Check(path.Steps.All(s => IsPlace(s.To) && IsPlace(s.Control1) && IsPlace(s.Control2)), "A path's places are finite numbers.");
        Check(path.Stroke is null || IsSize(path.Stroke.WidthMm), "A line's width is a finite number above 0.");
        var dash = path.Stroke?.DashMm;
        Check(dash is null or [] || (dash.All(d => double.IsFinite(d) && d >= 0) && dash.Any(d => d > 0)), "Dashes are finite numbers, none below 0 and not all 0.");
        surface.Draw(place.Map(path.Steps), place.Map(path.Stroke), path.Fill);
    }

    private static void Draw(TextElement text, Placement place, IPageSurface surface)
    {
        Check(IsPlace(text.At) && double.IsFinite(text.AngleDegrees) && IsSize(text.SizeMm), "A text's place and turn are finite numbers, its size one above 0.");
        var drawn = DrawnText.Of(text.Text);
        if (drawn.Length == 0) return;
        surface.Draw(text with { Text = drawn, At = place.Map(text.At), SizeMm = place.Scale * text.SizeMm });
    }

    private static void Draw(PlacedElement placed, Placement place, IPageSurface surface)
    {
        Check(IsPlace(placed.At) && IsSize(placed.Scale) && IsSize(placed.ScaleY ?? placed.Scale), "Placed content stands at finite numbers, with a scale above 0.");
        var inner = place.Then(placed);
        if (placed.Clip is not { } clip)
        {
            Draw(placed.Content, inner, surface);
            return;
        }

        Check(double.IsFinite(clip.Left + clip.Lower + clip.Right + clip.Upper), "A clip's sides are finite numbers.");
        if (clip.Width <= 0 || clip.Height <= 0) return;
        surface.DrawInside(place.Map(clip), () => Draw(placed.Content, inner, surface));
    }

    private static bool IsSize(double length) => double.IsFinite(length) && length > 0;

    private static bool IsPlace(Point p) => double.IsFinite(p.X) && double.IsFinite(p.Y);

    private static void Check(bool holds, string rule)
    {
        if (!holds) throw new ArgumentException(rule);
    }
}
