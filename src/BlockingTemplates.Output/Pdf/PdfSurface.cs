using BlockingTemplates.Drawing.Pages;
using BlockingTemplates.Engine.Shapes;
using BlockingTemplates.Output.Pages;
using PdfSharp.Drawing;

namespace BlockingTemplates.Output.Pdf;

/// <summary>One page or symbol of a document, drawn on by PDFsharp.</summary>
internal sealed class PdfSurface(PdfParts parts, XGraphics graphics, PdfPoints points, XRect whole) : IPageSurface
{
    private static readonly XStringFormat Left = new() { Alignment = XStringAlignment.Near, LineAlignment = XLineAlignment.BaseLine };
    private static readonly XStringFormat Centre = new() { Alignment = XStringAlignment.Center, LineAlignment = XLineAlignment.BaseLine };
    private static readonly XStringFormat Right = new() { Alignment = XStringAlignment.Far, LineAlignment = XLineAlignment.BaseLine };

    private readonly List<XForm> _forms = [];
    private readonly Dictionary<XForm, Layer> _layers = [];
    private bool _onLayer;

    /// <summary>Layers drawn here, by the names PDFsharp gives their forms: numbered in the order of first use.</summary>
    public IEnumerable<(string FormName, Layer Layer)> LayersByName =>
        _forms.Select((form, i) => (Form: form, Name: $"/Fm{i}")).Where(f => _layers.ContainsKey(f.Form)).Select(f => (f.Name, _layers[f.Form]));

    public void Draw(IReadOnlyList<PathStep> steps, Stroke? stroke, Fill? fill) => PdfPaths.Draw(graphics, points, steps, stroke, fill);

    public void Draw(TextElement text)
    {
        var font = parts.Fonts.Of(text.Weight, PdfPoints.Of(text.SizeMm));
        var brush = PdfPaths.BrushOf(text.Grey);
        var format = text.Align switch
        {
            TextAlign.Left => Left,
            TextAlign.Centre => Centre,
            TextAlign.Right => Right,
            _ => throw new ArgumentOutOfRangeException(nameof(text)),
        };
        parts.Fonts.Note(text.Text, text.Weight);
        Turned(points.Of(text.At), text.AngleDegrees, at => graphics.DrawString(text.Text, font, brush, at, format));
    }

    public void Draw(Symbol symbol, Point at, double scale, double angleDegrees)
    {
        var form = parts.FormOf(symbol, scale);
        var size = form.PointWidth;
        Turned(points.Of(at), angleDegrees, middle => Draw(form, new XRect(middle.X - (size / 2), middle.Y - (size / 2), size, size)));
    }

    public void DrawInside(Box clip, Action content)
    {
        var state = graphics.Save();
        graphics.IntersectClip(points.Of(clip));
        content();
        graphics.Restore(state);
    }

    public void DrawOn(Layer layer, Action content)
    {
        if (_onLayer) throw new ArgumentException("Layers are not nested.", nameof(layer));
        var form = new XForm(parts.Document, whole);
        var page = graphics;
        _onLayer = true;
        using (graphics = XGraphics.FromForm(form)) content();
        _onLayer = false;
        graphics = page;
        _layers.Add(form, layer);
        Draw(form, whole);
    }

    private void Draw(XForm form, XRect where)
    {
        graphics.DrawImage(form, where);
        if (!_onLayer && !_forms.Contains(form)) _forms.Add(form); // on a layer the names are the layer's own
    }

    private void Turned(XPoint about, double angleDegrees, Action<XPoint> draw)
    {
        if (angleDegrees == 0)
        {
            draw(about);
            return;
        }

        var state = graphics.Save();
        graphics.RotateAtTransform(-angleDegrees, about);
        draw(about);
        graphics.Restore(state);
    }
}
