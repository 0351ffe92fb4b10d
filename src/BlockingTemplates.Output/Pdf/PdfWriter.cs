using BlockingTemplates.Drawing.Pages;
using BlockingTemplates.Drawing.Text;
using BlockingTemplates.Output.Pages;
using PdfSharp.Drawing;
using PdfSharp.Pdf;

namespace BlockingTemplates.Output.Pdf;

/// <summary>Turns a document into a PDF 1.7 file that prints at true size.</summary>
/// <remarks>
/// Page boxes in points to seven decimals, no scaling by the viewer, paper chosen by page size; places to 0.0001 point;
/// fonts embedded as subsets with a way back to Unicode; symbols drawn once; layers as optional content; bookmarks and
/// page labels. The same document gives the same bytes: no clock, no chance. Safe from several threads at once.
/// Pages longer than 5 m (14,400 points) are written, but some viewers do not show them (ISO 32000-1, Annex C).
/// </remarks>
public static class PdfWriter
{
    /// <summary>The bytes of the file.</summary>
    /// <param name="document">At least one page.</param>
    /// <exception cref="ArgumentException">No page, or numbers that cannot be drawn.</exception>
    public static byte[] Write(Document document)
    {
        ArgumentNullException.ThrowIfNull(document);
        if (document.Pages.Count == 0) throw new ArgumentException("A document has at least one page.", nameof(document));
        using var pdf = new PdfDocument();
        pdf.Options.ColorMode = PdfColorMode.Undefined; // no transparency group on the pages
        pdf.Options.CompressContentStreams = true;
        pdf.Info.Elements.Remove("/CreationDate");
        pdf.Info.Elements["/Title"] = PdfTexts.Of(DrawnText.TitleOf(document.Title));
        pdf.Info.Creator = "Blocking Templates";

        var parts = new PdfParts(pdf);
        foreach (var page in document.Pages) Add(page, parts);
        SetLabels(pdf, document.Pages);
        SetViewing(pdf);
        AddBookmarks(pdf, document.Pages);
        parts.Layers.Finish();
        parts.Fonts.Settle(pdf);
        foreach (var form in pdf.Internals.GetAllObjects().OfType<PdfDictionary>().Where(d => d.Elements.GetName("/Subtype") == "/Form"))
        {
            form.Stream?.Zip();
        }

        using var stream = new MemoryStream();
        pdf.Save(stream);
        return PdfIdentity.Settle(stream.ToArray(), DrawnText.TitleOf(document.Title));
    }

    private static void Add(Page page, PdfParts parts)
    {
        var pdf = parts.Document;
        var sheet = pdf.AddPage();
        var whole = new XRect(0, 0, PdfPoints.Of(page.WidthMm), PdfPoints.Of(page.HeightMm));
        sheet.MediaBox = new PdfRectangle(whole);
        PdfSurface surface;
        using (var graphics = XGraphics.FromPdfPage(sheet))
        {
            surface = new PdfSurface(parts, graphics, new PdfPoints(page.HeightMm), whole);
            PageWalk.Draw(page, surface);
        }

        var forms = sheet.Elements.GetDictionary("/Resources")?.Elements.GetDictionary("/XObject");
        foreach (var (name, layer) in surface.LayersByName)
        {
            var form = forms?.Elements.GetDictionary(name) ?? throw new InvalidOperationException($"The layer {layer.Name} was not drawn.");
            form.Elements["/OC"] = parts.Layers.GroupOf(layer).Reference!;
        }

        // PDFsharp writes its own rectangles with three decimals; an array of numbers keeps seven.
        sheet.Elements["/MediaBox"] = new PdfArray(pdf, new PdfReal(0), new PdfReal(0), new PdfReal(whole.Width), new PdfReal(whole.Height));
    }

    private static void AddBookmarks(PdfDocument pdf, IReadOnlyList<Page> pages)
    {
        // Even to look at PDFsharp's outlines makes an empty one, which spoils its cross-reference table.
        if (pages.All(p => p.Bookmark is null)) return;
        for (var i = 0; i < pages.Count; i++)
        {
            if (pages[i].Bookmark is not { } bookmark) continue;
            pdf.Outlines.Add(new PdfOutline(DrawnText.TitleOf(bookmark), pdf.Pages[i]) { PageDestinationType = PdfPageDestinationType.Fit });
        }

        pdf.PageMode = PdfPageMode.UseOutlines;
    }

    /// <summary>Page labels (ISO 32000-1, 12.4.2): each page's own name as prefix, with no numbering; runs of one name are one entry.</summary>
    private static void SetLabels(PdfDocument pdf, IReadOnlyList<Page> pages)
    {
        if (pages.All(p => p.Label.Length == 0)) return;
        var numbers = new PdfArray(pdf);
        for (var i = 0; i < pages.Count; i++)
        {
            if (i > 0 && pages[i].Label == pages[i - 1].Label) continue;
            var label = new PdfDictionary(pdf);
            if (pages[i].Label.Length > 0) label.Elements["/P"] = PdfTexts.Of(DrawnText.TitleOf(pages[i].Label));
            numbers.Elements.Add(new PdfInteger(i));
            numbers.Elements.Add(label);
        }

        var tree = new PdfDictionary(pdf);
        tree.Elements["/Nums"] = numbers;
        pdf.Internals.Catalog.Elements["/PageLabels"] = tree;
    }

    /// <summary>Viewer preferences (ISO 32000-1, 12.2): print at actual size, on paper of the page's size.</summary>
    private static void SetViewing(PdfDocument pdf)
    {
        var preferences = new PdfDictionary(pdf);
        preferences.Elements.SetName("/PrintScaling", "/None");
        preferences.Elements.SetBoolean("/PickTrayByPDFSize", true);
        preferences.Elements.SetBoolean("/DisplayDocTitle", true);
        pdf.Internals.Catalog.Elements["/ViewerPreferences"] = preferences;
    }
}
