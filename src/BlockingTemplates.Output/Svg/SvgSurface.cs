using System.Globalization;
using System.Text;
using System.Xml;
using BlockingTemplates.Drawing.Pages;
using BlockingTemplates.Drawing.Text;
using BlockingTemplates.Engine.Shapes;
using BlockingTemplates.Output.Pages;
using static BlockingTemplates.Output.Svg.SvgNumber;

namespace BlockingTemplates.Output.Svg;

/// <summary>Writes what is drawn as SVG elements; y runs down from the height given.</summary>
internal sealed class SvgSurface(XmlWriter xml, SvgParts parts, double heightMm) : IPageSurface
{
    private const string XLink = "http://www.w3.org/1999/xlink";

    public void Draw(IReadOnlyList<PathStep> steps, Stroke? stroke, Fill? fill)
    {
        xml.WriteStartElement("path");
        xml.WriteAttributeString("d", PathData(steps));
        xml.WriteAttributeString("fill", fill is null ? "none" : Colour(fill.Grey));
        if (stroke is not null)
        {
            xml.WriteAttributeString("stroke", Colour(stroke.Grey));
            xml.WriteAttributeString("stroke-width", Of(stroke.WidthMm));
            var dashes = Ink.Dashes(stroke);
            if (dashes.Count > 0) xml.WriteAttributeString("stroke-dasharray", string.Join(' ', dashes.Select(Of)));
        }

        xml.WriteEndElement();
    }

    public void Draw(TextElement text)
    {
        var (x, y) = (Of(text.At.X), Of(heightMm - text.At.Y));
        xml.WriteStartElement("text");
        xml.WriteAttributeString("x", x);
        xml.WriteAttributeString("y", y);
        xml.WriteAttributeString("font-size", Of(text.SizeMm));
        if (text.Weight == FontWeight.Bold) xml.WriteAttributeString("font-weight", "700");
        if (text.Align == TextAlign.Centre) xml.WriteAttributeString("text-anchor", "middle");
        if (text.Align == TextAlign.Right) xml.WriteAttributeString("text-anchor", "end");
        if (text.AngleDegrees != 0) xml.WriteAttributeString("transform", $"rotate({Of(-text.AngleDegrees)} {x} {y})");
        xml.WriteAttributeString("fill", Colour(text.Grey));
        if (text.Text.StartsWith(' ') || text.Text.EndsWith(' ') || text.Text.Contains("  ", StringComparison.Ordinal))
        {
            xml.WriteAttributeString("xml", "space", null, "preserve");
        }

        xml.WriteString(text.Text);
        xml.WriteEndElement();
    }

    public void Draw(Symbol symbol, Point at, double scale, double angleDegrees)
    {
        var transform = $"translate({Of(at.X)} {Of(heightMm - at.Y)})";
        if (angleDegrees != 0) transform += $" rotate({Of(-angleDegrees)})";
        if (scale != 1) transform += $" scale({scale.ToString("0.########", CultureInfo.InvariantCulture)})";
        xml.WriteStartElement("use");
        xml.WriteAttributeString("href", XLink, "#" + parts.IdOf(symbol));
        xml.WriteAttributeString("transform", transform);
        xml.WriteEndElement();
    }

    public void DrawInside(Box clip, Action content)
    {
        var id = parts.NewId("clip", "");
        xml.WriteStartElement("clipPath");
        xml.WriteAttributeString("id", id);
        xml.WriteStartElement("rect");
        xml.WriteAttributeString("x", Of(clip.Left));
        xml.WriteAttributeString("y", Of(heightMm - clip.Upper));
        xml.WriteAttributeString("width", Of(clip.Width));
        xml.WriteAttributeString("height", Of(clip.Height));
        xml.WriteEndElement();
        xml.WriteEndElement();
        xml.WriteStartElement("g");
        xml.WriteAttributeString("clip-path", $"url(#{id})");
        content();
        xml.WriteEndElement();
    }

    public void DrawOn(Layer layer, Action content)
    {
        xml.WriteStartElement("g");
        xml.WriteAttributeString("id", parts.NewId("layer", layer.Name));
        xml.WriteAttributeString("data-name", DrawnText.TitleOf(layer.Name));
        if (!layer.IsShown)
            xml.WriteAttributeString("display", "none");
        content();
        xml.WriteEndElement();
    }

    private static string Colour(double grey) => string.Create(CultureInfo.InvariantCulture, $"#{Ink.Level(grey):x2}{Ink.Level(grey):x2}{Ink.Level(grey):x2}");

    private string PathData(IReadOnlyList<PathStep> steps)
    {
        var data = new StringBuilder();
        void Add(Point p) => data.Append(' ').Append(Of(p.X)).Append(' ').Append(Of(heightMm - p.Y));
        foreach (var step in steps)
        {
            if (data.Length > 0) data.Append(' ');
            switch (step.Kind)
            {
                case PathStepKind.Move:
                    data.Append('M');
                    Add(step.To);
                    break;
                case PathStepKind.Line:
                    data.Append('L');
                    Add(step.To);
                    break;
                case PathStepKind.Cubic:
                    data.Append('C');
                    Add(step.Control1);
                    Add(step.Control2);
                    Add(step.To);
                    break;
                case PathStepKind.Close:
                    data.Append('Z');
                    break;
                default:
                    throw new ArgumentOutOfRangeException(nameof(steps));
            }
        }

        return data.ToString();
    }
}
