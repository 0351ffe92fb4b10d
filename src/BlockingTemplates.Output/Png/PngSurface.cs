using BlockingTemplates.Drawing.Pages;
using BlockingTemplates.Drawing.Text;
using BlockingTemplates.Engine.Shapes;
using BlockingTemplates.Output.Pages;
using SkiaSharp;

namespace BlockingTemplates.Output.Png;

/// <summary>Draws on a canvas whose unit is the millimetre; y runs down from the height given.</summary>
internal sealed class PngSurface(SKCanvas canvas, double heightMm) : IPageSurface
{
    public void Draw(IReadOnlyList<PathStep> steps, Stroke? stroke, Fill? fill)
    {
        using var path = PathOf(steps);
        if (fill is not null)
        {
            using var paint = PaintOf(fill.Grey);
            canvas.DrawPath(path, paint);
        }

        if (stroke is null) return;
        using var pen = PaintOf(stroke.Grey);
        pen.Style = SKPaintStyle.Stroke;
        pen.StrokeWidth = (float)stroke.WidthMm;
        pen.StrokeJoin = SKStrokeJoin.Round;
        pen.StrokeCap = SKStrokeCap.Butt;
        var dashes = Ink.Dashes(stroke);
        using var dash = dashes.Count == 0 ? null : SKPathEffect.CreateDash([.. dashes.Select(d => (float)d)], 0);
        pen.PathEffect = dash;
        canvas.DrawPath(path, pen);
    }

    public void Draw(TextElement text)
    {
        var at = Of(text.At);
        using var font = Typefaces.FontOf(text.Weight, text.SizeMm);
        using var paint = PaintOf(text.Grey);
        using var state = new SKAutoCanvasRestore(canvas);
        if (text.AngleDegrees != 0) canvas.RotateDegrees((float)-text.AngleDegrees, at.X, at.Y);
        var align = text.Align switch
        {
            TextAlign.Left => SKTextAlign.Left,
            TextAlign.Centre => SKTextAlign.Center,
            TextAlign.Right => SKTextAlign.Right,
            _ => throw new ArgumentOutOfRangeException(nameof(text)),
        };
        canvas.DrawText(text.Text, at.X, at.Y, align, font, paint);
    }

    public void Draw(Symbol symbol, Point at, double scale, double angleDegrees)
    {
        var middle = Of(at);
        using var state = new SKAutoCanvasRestore(canvas);
        canvas.Translate(middle.X, middle.Y);
        if (angleDegrees != 0) canvas.RotateDegrees((float)-angleDegrees);
        if (scale != 1) canvas.Scale((float)scale);
        PageWalk.Draw(symbol, new PngSurface(canvas, heightMm: 0));
    }

    public void DrawInside(Box clip, Action content)
    {
        using var state = new SKAutoCanvasRestore(canvas);
        var (upperLeft, lowerRight) = (Of(new Point(clip.Left, clip.Upper)), Of(new Point(clip.Right, clip.Lower)));
        canvas.ClipRect(new SKRect(upperLeft.X, upperLeft.Y, lowerRight.X, lowerRight.Y), SKClipOperation.Intersect, antialias: true);
        content();
    }

    public void DrawOn(Layer layer, Action content)
    {
        if (layer.IsShown)
            content();
    }

    private static SKPaint PaintOf(double grey)
    {
        var level = Ink.Level(grey);
        return new SKPaint { Color = new SKColor(level, level, level), IsAntialias = true };
    }

    private SKPath PathOf(IReadOnlyList<PathStep> steps)
    {
        using var path = new SKPathBuilder();
        path.FillType = SKPathFillType.Winding;
        foreach (var step in steps)
        {
            switch (step.Kind)
            {
                case PathStepKind.Move:
                    path.MoveTo(Of(step.To));
                    break;
                case PathStepKind.Line:
                    path.LineTo(Of(step.To));
                    break;
                case PathStepKind.Cubic:
                    path.CubicTo(Of(step.Control1), Of(step.Control2), Of(step.To));
                    break;
                case PathStepKind.Close:
                    path.Close();
                    break;
                default:
                    throw new ArgumentOutOfRangeException(nameof(steps));
            }
        }

        return path.Detach();
    }

    private SKPoint Of(Point p) => new((float)p.X, (float)(heightMm - p.Y));
}
