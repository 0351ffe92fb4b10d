using System.Buffers.Binary;
using BlockingTemplates.Drawing.Pages;
using BlockingTemplates.Drawing.Text;
using BlockingTemplates.Engine.Shapes;
using CsCheck;
using SkiaSharp;

namespace BlockingTemplates.Drawing.Tests.Text;

public class TextMeasureTests
{
    private const double Exact = 1e-9;

    public static TheoryData<FontWeight> Weights => [FontWeight.Regular, FontWeight.Bold];

    [Theory]
    [MemberData(nameof(Weights))]
    public void Widths_are_those_the_font_file_holds(FontWeight weight)
    {
        var file = new FontTables(FontFiles.Of(weight).Span);
        for (var c = ' '; c <= 'ž'; c++)
        {
            if (char.IsControl(c) || c == '\u00AD') continue;
            var expected = 10.0 * file.AdvanceWidth(file.Glyph(c)) / file.UnitsPerEm;
            Assert.Equal(expected, TextMeasure.AdvanceMm(c.ToString(), 10, weight), Exact);
        }
    }

    [Fact]
    public void A_text_is_as_wide_as_its_characters_one_by_one()
    {
        // No kerning and no ligatures, in pairs that fonts like to kern or join too.
        foreach (var text in new[] { "AVAVToWa", "fi fl ffi", "1234567890", "48 3⁄4 in", "r. f. y," })
        {
            Assert.Equal(text.Sum(c => TextMeasure.AdvanceMm(c.ToString(), 3.7)), TextMeasure.AdvanceMm(text, 3.7), Exact);
        }
    }

    [Fact]
    public void Widths_grow_in_proportion_to_the_size() =>
        Gen.Select(Gen.String[Gen.Char[' ', '~'], 0, 30], Gen.Double[0.5, 50]).Sample(
            (text, size) => Math.Abs(TextMeasure.AdvanceMm(text, size) - (size * TextMeasure.AdvanceMm(text, 1))) < 1e-9 * (1 + (size * text.Length)),
            seed: "0000KWc4nUb2");

    [Fact]
    public void What_is_not_drawn_has_no_width()
    {
        Assert.Equal(TextMeasure.AdvanceMm("ab", 4), TextMeasure.AdvanceMm("a\u0007\n\u202E\u200D\u00ADb", 4), Exact);
        Assert.Equal(0, TextMeasure.AdvanceMm("", 4));
        Assert.Null(TextMeasure.InkBox("  ", 4));
        Assert.Null(TextMeasure.InkBox("", 4));
    }

    [Fact]
    public void A_character_the_font_lacks_is_as_wide_as_its_missing_glyph_box()
    {
        var file = new FontTables(FontFiles.Of(FontWeight.Regular).Span);
        var box = (double)file.AdvanceWidth(0) / file.UnitsPerEm;
        Assert.Equal(box, TextMeasure.AdvanceMm("\u05D0", 1), Exact);
        Assert.Equal(box, TextMeasure.AdvanceMm("\U0001F600", 1), Exact); // one box, though two chars
        Assert.False(TextMeasure.HasEveryGlyph("x\u05D0"));
        Assert.True(TextMeasure.HasEveryGlyph("Größe ½ × 3\n"));
    }

    [Theory]
    [MemberData(nameof(Weights))]
    public void The_ink_box_is_where_a_large_picture_of_the_text_has_ink(FontWeight weight)
    {
        // The second way: draw the text 200 pixels high and look at every pixel.
        const int Em = 200;
        foreach (var text in new[] { "H", "Agj|69", "1-4", "ÄÖ,_", "½×" })
        {
            using var bitmap = new SKBitmap(new SKImageInfo(1400, 500, SKColorType.Gray8));
            using var canvas = new SKCanvas(bitmap);
            using var font = Typefaces.FontOf(weight, Em);
            using var paint = new SKPaint { Color = SKColors.Black, IsAntialias = true };
            canvas.Clear(SKColors.White);
            canvas.DrawText(text, 100, 300, SKTextAlign.Left, font, paint);
            var ink = (from y in Enumerable.Range(0, 500) from x in Enumerable.Range(0, 1400) where bitmap.GetPixel(x, y).Red < 250 select (x, y)).ToList();
            var box = TextMeasure.InkBox(text, Em, weight)!.Value;
            Assert.InRange(box.Left, ink.Min(p => p.x) - 100 - 0.1, ink.Min(p => p.x) - 100 + 1.1);
            Assert.InRange(box.Right, ink.Max(p => p.x) - 100 - 0.1, ink.Max(p => p.x) - 100 + 1.1);
            Assert.InRange(box.Upper, 300 - ink.Min(p => p.y) - 1.1, 300 - ink.Min(p => p.y) + 0.1);
            Assert.InRange(box.Lower, 300 - ink.Max(p => p.y) - 1.1, 300 - ink.Max(p => p.y) + 0.1);
        }
    }

    [Theory]
    [MemberData(nameof(Weights))]
    public void Heights_are_those_of_the_font(FontWeight weight)
    {
        var file = new FontTables(FontFiles.Of(weight).Span);
        Assert.Equal(file.CapHeight, TextMeasure.CapHeight(weight), 1e-4);
        Assert.Equal(file.Ascender, TextMeasure.Ascent(weight), 1e-4);
        Assert.Equal(-file.Descender, TextMeasure.Descent(weight), 1e-4);
        var size = TextMeasure.SizeForFigures(6, weight);
        Assert.Equal(6, TextMeasure.InkBox("147", size, weight)!.Value.Upper, 2e-3);
        var all = TextMeasure.InkBox("0123456789", size, weight)!.Value;
        Assert.InRange(all.Height, 6, 6.3);
    }

    [Fact]
    public void Wrapped_lines_fit_and_no_line_could_take_its_next_word() =>
        Gen.Select(Gen.String[Gen.OneOf(Gen.Char['a', 'z'], Gen.Char['a', 'z'], Gen.Const(' '), Gen.Const('\n'), Gen.Const('-')), 0, 120], Gen.Double[3, 60]).Sample(
            (text, width) =>
            {
                var lines = TextMeasure.Wrap(text, width, 3);

                // The second way: all words in order, none lost; each line fits or is one character; the next would not have fitted.
                Assert.Equal(string.Concat(text.Where(c => c is not (' ' or '\n'))), string.Concat(lines.SelectMany(l => l.Where(c => c != ' '))));
                Assert.All(lines, l => Assert.True(l.Length <= 1 || TextMeasure.AdvanceMm(l, 3) <= width, l));
                var words = text.Split('\n').Select(p => p.Split(' ', StringSplitOptions.RemoveEmptyEntries)).ToList();
                if (words.SelectMany(p => p).Any(w => TextMeasure.AdvanceMm(w, 3) > width)) return;
                var slow = new List<string>();
                foreach (var paragraph in words)
                {
                    var rest = paragraph.ToList();
                    do
                    {
                        var n = rest.Count;
                        while (n > 1 && TextMeasure.AdvanceMm(string.Join(' ', rest.Take(n)), 3) > width) n--;
                        slow.Add(string.Join(' ', rest.Take(n)));
                        rest.RemoveRange(0, n);
                    }
                    while (rest.Count > 0);
                }

                Assert.Equal(slow, lines);
            },
            iter: 300,
            seed: "0000KWc4nUb2");

    [Fact]
    public void Breaks_in_the_text_stay_and_an_empty_text_is_one_empty_line()
    {
        Assert.Equal(["a b", "", "c"], TextMeasure.Wrap("a  b\r\n\nc\t", 100, 3));
        Assert.Equal([""], TextMeasure.Wrap("", 100, 3));
        Assert.Equal(["\U0001F600", "\U0001F600"], TextMeasure.Wrap("\U0001F600\U0001F600", 0.01, 3));
    }

    [Fact]
    public void Sizes_and_widths_must_be_above_zero()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => TextMeasure.AdvanceMm("a", 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => TextMeasure.InkBox("a", double.NaN));
        Assert.Throws<ArgumentOutOfRangeException>(() => TextMeasure.Wrap("a", -1, 3));
    }

    [Fact]
    public void Measuring_from_many_threads_gives_the_same_answers()
    {
        var texts = Enumerable.Range(0, 500).Select(i => $"mark {i} Ag½{(char)('a' + (i % 26))}").ToArray();
        var serial = texts.Select(t => TextMeasure.InkBox(t, 3, FontWeight.Bold)!.Value).ToArray();
        var parallel = new Box[texts.Length];
        Parallel.For(0, texts.Length, i => parallel[i] = TextMeasure.InkBox(texts[i], 3, FontWeight.Bold)!.Value);
        Assert.Equal(serial, parallel);
    }

    /// <summary>Reads what is needed straight from a TrueType file (OpenType specification: head, hhea, hmtx, cmap format 4, OS/2).</summary>
    private sealed class FontTables
    {
        private readonly byte[] _file;

        public FontTables(ReadOnlySpan<byte> file) => _file = file.ToArray();

        public int UnitsPerEm => U16(At("head") + 18);

        public double CapHeight => (double)S16(At("OS/2") + 88) / UnitsPerEm;

        public double Ascender => (double)S16(At("hhea") + 4) / UnitsPerEm;

        public double Descender => (double)S16(At("hhea") + 6) / UnitsPerEm;

        public int AdvanceWidth(int glyph) => U16(At("hmtx") + (4 * Math.Min(glyph, U16(At("hhea") + 34) - 1)));

        public int Glyph(char c)
        {
            var cmap = At("cmap");
            var table = Enumerable.Range(0, U16(cmap + 2)).Select(i => cmap + (int)U32(cmap + 8 + (8 * i))).First(t => U16(t) == 4);
            var count = U16(table + 6) / 2;
            for (var i = 0; i < count; i++)
            {
                var (end, start) = (U16(table + 14 + (2 * i)), U16(table + 16 + (2 * count) + (2 * i)));
                if (c > end) continue;
                if (c < start) return 0;
                var (delta, offsetAt) = (U16(table + 16 + (4 * count) + (2 * i)), table + 16 + (6 * count) + (2 * i));
                var offset = U16(offsetAt);
                var glyph = offset == 0 ? c : U16(offsetAt + offset + (2 * (c - start)));
                return glyph == 0 ? 0 : (glyph + delta) & 0xFFFF;
            }

            return 0;
        }

        private int At(string tag)
        {
            for (var i = 0; i < U16(4); i++)
            {
                var entry = 12 + (16 * i);
                if (System.Text.Encoding.ASCII.GetString(_file, entry, 4) == tag) return (int)U32(entry + 8);
            }

            throw new InvalidOperationException(tag);
        }

        private int U16(int at) => BinaryPrimitives.ReadUInt16BigEndian(_file.AsSpan(at));

        private int S16(int at) => BinaryPrimitives.ReadInt16BigEndian(_file.AsSpan(at));

        private uint U32(int at) => BinaryPrimitives.ReadUInt32BigEndian(_file.AsSpan(at));
    }
}
