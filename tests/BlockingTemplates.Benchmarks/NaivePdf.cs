using BlockingTemplates.Drawing.Guides;
using BlockingTemplates.Drawing.Pages;
using BlockingTemplates.Drawing.Text;
using BlockingTemplates.Engine;
using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Shapes;
using PdfSharp.Drawing;
using PdfSharp.Pdf;

namespace BlockingTemplates.Benchmarks;

/// <summary>The reference: pages drawn straightforwardly with PDFsharp, each element by itself, no forms, no layers.</summary>
internal sealed class NaivePdf
{
    private readonly Dictionary<FontWeight, XGlyphTypeface> _typefaces = new()
    {
        [FontWeight.Regular] = new(XFontSource.GetOrCreateFrom(FontFiles.Of(FontWeight.Regular).ToArray())),
        [FontWeight.Bold] = new(XFontSource.GetOrCreateFrom(FontFiles.Of(FontWeight.Bold).ToArray())),
    };

    private readonly Dictionary<(FontWeight, double), XFont> _fonts = [];

    /// <summary>The guide's pages where each sheet holds the whole picture, cut at its print: nobody sorted out what it shows.</summary>
    public static Document WholeOnEachSheet(Plan plan)
    {
        var picture = new GuidePicture(plan, plan.Plot);
        List<Element> whole = [.. plan.Plot.Layout.Sheets.SelectMany(picture.On)];
        var document = GuideDocument.Draw(plan, plan.Guides[0]);
        return document with
        {
            Pages = [.. document.Pages.Select(p => p.Content[0] is PlacedElement { ScaleY: not null } placed ? p with { Content = [placed with { Content = whole }, .. p.Content.Skip(1)] } : p)],
        };
    }

    public byte[] Write(Document document)
    {
        using var pdf = new PdfDocument();
        pdf.Options.CompressContentStreams = true;
        foreach (var page in document.Pages)
        {
            var sheet = pdf.AddPage();
            (sheet.Width, sheet.Height) = (XUnit.FromPoint(Points(page.WidthMm)), XUnit.FromPoint(Points(page.HeightMm)));
            using var graphics = XGraphics.FromPdfPage(sheet);
            Draw(graphics, page.Content, p => new(Points(p.X), Points(page.HeightMm - p.Y)), 1);
        }

        using var stream = new MemoryStream();
        pdf.Save(stream);
        return stream.ToArray();
    }

    private static double Points(double millimetres) => Length.FromMillimetres(millimetres).Points;

    private void Draw(XGraphics graphics, IReadOnlyList<Element> content, Func<Point, XPoint> place, double scale)
    {
        foreach (var element in content)
        {
            switch (element)
            {
                case PathElement path:
                    Draw(graphics, path, place, scale);
                    break;
                case TextElement text:
                    Draw(graphics, text, place, scale);
                    break;
                case SymbolElement symbol:
                    Turned(graphics, place(symbol.At), symbol.AngleDegrees, () =>
                        Draw(graphics, symbol.Symbol.Content, p => place(symbol.At + (p - Point.Origin)), scale));
                    break;
                case LayerElement { Layer.IsShown: true } layer:
                    Draw(graphics, layer.Content, place, scale);
                    break;
                case PlacedElement placed:
                    var state = graphics.Save();
                    if (placed.Clip is { } clip)
                        graphics.IntersectClip(new XRect(place(new(clip.Left, clip.Upper)), place(new(clip.Right, clip.Lower))));
                    Draw(graphics, placed.Content, p => place(new(placed.At.X + (placed.Scale * p.X), placed.At.Y + ((placed.ScaleY ?? placed.Scale) * p.Y))), scale * placed.Scale);
                    graphics.Restore(state);
                    break;
            }
        }
    }

    private static void Draw(XGraphics graphics, PathElement element, Func<Point, XPoint> place, double scale)
    {
        var path = new XGraphicsPath { FillMode = XFillMode.Winding };
        var pen = element.Stroke is { } s ? PenOf(s, scale) : null;
        XPoint at = default;
        var isEmpty = true;
        foreach (var step in element.Steps)
        {
            var to = place(step.To);
            switch (step.Kind)
            {
                case PathStepKind.Move:
                    Finish();
                    break;
                case PathStepKind.Line:
                    path.AddLine(at, to);
                    isEmpty = false;
                    break;
                case PathStepKind.Cubic:
                    path.AddBezier(at, place(step.Control1), place(step.Control2), to);
                    isEmpty = false;
                    break;
                default:
                    path.CloseFigure();
                    break;
            }

            at = to;
        }

        Finish();

        void Finish()
        {
            if (!isEmpty && element.Fill is { } fill)
                graphics.DrawPath(new XSolidBrush(Grey(fill.Grey)), path);
            if (!isEmpty && pen is not null)
                graphics.DrawPath(pen, path);
            path = new XGraphicsPath { FillMode = XFillMode.Winding };
            isEmpty = true;
        }
    }

    private void Draw(XGraphics graphics, TextElement text, Func<Point, XPoint> place, double scale)
    {
        var size = Points(scale * text.SizeMm);
        if (!_fonts.TryGetValue((text.Weight, size), out var font))
            font = _fonts[(text.Weight, size)] = new XFont(_typefaces[text.Weight], size, XPdfFontOptions.UnicodeDefault);
        var format = new XStringFormat
        {
            Alignment = text.Align switch { TextAlign.Left => XStringAlignment.Near, TextAlign.Centre => XStringAlignment.Center, _ => XStringAlignment.Far },
            LineAlignment = XLineAlignment.BaseLine,
        };
        var at = place(text.At);
        Turned(graphics, at, text.AngleDegrees, () => graphics.DrawString(text.Text, font, new XSolidBrush(Grey(text.Grey)), at, format));
    }

    private static void Turned(XGraphics graphics, XPoint about, double degrees, Action draw)
    {
        if (degrees == 0)
        {
            draw();
            return;
        }

        var state = graphics.Save();
        graphics.RotateAtTransform(-degrees, about);
        draw();
        graphics.Restore(state);
    }

    private static XPen PenOf(Stroke stroke, double scale)
    {
        var width = Points(scale * stroke.WidthMm);
        var pen = new XPen(Grey(stroke.Grey), width) { LineJoin = XLineJoin.Round };
        if (stroke.DashMm is { Count: > 0 } dashes)
            pen.DashPattern = [.. (dashes.Count % 2 == 0 ? dashes : [.. dashes, .. dashes]).Select(d => d / stroke.WidthMm)];
        return pen;
    }

    private static XColor Grey(double grey)
    {
        var level = (int)Math.Round(255 * grey);
        return XColor.FromArgb(level, level, level);
    }
}
