using System.Globalization;
using BlockingTemplates.Drawing.Pages;
using BlockingTemplates.Output.Pdf;
using BlockingTemplates.Output.Png;
using BlockingTemplates.Output.Svg;
using CsCheck;
using SixLabors.ImageSharp;
using SixLabors.ImageSharp.PixelFormats;
using Point = BlockingTemplates.Engine.Shapes.Point;

namespace BlockingTemplates.Output.Tests;

public class AllWritersTests
{
    private const double PdfTolerance = 0.0001;
    private const double SvgTolerance = 0.00012; // half of 0.0001 mm in x, in y, and in the height from which y is taken

    [Fact]
    public void Pdf_shows_every_cross_in_its_place()
    {
        using var pdf = PdfReading.Open(PdfWriter.Write(new Document("crosses", [CrossScene.Page])));
        Segment.AssertSame(CrossScene.Lines, PdfReading.Lines(pdf.GetPage(1)), PdfTolerance);
    }

    [Fact]
    public void Svg_shows_every_cross_in_its_place() =>
        Segment.AssertSame(CrossScene.Lines, SvgReading.Lines(SvgReading.Open(SvgWriter.Write(CrossScene.Page, "crosses"))), SvgTolerance);

    [Fact]
    public void Png_shows_every_cross_in_its_place()
    {
        const double Dpi = 254; // ten pixels a millimetre
        using var image = Image.Load<L8>(PngWriter.Write(CrossScene.Page, Dpi));
        Assert.Equal((2970, 2100), (image.Width, image.Height));
        double Dark(Point p) => 1 - (image[(int)Math.Floor(10 * p.X), (int)Math.Floor(10 * (CrossScene.HeightMm - p.Y))].PackedValue / 255.0);

        foreach (var (at, arm, angle) in CrossScene.Places)
        {
            // The middle of all darkness within reach is the middle of the cross; nothing else is near.
            double weight = 0, x = 0, y = 0;
            for (var i = -13 * arm; i <= 13 * arm; i++)
            {
                for (var j = -13 * arm; j <= 13 * arm; j++)
                {
                    var p = new Point(Math.Floor((10 * at.X) + i) / 10 + 0.05, (Math.Floor((10 * at.Y) + j) / 10) + 0.05);
                    var dark = Dark(p);
                    weight += dark;
                    x += dark * (p.X - at.X);
                    y += dark * (p.Y - at.Y);
                }
            }

            Assert.True(weight > 10, $"nothing at {at}");
            Assert.InRange(Math.Sqrt((x * x) + (y * y)) / weight, 0, 0.02);
            foreach (var line in CrossScene.LinesOf(at, arm, angle))
            {
                Assert.True(Dark(at.Toward(line.A, 0.9)) > 0.9 && Dark(at.Toward(line.B, 0.9)) > 0.9, $"no arm at {at}");
                Assert.Equal(0, Dark(at.Toward(line.A, 1.15)));
            }

            foreach (var line in CrossScene.LinesOf(at, arm, angle + 45)) Assert.Equal(0, Dark(line.A));
        }
    }

    [Fact]
    public void Pdf_and_svg_agree_with_plain_arithmetic_on_random_pages()
    {
        var coordinate = Gen.Double[-200, 200];
        var placed = Gen.Select(coordinate, coordinate, Gen.Double[0.05, 5], Gen.Bool);
        Gen.Select(Gen.Double[50, 2000], placed.List[0, 3], Gen.Select(coordinate, coordinate, Gen.Double[-360, 360]).List[1, 5]).Sample(
            (side, nest, crosses) =>
            {
                IReadOnlyList<Element> content = [.. crosses.Select(c => new SymbolElement(CrossScene.Cross, new(c.Item1, c.Item2), c.Item3))];
                var expected = crosses.Select(c => (At: new Point(c.Item1, c.Item2), CrossScene.Arm, Angle: c.Item3)).ToList();
                var layered = false;
                foreach (var (x, y, scale, layer) in nest)
                {
                    content = [new PlacedElement(content, new(x, y), scale)];
                    if (layer && !layered) content = [new LayerElement(new Layer("a layer"), content)];
                    layered |= layer;
                    expected = [.. expected.Select(e => (new Point(x + (scale * e.At.X), y + (scale * e.At.Y)), scale * e.Arm, e.Angle))];
                }

                var page = new Page(side, side, content);
                var lines = expected.SelectMany(e => CrossScene.LinesOf(e.At, e.Arm, e.Angle)).ToList();
                var furthest = lines.Max(l => Math.Max(Math.Abs(l.A.X) + Math.Abs(l.A.Y), Math.Abs(l.B.X) + Math.Abs(l.B.Y)));
                using var pdf = PdfReading.Open(PdfWriter.Write(new Document("", [page])));

                // Places are written to 0.0001 point or mm. A turn has a last decimal too: in the SVG it tells on long arms, in the
                // PDF, where a symbol is turned about a corner of the page and moved back, twice 0.0000001 of the way from there.
                var arm = expected.Max(e => e.Arm);
                Segment.AssertSame(lines, PdfReading.Lines(pdf.GetPage(1)), PdfTolerance + (2e-7 * (side + furthest)));
                Segment.AssertSame(lines, SvgReading.Lines(SvgReading.Open(SvgWriter.Write(page, ""))), SvgTolerance + (2e-6 * arm));
            },
            iter: 500,
            seed: "0000KWc4nUb2");
    }

    [Fact]
    public void The_same_page_gives_the_same_bytes_in_any_culture()
    {
        var (pdf, svg, png) = All();
        Assert.Equal((pdf, svg, png), All());
        var before = CultureInfo.CurrentCulture;
        try
        {
            var comma = (CultureInfo)CultureInfo.InvariantCulture.Clone();
            comma.NumberFormat.NumberDecimalSeparator = ",";
            comma.NumberFormat.NegativeSign = "minus";
            CultureInfo.CurrentCulture = comma;
            Assert.Equal("1,5", 1.5.ToString(CultureInfo.CurrentCulture)); // the culture is at work
            Assert.Equal((pdf, svg, png), All());
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }

        static (string Pdf, string Svg, string Png) All() => (
            Convert.ToHexString(PdfWriter.Write(new Document("culture -1.5", [CrossScene.Page]))),
            Convert.ToHexString(SvgWriter.Write(CrossScene.Page, "culture")),
            Convert.ToHexString(PngWriter.Write(CrossScene.Page, 72.5)));
    }

    public static TheoryData<Element> Undrawable =>
    [
        new PathElement(PathSteps.Line(new(0, 0), new(double.NaN, 1)), new Stroke(1)),
        new PathElement([new(PathStepKind.Line, new(1, 1))], new Stroke(1)),
        new PathElement(PathSteps.Line(new(0, 0), new(1, 1)), new Stroke(0)),
        new PathElement(PathSteps.Line(new(0, 0), new(1, 1)), new Stroke(1, 2)),
        new PathElement(PathSteps.Line(new(0, 0), new(1, 1)), new Stroke(1, 0, [0, 0])),
        new TextElement("a", new(0, double.PositiveInfinity), 3),
        new TextElement("a", new(0, 0), 0),
        new SymbolElement(CrossScene.Cross, new(0, 0), double.NaN),
        new PlacedElement([], new(0, 0), -1),
    ];

    [Theory]
    [MemberData(nameof(Undrawable), DisableDiscoveryEnumeration = true)]
    public void What_cannot_be_drawn_is_refused_by_every_writer(Element element)
    {
        var page = new Page(100, 100, [element]);
        Assert.ThrowsAny<ArgumentException>(() => PdfWriter.Write(new Document("", [page])));
        Assert.ThrowsAny<ArgumentException>(() => SvgWriter.Write(page, ""));
        Assert.ThrowsAny<ArgumentException>(() => PngWriter.Write(page, 100));
    }
}
