using PdfSharp.Pdf;

namespace BlockingTemplates.Output.Pdf;

/// <summary>Text strings outside the page's content.</summary>
internal static class PdfTexts
{
    /// <summary>A text string in UTF-16 (ISO 32000-1, 7.9.2.2): holds any title, brackets and backslashes too.</summary>
    public static PdfString Of(string text) => new(text, PdfStringEncoding.Unicode);
}
