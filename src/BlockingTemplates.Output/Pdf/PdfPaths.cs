using BlockingTemplates.Drawing.Pages;
using BlockingTemplates.Output.Pages;
using PdfSharp.Drawing;

namespace BlockingTemplates.Output.Pdf;

/// <summary>Paths, pens and brushes for PDFsharp.</summary>
/// <remarks>
/// PDFsharp's path cannot start a second open stretch (its StartFigure does nothing), so lines are drawn stretch by
/// stretch; an area is filled in one go, each stretch closed as filling closes it anyway. It also takes black to be set
/// when a form begins, though a form begins with the line colour of where it is drawn: so other greys are put back.
/// </remarks>
internal static class PdfPaths
{
    public static void Draw(XGraphics graphics, PdfPoints points, IReadOnlyList<PathStep> steps, Stroke? stroke, Fill? fill)
    {
        if (fill is not null)
        {
            var area = new XGraphicsPath { FillMode = XFillMode.Winding };
            foreach (var stretch in Stretches(steps)) Add(area, points, stretch, close: true);
            graphics.DrawPath(BrushOf(fill.Grey), area);
        }

        if (stroke is null) return;
        var pen = PenOf(stroke);
        var state = Ink.Level(stroke.Grey) == 0 ? null : graphics.Save();
        foreach (var stretch in Stretches(steps))
        {
            var line = new XGraphicsPath();
            Add(line, points, stretch, close: stretch[^1].Kind == PathStepKind.Close);
            graphics.DrawPath(pen, line);
        }

        if (state is not null) graphics.Restore(state);
    }

    public static XBrush BrushOf(double grey) => new XSolidBrush(ColourOf(grey));

    private static XColor ColourOf(double grey)
    {
        var level = Ink.Level(grey);
        return XColor.FromArgb(level, level, level);
    }

    private static XPen PenOf(Stroke stroke)
    {
        var width = PdfPoints.Of(stroke.WidthMm);
        var pen = new XPen(ColourOf(stroke.Grey), width) { LineJoin = XLineJoin.Round, LineCap = XLineCap.Flat };
        var dashes = Ink.Dashes(stroke);
        if (dashes.Count > 0) pen.DashPattern = [.. dashes.Select(d => PdfPoints.Of(d) / width)]; // in widths of the pen
        return pen;
    }

    /// <summary>The stretches of a path that draw something, each starting with a move.</summary>
    private static IEnumerable<List<PathStep>> Stretches(IReadOnlyList<PathStep> steps)
    {
        var stretch = new List<PathStep>();
        foreach (var step in steps)
        {
            if (step.Kind == PathStepKind.Move)
            {
                if (stretch.Count > 1) yield return stretch;
                stretch = [step];
                continue;
            }

            stretch.Add(step);
            if (step.Kind != PathStepKind.Close) continue;
            var start = stretch[0];
            if (stretch.Count > 2) yield return stretch;
            stretch = [start]; // what follows a closed stretch without a move starts where that one did
        }

        if (stretch.Count > 1) yield return stretch;
    }

    private static void Add(XGraphicsPath path, PdfPoints points, List<PathStep> stretch, bool close)
    {
        var at = points.Of(stretch[0].To);
        foreach (var step in stretch.Skip(1))
        {
            if (step.Kind == PathStepKind.Close) continue;
            var to = points.Of(step.To);
            if (step.Kind == PathStepKind.Cubic) path.AddBezier(at, points.Of(step.Control1), points.Of(step.Control2), to);
            else path.AddLine(at, to);
            at = to;
        }

        if (close) path.CloseFigure();
    }
}
