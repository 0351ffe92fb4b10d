using System.Security.Cryptography;
using System.Text;
using BlockingTemplates.Drawing.Pages;
using BlockingTemplates.Drawing.Text;
using PdfSharp.Drawing;
using PdfSharp.Pdf;

namespace BlockingTemplates.Output.Pdf;

/// <summary>The fonts of one document, and what is drawn with them.</summary>
/// <remarks>
/// The typefaces are made from the shipped files directly, so no resolver is set for the whole process. They are shared
/// by all documents and threads; PDFsharp guards its caches of them.
/// </remarks>
internal sealed class PdfFonts
{
    private static readonly Lazy<XGlyphTypeface> Regular = new(() => Load(FontWeight.Regular));
    private static readonly Lazy<XGlyphTypeface> Bold = new(() => Load(FontWeight.Bold));

    private readonly Dictionary<(FontWeight Weight, double Size), XFont> _fonts = [];
    private readonly Dictionary<FontWeight, SortedSet<Rune>> _drawn = [];

    public XFont Of(FontWeight weight, double points)
    {
        if (_fonts.TryGetValue((weight, points), out var font)) return font;
        var typeface = weight == FontWeight.Bold ? Bold.Value : Regular.Value;
        return _fonts[(weight, points)] = new XFont(typeface, points, XPdfFontOptions.UnicodeDefault);
    }

    public void Note(string text, FontWeight weight)
    {
        if (!_drawn.TryGetValue(weight, out var runes)) _drawn[weight] = runes = [];
        foreach (var rune in text.EnumerateRunes()) runes.Add(rune);
    }

    /// <summary>Puts in order what PDFsharp leaves to chance or out: the subset's tag, and the width of the missing-glyph box.</summary>
    /// <remarks>The tag (ISO 32000-1, 9.6.4: six capitals) comes from what is drawn, so that equal tags mean equal subsets.</remarks>
    public void Settle(PdfDocument document)
    {
        var tag = Tag();
        var missingWidth = (int)Math.Round(1000 * TextMeasure.AdvanceMm("\uFFFD", 1));
        foreach (var dictionary in document.Internals.GetAllObjects().OfType<PdfDictionary>())
        {
            Rename(dictionary, "/BaseFont", tag);
            Rename(dictionary, "/FontName", tag);
            if (dictionary.Elements.GetName("/Subtype") == "/CIDFontType2") dictionary.Elements.SetInteger("/DW", missingWidth);
        }
    }

    private static void Rename(PdfDictionary dictionary, string key, string tag)
    {
        if (!dictionary.Elements.ContainsKey(key)) return;
        var name = dictionary.Elements.GetName(key);
        var plus = name.IndexOf('+', StringComparison.Ordinal);
        if (plus < 0) return;

        // PDFsharp names the font by family and style, with spaces; the font's own PostScript name has none.
        var bold = name.EndsWith("Bold", StringComparison.Ordinal) ? "Bold" : "Regular";
        dictionary.Elements.SetName(key, $"/{tag}+{FontFiles.FamilyName.Replace(" ", "", StringComparison.Ordinal)}-{bold}");
    }

    private string Tag()
    {
        var drawn = string.Join('\n', _drawn.OrderBy(w => w.Key).Select(w => $"{w.Key} {string.Concat(w.Value)}"));
        return string.Concat(SHA256.HashData(Encoding.UTF8.GetBytes(drawn)).Take(6).Select(b => (char)('A' + (b % 26))));
    }

    private static XGlyphTypeface Load(FontWeight weight) => new(XFontSource.GetOrCreateFrom(FontFiles.Of(weight).ToArray()));
}
