using System.Text;
using System.Xml;
using BlockingTemplates.Drawing.Pages;
using BlockingTemplates.Drawing.Text;
using BlockingTemplates.Output.Pages;

namespace BlockingTemplates.Output.Svg;

/// <summary>Turns a page into an SVG 1.1 picture at true size.</summary>
/// <remarks>
/// Width and height in millimetres with a matching viewBox, so that one user unit is one millimetre; places to 0.0001 mm.
/// Layers are groups with a readable id and data-name, symbols are defined once, the fonts used are embedded whole.
/// The same page gives the same bytes.
/// </remarks>
public static class SvgWriter
{
    private const string Svg = "http://www.w3.org/2000/svg";

    /// <summary>The bytes of the file, in UTF-8.</summary>
    /// <param name="page">The page.</param>
    /// <param name="title">Title of the picture, as the maker wrote it; any text.</param>
    /// <param name="withFonts">Whether the fonts used go into the file; without them it has no style sheet and leaves both to the page it stands in.</param>
    /// <exception cref="ArgumentException">Numbers that cannot be drawn.</exception>
    public static byte[] Write(Page page, string title, bool withFonts = true)
    {
        ArgumentNullException.ThrowIfNull(page);
        var parts = new SvgParts();
        PageWalk.Draw(page, parts);

        using var stream = new MemoryStream();
        var settings = new XmlWriterSettings { Encoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false), Indent = true, NewLineChars = "\n" };
        using (var xml = XmlWriter.Create(stream, settings))
        {
            var (width, height) = (SvgNumber.Of(page.WidthMm), SvgNumber.Of(page.HeightMm));
            xml.WriteStartElement("svg", Svg);
            xml.WriteAttributeString("xmlns", "xlink", null, "http://www.w3.org/1999/xlink");
            xml.WriteAttributeString("version", "1.1");
            xml.WriteAttributeString("width", width + "mm");
            xml.WriteAttributeString("height", height + "mm");
            xml.WriteAttributeString("viewBox", $"0 0 {width} {height}");
            xml.WriteElementString("title", DrawnText.TitleOf(title));
            if (withFonts && parts.Weights.Count > 0) xml.WriteElementString("style", FontFaces(parts.Weights));
            WriteSymbols(xml, parts);
            xml.WriteStartElement("g");
            if (parts.Weights.Count > 0) xml.WriteAttributeString("font-family", $"'{FontFiles.FamilyName}', sans-serif");
            xml.WriteAttributeString("stroke-linejoin", "round");
            PageWalk.Draw(page, new SvgSurface(xml, parts, page.HeightMm));
            xml.WriteEndElement();
            xml.WriteEndElement();
        }

        return stream.ToArray();
    }

    private static void WriteSymbols(XmlWriter xml, SvgParts parts)
    {
        if (parts.Symbols.Count == 0) return;
        xml.WriteStartElement("defs");
        foreach (var symbol in parts.Symbols)
        {
            xml.WriteStartElement("g");
            xml.WriteAttributeString("id", parts.IdOf(symbol));
            PageWalk.Draw(symbol, new SvgSurface(xml, parts, heightMm: 0));
            xml.WriteEndElement();
        }

        xml.WriteEndElement();
    }

    private static string FontFaces(IEnumerable<FontWeight> weights)
    {
        // No kerning and no ligatures: what TextMeasure measures.
        var style = new StringBuilder("text{font-kerning:none;font-variant-ligatures:none;text-rendering:geometricPrecision}");
        foreach (var weight in weights)
        {
            style.Append("\n@font-face{font-family:'").Append(FontFiles.FamilyName).Append("';font-weight:")
                .Append(weight == FontWeight.Bold ? "700" : "400")
                .Append(";src:url(data:font/ttf;base64,").Append(Convert.ToBase64String(FontFiles.Of(weight).Span)).Append(") format('truetype')}");
        }

        return style.ToString();
    }
}
