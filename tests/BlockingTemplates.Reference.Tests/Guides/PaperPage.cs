using BlockingTemplates.Engine.Shapes;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.Core;
using UglyToad.PdfPig.Graphics;
using PdfPage = UglyToad.PdfPig.Content.Page;

namespace BlockingTemplates.Reference.Tests.Guides;

// One page of a finished PDF as an outside reader sees it, in millimetres of the paper, origin at the lower left.
// What the clip of a page hides is read as well; callers look at the middles.
internal sealed class PaperPage
{
    private const double MmPerPoint = 25.4 / 72;

    private PaperPage(PdfPage page, string label)
    {
        Label = label;
        (WidthPoints, HeightPoints) = (page.MediaBox.Bounds.Width, page.MediaBox.Bounds.Height);
        Lines = [.. page.Paths.Where(p => p.IsStroked).SelectMany(LinesOf)];
        Squares = page.Paths.Where(p => p.IsStroked).SelectMany(p => p).Count(IsSquare);
        Crosses = [.. FindCrosses()];
        Texts = TextsOf(page);
    }

    public string Label { get; }

    public double WidthPoints { get; }

    public double HeightPoints { get; }

    public Box Paper => new(0, 0, WidthPoints * MmPerPoint, HeightPoints * MmPerPoint);

    public IReadOnlyList<PaperLine> Lines { get; }

    // Stroked squares, such as the boxes to tick.
    public int Squares { get; }

    public IReadOnlyList<PaperCross> Crosses { get; }

    public IReadOnlyList<PaperText> Texts { get; }

    public static IReadOnlyList<PaperPage> Read(byte[] pdf)
    {
        using var document = PdfDocument.Open(pdf);
        var labels = PdfFacts.Labels(document);
        return [.. document.GetPages().Select((p, i) => new PaperPage(p, labels[i]))];
    }

    private static IEnumerable<PaperLine> LinesOf(PdfPath path)
    {
        var dashed = path.LineDashPattern is { Array.Count: > 0 };
        foreach (var line in path.SelectMany(s => s.Commands).OfType<PdfSubpath.Line>())
            yield return new(Of(line.From), Of(line.To), path.LineWidth * MmPerPoint, dashed);
    }

    private static bool IsSquare(PdfSubpath path) =>
        path.Commands.OfType<PdfSubpath.Line>().Count() is 3 or 4 && path.GetBoundingRectangle() is { } box && Math.Abs(box.Width - box.Height) < 0.01;

    private IEnumerable<PaperCross> FindCrosses()
    {
        var level = Lines.Where(l => l.IsLevel).ToLookup(l => (Math.Round(l.Middle.X, 1), Math.Round(l.Middle.Y, 1)));
        foreach (var upright in Lines.Where(l => l.IsUpright))
        {
            var at = upright.Middle;
            var near = from x in new[] { -0.1, 0, 0.1 } from y in new[] { -0.1, 0, 0.1 } select level[(Math.Round(Math.Round(at.X, 1) + x, 1), Math.Round(Math.Round(at.Y, 1) + y, 1))];
            if (near.SelectMany(l => l).Any(l => l.Middle.DistanceTo(at) < 0.002 && Math.Abs(l.LengthMm - upright.LengthMm) < 0.002))
                yield return new(at, upright.LengthMm);
        }
    }

    private static List<PaperText> TextsOf(PdfPage page)
    {
        var texts = new List<PaperText>();
        List<Letter> run = [];
        void Close()
        {
            if (run.Count > 0)
            {
                var box = Box.Around(run.SelectMany(l => new[] { Of(l.BoundingBox.BottomLeft), Of(l.BoundingBox.TopRight), Of(l.BoundingBox.TopLeft), Of(l.BoundingBox.BottomRight) }));
                texts.Add(new(string.Concat(run.Select(l => l.Value)), box, run[0].StartBaseLine.Y * MmPerPoint, run[0].FontSize * MmPerPoint, run[0].FontName?.EndsWith("Bold", StringComparison.Ordinal) ?? false, run[0].TextOrientation == TextOrientation.Horizontal));
            }

            run = [];
        }

        foreach (var letter in page.Letters)
        {
            if (run.Count > 0 && run[^1].EndBaseLine is var end && (Math.Abs(end.X - letter.StartBaseLine.X) > 0.01 || Math.Abs(end.Y - letter.StartBaseLine.Y) > 0.01 || letter.PointSize != run[0].PointSize || letter.FontName != run[0].FontName))
                Close();
            run.Add(letter);
        }

        Close();
        return texts;
    }

    private static Point Of(PdfPoint p) => new(p.X * MmPerPoint, p.Y * MmPerPoint);
}
