using BlockingTemplates.Drawing.Pages;
using BlockingTemplates.Drawing.Text;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Reference.Tests.Texts;

// All texts of a page where they are seen, whatever they are nested in.
internal static class PageTexts
{
    public static IReadOnlyList<SeenText> Of(Page page)
    {
        var texts = new List<SeenText>();
        Gather(page.Content, 1, 1, Point.Origin, null, texts);
        return texts;
    }

    private static void Gather(IEnumerable<Element> content, double scaleX, double scaleY, Point at, Box? clip, List<SeenText> texts)
    {
        Point On(Point p) => new(at.X + (scaleX * p.X), at.Y + (scaleY * p.Y));
        foreach (var element in content)
        {
            switch (element)
            {
                case TextElement text when Ink(text with { At = On(text.At), SizeMm = text.SizeMm * Math.Sqrt(scaleX * scaleY) }) is { } corners:
                    var ink = Box.Around(corners);
                    var seen = clip is { } shown ? Common(ink, shown) : ink;
                    if (seen is { Width: > 0, Height: > 0 })
                        texts.Add(new(text.Text, corners, ink, seen));
                    break;
                case LayerElement layer:
                    Gather(layer.Content, scaleX, scaleY, at, clip, texts);
                    break;
                case SymbolElement symbol:
                    Assert.DoesNotContain(symbol.Symbol.Content, e => e is TextElement);
                    break;
                case PlacedElement placed:
                    Box? inner = placed.Clip is { } own ? new(On(new(own.Left, own.Lower)).X, On(new(own.Left, own.Lower)).Y, On(new(own.Right, own.Upper)).X, On(new(own.Right, own.Upper)).Y) : null;
                    var both = inner is { } i && clip is { } c ? Common(i, c) : inner ?? clip;
                    Gather(placed.Content, scaleX * placed.Scale, scaleY * (placed.ScaleY ?? placed.Scale), On(placed.At), both, texts);
                    break;
            }
        }
    }

    // The corners of the ink of a text on the page, turned as the text is.
    private static Point[]? Ink(TextElement text)
    {
        if (TextMeasure.InkBox(text.Text, text.SizeMm, text.Weight) is not { } ink)
            return null;
        var advance = TextMeasure.AdvanceMm(text.Text, text.SizeMm, text.Weight);
        var start = text.Align switch { TextAlign.Left => 0, TextAlign.Centre => -advance / 2, _ => -advance };
        // Quarter turns exactly, so that level boxes stay level.
        Vector along = text.AngleDegrees switch { 0 => new(1, 0), 90 => new(0, 1), var a => Vector.AtAngle(a * Math.PI / 180) };
        Point At(double x, double y) => text.At + ((x + start) * along) + (y * along.TurnedLeft);
        return [At(ink.Left, ink.Lower), At(ink.Right, ink.Lower), At(ink.Right, ink.Upper), At(ink.Left, ink.Upper)];
    }

    private static Box Common(Box a, Box b) => new(Math.Max(a.Left, b.Left), Math.Max(a.Lower, b.Lower), Math.Min(a.Right, b.Right), Math.Min(a.Upper, b.Upper));
}
