using System.Globalization;
using System.Xml.Linq;
using BlockingTemplates.Drawing.Overviews;
using BlockingTemplates.Drawing.Pages;
using BlockingTemplates.Engine;
using BlockingTemplates.Engine.Shapes;
using BlockingTemplates.Output.Packets;
using BlockingTemplates.Output.Pdf;
using BlockingTemplates.Output.Png;
using BlockingTemplates.Output.Svg;
using BlockingTemplates.Reference.Tests.Planning;
using SixLabors.ImageSharp;
using SixLabors.ImageSharp.Metadata;
using SixLabors.ImageSharp.PixelFormats;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Core;
using Image = SixLabors.ImageSharp.Image;
using Point = BlockingTemplates.Engine.Shapes.Point;

namespace BlockingTemplates.Reference.Tests.Overviews;

// The whole overview through all writers: outside readers find the dots of the marks at the same places.
public class OnePictureTests
{
    private const double AgreeMm = 0.002; // SVG writes to 0.0001 mm, PDF to 0.0001 point
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    public static TheoryData<string> Examples => [.. Planned.Examples];

    [Theory]
    [MemberData(nameof(Examples))]
    public void Svg_pdf_and_png_show_the_marks_at_the_same_places(string example)
    {
        var plan = Planned.Example(example);
        var page = OverviewPicture.Draw(plan);
        var svg = SvgDots(SvgWriter.Write(page, plan.Project.Title));
        var pdf = PdfDots(PdfWriter.Write(new Document("overview", [page])));
        AssertIsThePlan(plan, svg);
        Assert.Equal(svg.Count, pdf.Count);
        Assert.All(svg.Zip(pdf), pair => Assert.True(pair.First.At.DistanceTo(pair.Second.At) < AgreeMm, $"{pair}"));
        Assert.All(svg.Zip(pdf), pair => Assert.Equal(pair.First.RadiusMm, pair.Second.RadiusMm, AgreeMm));

        using var png = Image.Load<L8>(PngWriter.Write(page, PacketFiles.OverviewDotsPerInch));
        foreach (var (at, radius) in svg)
        {
            Assert.True(IsBlack(png, page, at, 0.7 * radius), $"No dot at {at}.");
            // Beyond the dot it is not black all over, whatever lines go through it.
            Assert.False(IsBlack(png, page, at, 2 * radius), $"More than a dot at {at}.");
        }
    }

    [Fact]
    public void The_png_of_the_packet_has_the_pages_size_and_says_its_density()
    {
        var plan = Planned.Example(Planned.Triangle);
        var page = OverviewPicture.Draw(plan);
        var file = PacketFiles.Of(plan, pictureOnly: true).Single(f => f.Name == "overview.png");
        using var png = Image.Load(file.Bytes.ToArray());
        // 150 dots an inch are 5905.5 a metre; PNG holds whole dots a metre (ISO/IEC 15948, 11.3.5.3).
        Assert.Equal((Math.Round(page.WidthMm * 150 / 25.4), Math.Round(page.HeightMm * 150 / 25.4)), (png.Width, png.Height));
        var metres = png.Metadata.ResolutionUnits switch
        {
            PixelResolutionUnit.PixelsPerMeter => 1.0,
            PixelResolutionUnit.PixelsPerCentimeter => 100,
            PixelResolutionUnit.PixelsPerInch => 1000 / 25.4,
            var other => throw new InvalidOperationException($"The density stands in {other}."),
        };
        Assert.Equal(150 / 0.0254, png.Metadata.HorizontalResolution * metres, 0.51);
        Assert.Equal(150 / 0.0254, png.Metadata.VerticalResolution * metres, 0.51);
    }

    [Fact]
    public void The_svg_is_as_large_as_the_page_in_millimetres()
    {
        var page = OverviewPicture.Draw(Planned.Example(Planned.Crescent));
        var root = Parse(SvgWriter.Write(page, "overview")).Root!;
        string Mm(double value) => value.ToString("0.####", CultureInfo.InvariantCulture);
        Assert.Equal($"{Mm(page.WidthMm)}mm", root.Attribute("width")!.Value);
        Assert.Equal($"{Mm(page.HeightMm)}mm", root.Attribute("height")!.Value);
        Assert.Equal($"0 0 {Mm(page.WidthMm)} {Mm(page.HeightMm)}", root.Attribute("viewBox")!.Value);
    }

    // One scale for the whole picture: every distance between dots over that of their marks.
    private static void AssertIsThePlan(Plan plan, List<(Point At, double RadiusMm)> dots)
    {
        var marks = plan.Pins.Marks;
        Assert.Equal(marks.Count, dots.Count);
        var far = marks.MaxBy(m => m.At.DistanceTo(marks[0].At))!;
        var scale = dots[far.Number - 1].At.DistanceTo(dots[0].At) / far.At.DistanceTo(marks[0].At);
        Assert.InRange(scale, 0.05, 0.5);
        foreach (var a in marks)
        {
            var shift = dots[a.Number - 1].At - dots[0].At;
            Assert.Equal(scale * (a.At.X - marks[0].At.X), shift.X, AgreeMm);
            Assert.Equal(scale * (a.At.Y - marks[0].At.Y), shift.Y, AgreeMm);
        }
    }

    private static List<(Point At, double RadiusMm)> SvgDots(byte[] svg)
    {
        var document = Parse(svg);
        var height = double.Parse(document.Root!.Attribute("viewBox")!.Value.Split(' ')[3], CultureInfo.InvariantCulture);
        return [.. document.Descendants(Svg + "path")
            .Where(p => p.Attribute("fill")!.Value == "#000000" && p.Attribute("d")!.Value.Contains('C', StringComparison.Ordinal))
            .Select(p => DotOf([.. Numbers(p.Attribute("d")!.Value)], y => height - y))];
    }

    private static IEnumerable<double> Numbers(string path) =>
        path.Split(' ').Where(w => !char.IsLetter(w[0])).Select(w => double.Parse(w, CultureInfo.InvariantCulture));

    // A circle of four cubics: a start, and after it every third point on the circle.
    private static (Point At, double RadiusMm) DotOf(double[] numbers, Func<double, double> up)
    {
        var points = Enumerable.Range(0, numbers.Length / 2).Select(i => new Point(numbers[2 * i], up(numbers[(2 * i) + 1]))).ToList();
        var box = Box.Around(points.Where((_, i) => i % 3 == 0));
        return (box.Centre, box.Width / 2);
    }

    private static List<(Point At, double RadiusMm)> PdfDots(byte[] pdf)
    {
        const double MmPerPoint = 25.4 / 72;
        using var document = PdfDocument.Open(pdf);
        return [.. document.GetPage(1).Paths
            .Where(p => p.IsFilled && !p.IsStroked)
            .SelectMany(p => p)
            .Where(s => s.Commands.OfType<PdfSubpath.CubicBezierCurve>().Count() == 4)
            .Select(s => Box.Around(s.Commands.OfType<PdfSubpath.CubicBezierCurve>().Select(c => new Point(c.EndPoint.X * MmPerPoint, c.EndPoint.Y * MmPerPoint))))
            .Select(b => (b.Centre, b.Width / 2))];
    }

    private static bool IsBlack(Image<L8> png, Page page, Point at, double radiusMm)
    {
        double perMm = PacketFiles.OverviewDotsPerInch / 25.4, x = at.X * perMm, y = (page.HeightMm - at.Y) * perMm, r = radiusMm * perMm;
        for (var row = (int)Math.Floor(y - r); row <= y + r; row++)
        {
            for (var column = (int)Math.Floor(x - r); column <= x + r; column++)
            {
                var away = Math.Sqrt(Math.Pow(column + 0.5 - x, 2) + Math.Pow(row + 0.5 - y, 2));
                if (away <= r && png[column, row].PackedValue > 96)
                    return false;
            }
        }

        return true;
    }

    private static XDocument Parse(byte[] svg)
    {
        using var stream = new MemoryStream(svg);
        return XDocument.Load(stream);
    }
}
