using BlockingTemplates.Drawing.Pages;
using BlockingTemplates.Engine.Shapes;
using SkiaSharp;

namespace BlockingTemplates.Drawing.Text;

/// <summary>A text as areas, for what no font can set: mirror writing.</summary>
public static class GlyphOutline
{
    /// <summary>The glyphs of a text in mirror writing: it reads from the back of the sheet.</summary>
    /// <param name="text">One line of text.</param>
    /// <param name="centre">The middle of its baseline.</param>
    /// <param name="sizeMm">Font size (em) in millimetres.</param>
    /// <param name="weight">Weight.</param>
    public static IReadOnlyList<PathStep> Mirrored(string text, Point centre, double sizeMm, FontWeight weight)
    {
        using var font = Typefaces.FontOf(weight, sizeMm);
        font.LinearMetrics = true;
        using var path = font.GetTextPath(DrawnText.Of(text));
        var half = TextMeasure.AdvanceMm(text, sizeMm, weight) / 2;
        Point Place(SKPoint p) => new(centre.X + half - p.X, centre.Y - p.Y);
        List<PathStep> steps = [];
        using var iterator = path.CreateRawIterator();
        var points = new SKPoint[4];
        for (var verb = iterator.Next(points); verb != SKPathVerb.Done; verb = iterator.Next(points))
        {
            switch (verb)
            {
                case SKPathVerb.Move:
                    steps.Add(new(PathStepKind.Move, Place(points[0])));
                    break;
                case SKPathVerb.Line:
                    steps.Add(new(PathStepKind.Line, Place(points[1])));
                    break;
                case SKPathVerb.Quad:
                    Point from = Place(points[0]), control = Place(points[1]), to = Place(points[2]);
                    steps.Add(new(PathStepKind.Cubic, to, from.Toward(control, 2.0 / 3), to.Toward(control, 2.0 / 3)));
                    break;
                case SKPathVerb.Cubic:
                    steps.Add(new(PathStepKind.Cubic, Place(points[3]), Place(points[1]), Place(points[2])));
                    break;
                case SKPathVerb.Close:
                    steps.Add(new(PathStepKind.Close));
                    break;
                default:
                    throw new InvalidOperationException($"A glyph has a {verb} in its outline.");
            }
        }

        return steps;
    }
}
