using System.Text;
using System.Xml.Linq;
using BlockingTemplates.Drawing.Pages;
using BlockingTemplates.Output.Pdf;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Tokens;
using Page = BlockingTemplates.Drawing.Pages.Page;

namespace BlockingTemplates.Output.Tests.Pdf;

public class PdfCatalogTests
{
    private static readonly PathElement Line = new(PathSteps.Line(new(10, 10), new(20, 20)), new Stroke(0.3));

    public static TheoryData<string> NastyTexts =>
    [
        "Lace triangle",
        "(a) \\ b) )\\( ( \\n",
        "\"quotes\" & <tags> ]]> 'single'",
        "שלום עולם \u202Eright\u202C",
        "emoji 😀 👩‍🔧 and ü é ½",
        "12 0 obj <</Type/Metadata/Subtype/XML>> endobj xref trailer startxref 5",
        "þÿ bytes \u00FE\u00FF",
        "",
    ];

    [Theory]
    [MemberData(nameof(NastyTexts))]
    public void Any_title_bookmark_label_and_layer_name_reads_back_as_written(string text)
    {
        var bytes = PdfWriter.Write(new Document(text, [new Page(100, 100, [new LayerElement(new Layer(text), [Line])], text, text)]));
        PdfReading.AssertTableIsRight(bytes);
        using var pdf = PdfReading.Open(bytes);
        Assert.Equal(text, pdf.Information.Title ?? "");
        Assert.True(pdf.TryGetBookmarks(out var bookmarks));
        Assert.Equal(text, Assert.Single(bookmarks.GetNodes()).Title);
        Assert.Equal(text, Labels(pdf).GetValueOrDefault(0, ""));
        Assert.Equal(text, Assert.Single(LayerNames(pdf)));
        Assert.Equal(text, XmpTitle(pdf));
    }

    [Fact]
    public void Control_characters_in_titles_are_dropped_and_breaks_become_spaces()
    {
        using var pdf = PdfReading.Open(PdfWriter.Write(new Document("a\0b\u0007c\nd\uD83D", [new Page(100, 100, [], "x\ty", "l1\r\nl2")])));
        Assert.Equal("abc d\uFFFD", pdf.Information.Title);
        Assert.Equal("abc d\uFFFD", XmpTitle(pdf));
        Assert.Equal("x y", Labels(pdf)[0]);
        Assert.True(pdf.TryGetBookmarks(out var bookmarks));
        Assert.Equal("l1  l2", bookmarks.GetNodes().Single().Title);
    }

    [Fact]
    public void It_prints_at_actual_size_on_paper_of_its_own_size()
    {
        using var pdf = PdfReading.Open(PdfWriter.Write(new Document("", [new Page(100, 100, [])])));
        var preferences = PdfReading.Get<DictionaryToken>(pdf, PdfReading.Catalog(pdf), "ViewerPreferences");
        Assert.Equal("None", PdfReading.Get<NameToken>(pdf, preferences, "PrintScaling").Data);
        Assert.True(PdfReading.Get<BooleanToken>(pdf, preferences, "PickTrayByPDFSize").Data);
        Assert.True(PdfReading.Get<BooleanToken>(pdf, preferences, "DisplayDocTitle").Data);
        Assert.Equal(1.7, pdf.Version);
    }

    [Fact]
    public void Bookmarks_lead_to_their_pages_in_order()
    {
        var pages = new[] { "Cover", null, "Sheets", null, "Pin table" }.Select(b => new Page(100, 100, [], "", b)).ToList();
        using var pdf = PdfReading.Open(PdfWriter.Write(new Document("", pages)));
        Assert.True(pdf.TryGetBookmarks(out var bookmarks));
        var nodes = bookmarks.GetNodes().Cast<UglyToad.PdfPig.Outline.DocumentBookmarkNode>().ToList();
        Assert.Equal([("Cover", 1), ("Sheets", 3), ("Pin table", 5)], nodes.Select(n => (n.Title, n.PageNumber)));
        var without = PdfWriter.Write(new Document("", [new Page(100, 100, [])]));
        PdfReading.AssertTableIsRight(without);
        using var none = PdfReading.Open(without);
        Assert.False(none.TryGetBookmarks(out _));
    }

    [Fact]
    public void Page_labels_are_the_pages_own_names_with_no_numbers()
    {
        var labels = new[] { "cover", "pins", "pins", "", "1-1", "1-2" };
        using var pdf = PdfReading.Open(PdfWriter.Write(new Document("", [.. labels.Select(l => new Page(100, 100, [], l))])));
        var read = Labels(pdf);
        Assert.Equal([0, 1, 3, 4, 5], read.Keys.Order());
        for (var i = 0; i < labels.Length; i++) Assert.Equal(labels[i], read[read.Keys.Where(k => k <= i).Max()]);
    }

    [Fact]
    public void A_layer_on_many_pages_is_one_layer_and_all_are_shown_at_first()
    {
        LayerElement On(string name) => new(new Layer(name), [Line, new SymbolElement(CrossScene.Cross, new(50, 50))]);
        var symbol = new SymbolElement(CrossScene.Cross, new(10, 10));
        var bytes = PdfWriter.Write(new Document("", [new Page(100, 100, [symbol, On("Seams"), On("Marks")]), new Page(100, 100, [On("Marks"), Line, On("Seams"), On("Marks")])]));
        using var pdf = PdfReading.Open(bytes);
        Assert.Equal(["Seams", "Marks"], LayerNames(pdf));

        var properties = PdfReading.Get<DictionaryToken>(pdf, PdfReading.Catalog(pdf), "OCProperties");
        var groups = PdfReading.Get<ArrayToken>(pdf, properties, "OCGs").Data.Cast<IndirectReferenceToken>().Select(r => r.Data).ToList();
        var configuration = PdfReading.Get<DictionaryToken>(pdf, properties, "D");
        Assert.Equal("ON", PdfReading.Get<NameToken>(pdf, configuration, "BaseState").Data);
        Assert.False(configuration.TryGet(NameToken.Create("OFF"), out _));
        Assert.Equal(groups, PdfReading.Get<ArrayToken>(pdf, configuration, "Order").Data.Cast<IndirectReferenceToken>().Select(r => r.Data));

        Assert.Equal([[null, 0, 1], [1, 0, 1]], Enumerable.Range(1, 2).Select(page => FormGroups(pdf, page, groups)));
        Assert.Equal(2 + (2 * 3), PdfReading.Lines(pdf.GetPage(1)).Count); // the symbol, and a line and a symbol on each layer
    }

    [Fact]
    public void A_document_without_layers_or_labels_says_nothing_about_them()
    {
        using var pdf = PdfReading.Open(PdfWriter.Write(new Document("", [new Page(100, 100, [Line])])));
        Assert.False(PdfReading.Catalog(pdf).TryGet(NameToken.Create("OCProperties"), out _));
        Assert.False(PdfReading.Catalog(pdf).TryGet(NameToken.Create("PageLabels"), out _));
    }

    [Fact]
    public void There_is_no_clock_in_the_file()
    {
        var text = Encoding.Latin1.GetString(PdfWriter.Write(new Document("t", [new Page(100, 100, [Line])])));
        foreach (var key in new[] { "/CreationDate", "/ModDate", "CreateDate", "ModifyDate" }) Assert.DoesNotContain(key, text, StringComparison.Ordinal);
    }

    private static Dictionary<int, string> Labels(PdfDocument pdf)
    {
        if (!PdfReading.Catalog(pdf).TryGet(NameToken.Create("PageLabels"), out _)) return [];
        var numbers = PdfReading.Get<ArrayToken>(pdf, PdfReading.Get<DictionaryToken>(pdf, PdfReading.Catalog(pdf), "PageLabels"), "Nums").Data;
        var labels = new Dictionary<int, string>();
        for (var i = 0; i < numbers.Count; i += 2)
        {
            var label = PdfReading.Resolve<DictionaryToken>(pdf, numbers[i + 1]);
            Assert.False(label.TryGet(NameToken.Create("S"), out _));
            labels[((NumericToken)numbers[i]).Int] = label.TryGet(NameToken.Create("P"), out var prefix) ? PdfReading.Text(prefix) : "";
        }

        return labels;
    }

    private static List<string> LayerNames(PdfDocument pdf)
    {
        var groups = PdfReading.Get<ArrayToken>(pdf, PdfReading.Get<DictionaryToken>(pdf, PdfReading.Catalog(pdf), "OCProperties"), "OCGs").Data;
        return [.. groups.Select(g => PdfReading.Resolve<DictionaryToken>(pdf, g)).Select(g =>
        {
            Assert.Equal("OCG", PdfReading.Get<NameToken>(pdf, g, "Type").Data);
            return PdfReading.Text(PdfReading.Get<IToken>(pdf, g, "Name"));
        })];
    }

    /// <summary>For each form drawn on a page, in order of their names, the place of its layer in the list; null for none.</summary>
    private static List<int?> FormGroups(PdfDocument pdf, int page, List<UglyToad.PdfPig.Core.IndirectReference> groups)
    {
        var resources = PdfReading.Get<DictionaryToken>(pdf, pdf.GetPage(page).Dictionary, "Resources");
        var forms = PdfReading.Get<DictionaryToken>(pdf, resources, "XObject");
        return [.. forms.Data.OrderBy(f => f.Key, StringComparer.Ordinal).Select(f =>
        {
            var form = PdfReading.Resolve<StreamToken>(pdf, f.Value).StreamDictionary;
            return form.TryGet(NameToken.Create("OC"), out var oc) ? groups.IndexOf(((IndirectReferenceToken)oc).Data) : (int?)null;
        })];
    }

    private static string XmpTitle(PdfDocument pdf)
    {
        Assert.True(pdf.TryGetXmpMetadata(out var xmp));
        var xml = XDocument.Parse(Encoding.UTF8.GetString(xmp.GetXmlBytes()));
        return Assert.Single(xml.Descendants(XName.Get("title", "http://purl.org/dc/elements/1.1/"))).Value;
    }
}
