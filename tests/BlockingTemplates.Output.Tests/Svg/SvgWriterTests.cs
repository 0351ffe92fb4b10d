using System.Text;
using System.Text.RegularExpressions;
using BlockingTemplates.Drawing.Pages;
using BlockingTemplates.Drawing.Text;
using BlockingTemplates.Engine.Shapes;
using BlockingTemplates.Output.Svg;
using static BlockingTemplates.Output.Tests.SvgReading;

namespace BlockingTemplates.Output.Tests.Svg;

public partial class SvgWriterTests
{
    [Fact]
    public void One_unit_is_one_millimetre()
    {
        var root = Open(SvgWriter.Write(new Page(215.9, 279.4, []), "letter"));
        Assert.Equal(Space + "svg", root.Name);
        Assert.Equal(("215.9mm", "279.4mm", "0 0 215.9 279.4"), (root.Attribute("width")!.Value, root.Attribute("height")!.Value, root.Attribute("viewBox")!.Value));
    }

    [Theory]
    [InlineData("\"quotes\" & <tags> ]]> 'x' )\\(", null)]
    [InlineData("שלום 😀 é", null)]
    [InlineData("a\0b\u0001c\uFFFFd\u000Be", "abcde")]
    [InlineData("</title><script>alert(1)</script>", null)]
    public void Any_text_reads_back_without_what_xml_forbids(string text, string? read)
    {
        var page = new Page(100, 100, [new LayerElement(new Layer(text), [new TextElement(text, new(10, 20), 5)])]);
        var root = Open(SvgWriter.Write(page, text));
        Assert.Equal(read ?? text, root.Element(Space + "title")!.Value);
        Assert.Equal(read ?? text, root.Descendants(Space + "text").Single().Value);
        Assert.Equal(read ?? text, root.Descendants(Space + "g").Single(g => g.Attribute("data-name") is not null).Attribute("data-name")!.Value);
        Assert.Empty(root.Descendants(Space + "script"));
    }

    [Fact]
    public void Half_a_surrogate_pair_is_replaced() =>
        Assert.Equal("a\uFFFDb", Open(SvgWriter.Write(new Page(10, 10, []), "a\uD83Db")).Element(Space + "title")!.Value);

    [Fact]
    public void Spaces_at_the_ends_of_a_text_are_kept()
    {
        var page = new Page(100, 100, [new TextElement("  a  b ", new(10, 20), 5), new TextElement("a b", new(10, 20), 5)]);
        var texts = Open(SvgWriter.Write(page, "")).Descendants(Space + "text").ToList();
        Assert.Equal(["preserve", null], texts.Select(t => t.Attribute(System.Xml.Linq.XNamespace.Xml + "space")?.Value));
        Assert.Equal("  a  b ", texts[0].Value);
    }

    [Fact]
    public void Text_says_where_it_stands_how_large_and_which_way()
    {
        var page = new Page(100, 80, [new TextElement("a", new(10, 20), 5, FontWeight.Bold, TextAlign.Centre, 30, 0.5), new PlacedElement([new TextElement("b", new(1, 1), 4, Align: TextAlign.Right)], new(10, 10), 2)]);
        var texts = Open(SvgWriter.Write(page, "")).Descendants(Space + "text").ToList();
        Assert.Equal("10|60|5|700|middle|rotate(-30 10 60)|#808080", Values(texts[0], "x y font-size font-weight text-anchor transform fill"));
        Assert.Equal("12|68|8|end", Values(texts[1], "x y font-size text-anchor"));
        Assert.Null(texts[1].Attribute("transform"));
    }

    [Fact]
    public void Only_the_weights_used_are_embedded_and_whole()
    {
        Assert.DoesNotContain("@font-face", Text(new Page(10, 10, [])), StringComparison.Ordinal);
        var regular = Text(new Page(10, 10, [new TextElement("a", new(1, 1), 5)]));
        Assert.Equal(["400"], FacePattern().Matches(regular).Select(m => m.Groups[1].Value));
        Assert.Equal(FontFiles.Of(FontWeight.Regular).ToArray(), Convert.FromBase64String(FacePattern().Match(regular).Groups[2].Value));

        // Bold only in a symbol, where it is easily missed.
        var symbol = new Symbol("number", 5, [new TextElement("1", new(0, 0), 5, FontWeight.Bold)]);
        var bold = Text(new Page(10, 10, [new LayerElement(new Layer("l"), [new SymbolElement(symbol, new(5, 5))])]));
        Assert.Equal(["700"], FacePattern().Matches(bold).Select(m => m.Groups[1].Value));
        Assert.Equal(FontFiles.Of(FontWeight.Bold).ToArray(), Convert.FromBase64String(FacePattern().Match(bold).Groups[2].Value));

        static string Text(Page page) => Encoding.UTF8.GetString(SvgWriter.Write(page, ""));
    }

    [Fact]
    public void Layers_are_groups_with_readable_ids_and_no_id_stands_twice()
    {
        var line = new PathElement(PathSteps.Line(new(0, 0), new(1, 1)), new Stroke(0.3));
        LayerElement On(string name) => new(new Layer(name), [line, new SymbolElement(CrossScene.Cross, new(5, 5))]);
        PlacedElement Clipped(double at) => new([line], new(at, at), 1, new Box(0, 0, 9, 9));
        var root = Open(SvgWriter.Write(new Page(100, 100, [On("Lay line"), On("Seams & mats"), On("Lay line"), On("שכבה"), Clipped(1), Clipped(2)]), ""));
        Assert.Equal(["layer-lay-line", "layer-seams-mats", "layer-lay-line-2", "layer"], root.Descendants(Space + "g").Where(g => g.Attribute("data-name") is not null).Select(g => g.Attribute("id")!.Value));
        var ids = root.Descendants().Select(e => e.Attribute("id")?.Value).OfType<string>().ToList();
        Assert.Equal(ids.Count, ids.Distinct().Count());
        Assert.Single(root.Descendants(Space + "defs").Single().Elements());
        Assert.Equal(4, root.Descendants(Space + "use").Count());
        Assert.All(root.DescendantsAndSelf().SelectMany(e => e.Attributes()).Where(a => a.IsNamespaceDeclaration), a => Assert.Contains("w3.org", a.Value, StringComparison.Ordinal));
    }

    [Fact]
    public void A_clip_is_a_rectangle_with_y_turned_down()
    {
        var line = new PathElement(PathSteps.Line(new(0, 0), new(1, 1)), new Stroke(0.3));
        var root = Open(SvgWriter.Write(new Page(100, 100, [new PlacedElement([line], new(20, 30), 2, new Box(25, 35, 45, 60))]), ""));
        var rectangle = root.Descendants(Space + "clipPath").Single().Element(Space + "rect")!;
        Assert.Equal("25|40|20|25", Values(rectangle, "x y width height"));
        var group = root.Descendants(Space + "g").Single(g => g.Attribute("clip-path") is not null);
        Assert.Equal($"url(#{rectangle.Parent!.Attribute("id")!.Value})", group.Attribute("clip-path")!.Value);
        Assert.Single(group.Elements(Space + "path"));
    }

    [Fact]
    public void Curves_dashes_and_fills_are_written_out()
    {
        var path = new PathElement(PathSteps.Circle(new(50, 50), 10), new Stroke(0.25, 0.2, [3, 1.5, 1]), new Fill(1));
        var element = Open(SvgWriter.Write(new Page(100, 100, [path]), "")).Descendants(Space + "path").Single();
        Assert.Equal("0.25|#333333|3 1.5 1 3 1.5 1|#ffffff", Values(element, "stroke-width stroke stroke-dasharray fill"));
        Assert.Matches(@"^M 60 50 C 60 44\.4772 55\.5228 40 50 40 C [-0-9. C]+ Z$", element.Attribute("d")!.Value);
    }

    [Fact]
    public void No_zero_has_a_minus() => Assert.Equal(["0", "0", "-0.0001", "1.2346", "12000"], new[] { -0.0, -0.00001, -0.0001, 1.23456, 12000 }.Select(SvgNumber.Of));

    [GeneratedRegex(@"@font-face\{font-family:'Atkinson Hyperlegible Next';font-weight:(\d+);src:url\(data:font/ttf;base64,([A-Za-z0-9+/=]+)\)")]
    private static partial Regex FacePattern();
}
