using System.Text;
using BlockingTemplates.Drawing.Pages;
using BlockingTemplates.Drawing.Text;
using BlockingTemplates.Engine.Shapes;
using BlockingTemplates.Output.Pdf;
using UglyToad.PdfPig.Tokens;
using Point = BlockingTemplates.Engine.Shapes.Point;

namespace BlockingTemplates.Output.Tests.Pdf;

public class PdfWriterTests
{
    private const double Micron = 0.001;

    [Fact]
    public void An_a4_page_has_the_exact_media_box_and_no_other()
    {
        // 210 x 297 mm (ISO 216) times 72/25.4: 595.2756 x 841.8898 points.
        var bytes = PdfWriter.Write(new Document("", [new Page(210, 297, [])]));
        using var pdf = PdfReading.Open(bytes);
        var page = pdf.GetPage(1);
        Assert.Equal(595.2756, page.MediaBox.Bounds.Width, 5e-5);
        Assert.Equal(841.8898, page.MediaBox.Bounds.Height, 5e-5);
        Assert.Equal((0, 0), (page.MediaBox.Bounds.Left, page.MediaBox.Bounds.Bottom));
        Assert.Equal(210, PdfReading.Mm(page.MediaBox.Bounds.Width), 1e-6);
        Assert.Equal(297, PdfReading.Mm(page.MediaBox.Bounds.Height), 1e-6);
        Assert.False(page.Dictionary.TryGet(NameToken.Create("CropBox"), out _));
        Assert.False(page.Dictionary.TryGet(NameToken.Create("Rotate"), out _));
        Assert.False(page.Dictionary.TryGet(NameToken.Create("UserUnit"), out _));
        PdfReading.AssertTableIsRight(bytes);
    }

    [Fact]
    public void Pages_may_have_sizes_of_their_own_and_lie_on_their_side()
    {
        using var pdf = PdfReading.Open(PdfWriter.Write(new Document("", [new Page(297, 210, []), new Page(215.9, 279.4, []), new Page(5000, 300, [])])));
        Assert.Equal((297, 210), (Math.Round(PdfReading.Mm(pdf.GetPage(1).Width), 5), Math.Round(PdfReading.Mm(pdf.GetPage(1).Height), 5)));
        Assert.Equal((612, 792), (pdf.GetPage(2).Width, pdf.GetPage(2).Height)); // letter, 8.5 x 11 in (ASME Y14.1)
        Assert.Equal(5000, PdfReading.Mm(pdf.GetPage(3).Width), 1e-5);
    }

    [Theory]
    [InlineData(100)]
    [InlineData(1500)]
    [InlineData(4990)]
    public void A_bar_is_as_long_as_it_was_drawn(double length)
    {
        var (from, to) = (new Point(3.3, 150), new Point(3.3 + length, 150.777));
        var page = new Page(length + 10, 300, [new PathElement(PathSteps.Line(from, to), new Stroke(0.25))]);
        using var pdf = PdfReading.Open(PdfWriter.Write(new Document("", [page])));
        var bar = Assert.Single(PdfReading.Lines(pdf.GetPage(1)));
        Assert.Equal(0, bar.DistanceTo(new(from, to)), 0.0001); // asked for: 0.05 mm over 1.5 m
    }

    [Fact]
    public void Lines_keep_their_width_dashes_grey_ends_and_joins()
    {
        var page = new Page(200, 200,
        [
            new PathElement(PathSteps.Line(new(10, 10), new(90, 10)), new Stroke(0.25, 0.5, [4, 2, 1])),
            new PlacedElement([new PathElement(PathSteps.Line(new(10, 20), new(90, 20)), new Stroke(0.5, 0, [3, 2]))], Point.Origin, 2),
            new PathElement(PathSteps.Line(new(10, 60), new(90, 60)), new Stroke(0.25)),
        ]);
        using var pdf = PdfReading.Open(PdfWriter.Write(new Document("", [page])));
        var lines = pdf.GetPage(1).Paths.Where(p => p.IsStroked).ToList();
        Assert.Equal([0.25, 1, 0.25], lines.Select(l => Math.Round(PdfReading.Mm(l.LineWidth), 3)));
        Assert.Equal([[4, 2, 1, 4, 2, 1], [6, 4], []], lines.Select(l => l.LineDashPattern!.Value.Array.Select(d => Math.Round(PdfReading.Mm(d), 3)).ToArray()));
        Assert.Equal([0.5, 0, 0], lines.Select(GreyOf));
        Assert.All(lines, l => Assert.Equal(("Butt", "Round"), (l.LineCapStyle.ToString(), l.LineJoinStyle.ToString())));
    }

    [Fact]
    public void A_symbol_is_black_also_after_a_grey_line()
    {
        // A form begins with the colours of the place where it is drawn.
        var grey = new PathElement(PathSteps.Line(new(10, 10), new(90, 10)), new Stroke(0.3, 0.5));
        var page = new Page(100, 100, [grey, new SymbolElement(CrossScene.Cross, new(50, 50)), new LayerElement(new Layer("l"), [grey, new SymbolElement(CrossScene.Cross, new(20, 50))])]);
        using var pdf = PdfReading.Open(PdfWriter.Write(new Document("", [page])));
        var greys = pdf.GetPage(1).Paths.Where(p => p.IsStroked).Select(GreyOf);
        Assert.Equal([0.5, 0, 0, 0.5, 0, 0], greys);
    }

    [Fact]
    public void Areas_with_holes_are_filled_once_and_stretches_are_not_joined()
    {
        IReadOnlyList<PathStep> ring =
        [
            .. PathSteps.Rectangle(new(10, 10, 50, 50)),
            new(PathStepKind.Move, new(20, 20)), new(PathStepKind.Line, new(20, 40)), new(PathStepKind.Line, new(40, 40)), new(PathStepKind.Close),
        ];
        var page = new Page(100, 100,
        [
            new PathElement(ring, null, new Fill(0.8)),
            new PathElement([.. PathSteps.Line(new(60, 10), new(70, 10)), .. PathSteps.Line(new(80, 10), new(90, 10))], new Stroke(0.5)),
            new PathElement([.. PathSteps.Rectangle(new(60, 60, 70, 70)), new(PathStepKind.Line, new(55, 60))], new Stroke(0.5)),
        ]);
        using var pdf = PdfReading.Open(PdfWriter.Write(new Document("", [page])));
        var area = Assert.Single(pdf.GetPage(1).Paths, p => p.IsFilled);
        Assert.Equal(2, area.Count);
        Assert.Equal("NonZeroWinding", area.FillingRule.ToString());
        Segment.AssertSame(
            [new(new(60, 10), new(70, 10)), new(new(80, 10), new(90, 10)), new(new(60, 60), new(55, 60))], // the last goes on from where the rectangle began
            PdfReading.Lines(pdf.GetPage(1)),
            Micron);
    }

    [Fact]
    public void Text_stands_where_it_is_put_and_is_as_wide_as_measured()
    {
        const string Text = "Lace 6.9 ½ – Größe AV";
        foreach (var weight in Enum.GetValues<FontWeight>())
        {
            foreach (var (align, part) in new[] { (TextAlign.Left, 0), (TextAlign.Centre, 0.5), (TextAlign.Right, 1) })
            {
                foreach (var angle in new[] { 0.0, 90, -37.5 })
                {
                    var page = new Page(300, 300, [new TextElement(Text, new(123.4, 150.6), 5.3, weight, align, angle)]);
                    using var pdf = PdfReading.Open(PdfWriter.Write(new Document("", [page])));
                    var letters = pdf.GetPage(1).Letters;
                    Assert.Equal(Text, string.Concat(letters.Select(l => l.Value)));
                    var width = TextMeasure.AdvanceMm(Text, 5.3, weight);
                    var along = Vector.AtAngle(angle * Math.PI / 180);
                    var start = new Point(123.4, 150.6) - ((part * width) * along);
                    Assert.InRange(PdfReading.Mm(letters[0].StartBaseLine).DistanceTo(start), 0, Micron);
                    Assert.InRange(PdfReading.Mm(letters[^1].EndBaseLine).DistanceTo(start + (width * along)), 0, 5 * Micron);
                }
            }
        }
    }

    [Fact]
    public void Every_character_of_the_font_can_be_searched_for()
    {
        var all = string.Concat(Enumerable.Range(0x21, 0x2700 - 0x21).Select(c => (char)c).Where(c => DrawnText.Of(c.ToString()).Length == 1 && !char.IsWhiteSpace(c) && TextMeasure.HasEveryGlyph(c.ToString())));
        Assert.True(all.Length > 300);
        using var pdf = PdfReading.Open(PdfWriter.Write(new Document("", [new Page(3000, 100, [new TextElement(all, new(5, 50), 5)])])));

        // Two characters that share a glyph are told apart no more: micro sign and Greek mu, and the like.
        var (read, differ) = (string.Concat(pdf.GetPage(1).Letters.Select(l => l.Value)), 0);
        Assert.Equal(all.Length, read.Length);
        for (var i = 0; i < all.Length; i++)
        {
            if (all[i] == read[i]) continue;
            differ++;
            Assert.Equal(TextMeasure.InkBox(all[i].ToString(), 1), TextMeasure.InkBox(read[i].ToString(), 1));
        }

        Assert.InRange(differ, 0, 8);
    }

    [Fact]
    public void Missing_characters_take_the_width_of_their_box()
    {
        const string Text = "a\u05D0\U0001F600b";
        using var pdf = PdfReading.Open(PdfWriter.Write(new Document("", [new Page(100, 100, [new TextElement(Text, new(10, 50), 5), new TextElement("\u05D0", new(10, 20), 5, FontWeight.Bold)])])));
        var letters = pdf.GetPage(1).Letters;
        var last = letters.First(l => l.Value == "b");
        Assert.Equal(10 + TextMeasure.AdvanceMm(Text, 5), PdfReading.Mm(last.EndBaseLine.X), Micron);
    }

    [Fact]
    public void Only_the_glyphs_used_are_embedded()
    {
        int Size(string text) => PdfWriter.Write(new Document("", [new Page(100, 100, [new TextElement(text, new(10, 10), 5)])])).Length;
        Assert.InRange(Size("1"), 1000, 6000); // the whole font has 48 kB
        Assert.InRange(Size("The quick brown fox jumps over the lazy dog") - Size("1"), 1000, 12000);
    }

    [Fact]
    public void Symbols_are_written_once_and_compressed()
    {
        var page = new Page(300, 300, [.. Enumerable.Range(0, 500).Select(i => new SymbolElement(CrossScene.Cross, new(10 + (i % 25 * 10), 10 + (i / 25 * 10)), i))]);
        var bytes = PdfWriter.Write(new Document("", [page, page, page with { WidthMm = 400 }]));
        var text = Encoding.Latin1.GetString(bytes);
        Assert.Equal(2, text.Split("/Subtype/Form").Length);
        Assert.DoesNotContain(" Do Q", text, StringComparison.Ordinal);
        Assert.DoesNotContain(" l\nS", text, StringComparison.Ordinal);
        using var pdf = PdfReading.Open(bytes);
        Assert.Equal(1000, PdfReading.Lines(pdf.GetPage(3)).Count);
    }

    [Fact]
    public void A_clip_is_a_rectangle_around_the_content_only()
    {
        var inner = new PathElement(PathSteps.Line(new(0, 0), new(10, 10)), new Stroke(0.3));
        var page = new Page(100, 100, [new PlacedElement([inner], new(20, 30), 2, new Box(25, 35, 45, 60)), inner]);
        using var pdf = PdfReading.Open(PdfWriter.Write(new Document("", [page])));
        var operations = pdf.GetPage(1).Operations.Select(o => o.Operator).ToList();
        var clip = operations.FindIndex(o => o is "W" or "W*");
        var strokes = operations.Select((o, i) => (o, i)).Where(o => o.o == "S").Select(o => o.i).ToList();
        Assert.True(clip > 0 && strokes.Count == 2 && clip < strokes[0]);
        Assert.Contains("Q", operations.Skip(strokes[0]).Take(strokes[1] - strokes[0]));
        var corners = pdf.GetPage(1).Paths.Single(p => p.IsClipping).GetBoundingRectangle()!.Value;
        Assert.Equal((25, 35, 45, 60), (Math.Round(PdfReading.Mm(corners.Left), 3), Math.Round(PdfReading.Mm(corners.Bottom), 3), Math.Round(PdfReading.Mm(corners.Right), 3), Math.Round(PdfReading.Mm(corners.Top), 3)));
    }

    [Fact]
    public void An_empty_document_is_refused()
    {
        Assert.Throws<ArgumentException>(() => PdfWriter.Write(new Document("", [])));
        Assert.Throws<ArgumentException>(() => PdfWriter.Write(new Document("", [new Page(0, 100, [])])));
        var nested = new LayerElement(new Layer("a"), [new LayerElement(new Layer("b"), [])]);
        Assert.Throws<ArgumentException>(() => PdfWriter.Write(new Document("", [new Page(100, 100, [nested])])));
    }

    /// <summary>Grey of a line; black where no colour was ever set (ISO 32000-1, Table 52).</summary>
    private static double GreyOf(UglyToad.PdfPig.Graphics.PdfPath path) => Math.Round(path.StrokeColor?.ToRGBValues().r ?? 0, 2);
}
