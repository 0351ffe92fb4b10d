using System.Buffers.Binary;
using System.IO.Compression;
using System.Text;
using BlockingTemplates.Drawing.Pages;
using BlockingTemplates.Drawing.Text;
using BlockingTemplates.Engine.Shapes;
using BlockingTemplates.Output.Png;
using SixLabors.ImageSharp;
using SixLabors.ImageSharp.Metadata;
using SixLabors.ImageSharp.PixelFormats;

namespace BlockingTemplates.Output.Tests.Png;

public class PngWriterTests
{
    [Theory]
    [InlineData(300, 2480, 3508, 11811)] // A4 at 300 dots per inch: 2480 x 3508 pixels, 11,811 a metre (common figures)
    [InlineData(96, 794, 1123, 3780)]
    [InlineData(25.4, 210, 297, 1000)]
    public void A_picture_has_the_size_and_density_asked_for(double dpi, int width, int height, int pixelsPerMetre)
    {
        var png = PngWriter.Write(new Page(210, 297, []), dpi);
        using var image = Image.Load<L8>(png);
        Assert.Equal((width, height), (image.Width, image.Height));
        Assert.Equal(PixelResolutionUnit.PixelsPerMeter, image.Metadata.ResolutionUnits);
        Assert.Equal((pixelsPerMetre, pixelsPerMetre), (image.Metadata.HorizontalResolution, image.Metadata.VerticalResolution));
        Assert.Equal(255, image[0, 0].PackedValue);
        Assert.Equal(255, image[width - 1, height - 1].PackedValue);
    }

    [Fact]
    public void Every_chunk_has_its_right_check_value()
    {
        // The second way: gzip ends with the same check value of what it packed (RFC 1952, 2.3.1).
        var png = PngWriter.Write(CrossScene.Page, 100);
        var names = new List<string>();
        for (var at = 8; at < png.Length;)
        {
            var length = (int)BinaryPrimitives.ReadUInt32BigEndian(png.AsSpan(at));
            var checkedPart = png.AsSpan(at + 4, 4 + length);
            names.Add(Encoding.ASCII.GetString(checkedPart[..4]));
            Assert.Equal(GzipCheckValue(checkedPart), BinaryPrimitives.ReadUInt32BigEndian(png.AsSpan(at + 8 + length)));
            at += 12 + length;
        }

        Assert.Equal(["IHDR", "pHYs"], names.Take(2));
        Assert.Equal("IEND", names[^1]);
        Assert.Single(names, "pHYs");
        Assert.Equal(0xCBF43926u, Crc32.Of("123456789"u8)); // the customary check of this polynomial, from memory

        static uint GzipCheckValue(ReadOnlySpan<byte> bytes)
        {
            using var packed = new MemoryStream();
            using (var gzip = new GZipStream(packed, CompressionLevel.Fastest, leaveOpen: true)) gzip.Write(bytes);
            return BinaryPrimitives.ReadUInt32LittleEndian(packed.ToArray().AsSpan()[^8..]);
        }
    }

    [Fact]
    public void Greys_fills_dashes_and_clips_are_where_they_should_be()
    {
        var page = new Page(100, 100,
        [
            new PathElement(PathSteps.Rectangle(new(10, 70, 30, 90)), null, new Fill(0.5)),
            new PathElement(PathSteps.Line(new(10, 50), new(90, 50)), new Stroke(2, 0, [20, 10])),
            new PlacedElement([new PathElement(PathSteps.Rectangle(new(0, 0, 50, 20)), null, new Fill(0))], new(10, 10), 1, new Box(20, 0, 40, 100)),
        ]);
        using var image = Image.Load<L8>(PngWriter.Write(page, 254));
        byte At(double x, double y) => image[(int)(10 * x), (int)(10 * (100 - y))].PackedValue;
        Assert.Equal([128, 255], new[] { At(20, 80), At(35, 80) });
        Assert.Equal([0, 255, 0, 255, 0], new[] { At(20, 50), At(35, 50), At(50, 50), At(65, 50), At(80, 50) });
        Assert.Equal([255, 0, 0, 255], new[] { At(19, 20), At(21, 20), At(39, 20), At(41, 20) });
    }

    [Theory]
    [InlineData(TextAlign.Left, 0)]
    [InlineData(TextAlign.Centre, 0)]
    [InlineData(TextAlign.Right, 0)]
    [InlineData(TextAlign.Left, 90)]
    public void Text_has_its_ink_where_it_was_measured(TextAlign align, double angle)
    {
        const string Text = "Mark 69";
        var page = new Page(200, 200, [new TextElement(Text, new(100, 100), 12, FontWeight.Bold, align, angle)]);
        using var image = Image.Load<L8>(PngWriter.Write(page, 254));
        var ink = (from x in Enumerable.Range(0, 2000) from y in Enumerable.Range(0, 2000) where image[x, y].PackedValue < 128 select new BlockingTemplates.Engine.Shapes.Point((x + 0.5) / 10, 200 - ((y + 0.5) / 10))).ToList();
        var shift = -TextMeasure.AdvanceMm(Text, 12, FontWeight.Bold) * (align switch { TextAlign.Left => 0, TextAlign.Centre => 0.5, _ => 1 });
        var box = TextMeasure.InkBox(Text, 12, FontWeight.Bold)!.Value.Moved(new(shift, 0));
        var expected = angle == 90
            ? new Box(100 - box.Upper, 100 + box.Left, 100 - box.Lower, 100 + box.Right)
            : box.Moved(new(100, 100));
        var found = Box.Around(ink).Grown(0.05);
        Assert.Equal(expected.Left, found.Left, 0.1); // one pixel
        Assert.Equal(expected.Right, found.Right, 0.1);
        Assert.Equal(expected.Lower, found.Lower, 0.1);
        Assert.Equal(expected.Upper, found.Upper, 0.1);
    }

    [Fact]
    public void A_picture_too_large_is_refused_with_what_to_do()
    {
        var e = Assert.Throws<ArgumentOutOfRangeException>(() => PngWriter.Write(new Page(5000, 10, []), 300));
        Assert.Contains("59055 pixels", e.Message, StringComparison.Ordinal);
        Assert.Contains("fewer dots per inch", e.Message, StringComparison.Ordinal);
        Assert.NotEmpty(PngWriter.Write(new Page(2000, 1, []), 254)); // 20,000 pixels are still written
        Assert.Throws<ArgumentOutOfRangeException>(() => PngWriter.Write(new Page(2000.1, 1, []), 254));
        Assert.Throws<ArgumentOutOfRangeException>(() => PngWriter.Write(new Page(10, 10, []), double.NaN));
        Assert.Throws<ArgumentOutOfRangeException>(() => PngWriter.Write(new Page(10, 10, []), 0));
    }
}
