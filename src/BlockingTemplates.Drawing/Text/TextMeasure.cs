using BlockingTemplates.Drawing.Pages;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Drawing.Text;

/// <summary>How large a text is when drawn, and where to break it into lines.</summary>
/// <remarks>
/// Lengths are in millimetres, sizes are of the em. Widths are the plain sum of the font's advance widths, with no
/// kerning, ligatures or hinting: what every writer draws. A text is measured as <see cref="DrawnText.Of"/> shows it.
/// Safe from any thread; the same answer everywhere.
/// </remarks>
public static class TextMeasure
{
    /// <summary>Width from the start of the text to where a next text would start.</summary>
    /// <param name="text">One line of any text.</param>
    /// <param name="sizeMm">Font size, above 0.</param>
    /// <param name="weight">Regular or bold.</param>
    public static double AdvanceMm(string text, double sizeMm, FontWeight weight = FontWeight.Regular)
    {
        Check(sizeMm);
        var table = GlyphTable.Of(weight);
        return sizeMm * table.Glyphs(DrawnText.Of(text)).Sum(table.Advance);
    }

    /// <summary>The least box that holds all ink of a text, about the start of its baseline (y up); null when it has no ink.</summary>
    /// <remarks>From the outlines of the glyphs, right to 0.0001 of the size.</remarks>
    public static Box? InkBox(string text, double sizeMm, FontWeight weight = FontWeight.Regular)
    {
        Check(sizeMm);
        var table = GlyphTable.Of(weight);
        Box? all = null;
        var x = 0.0;
        foreach (var glyph in table.Glyphs(DrawnText.Of(text)))
        {
            if (table.Ink(glyph) is { } ink)
            {
                var box = new Box(sizeMm * (x + ink.Left), sizeMm * ink.Lower, sizeMm * (x + ink.Right), sizeMm * ink.Upper);
                all = all is { } a
                    ? new Box(Math.Min(a.Left, box.Left), Math.Min(a.Lower, box.Lower), Math.Max(a.Right, box.Right), Math.Max(a.Upper, box.Upper))
                    : box;
            }

            x += table.Advance(glyph);
        }

        return all;
    }

    /// <summary>Whether the font has a glyph for every character that is drawn.</summary>
    public static bool HasEveryGlyph(string text, FontWeight weight = FontWeight.Regular) =>
        Array.TrueForAll(GlyphTable.Of(weight).Glyphs(DrawnText.Of(text)), g => g != 0);

    /// <summary>Height of capitals as a part of the size.</summary>
    public static double CapHeight(FontWeight weight = FontWeight.Regular) => GlyphTable.Of(weight).CapHeight;

    /// <summary>Height of the flat-topped figures as a part of the size (round ones stand out about 0.013 more on both sides).</summary>
    public static double FigureHeight(FontWeight weight = FontWeight.Regular) => GlyphTable.Of(weight).FigureHeight;

    /// <summary>Room the font asks for above the baseline, as a part of the size.</summary>
    public static double Ascent(FontWeight weight = FontWeight.Regular) => GlyphTable.Of(weight).Ascent;

    /// <summary>Room the font asks for below the baseline, as a part of the size; positive.</summary>
    public static double Descent(FontWeight weight = FontWeight.Regular) => GlyphTable.Of(weight).Descent;

    /// <summary>The font size at which figures are so many millimetres high.</summary>
    public static double SizeForFigures(double heightMm, FontWeight weight = FontWeight.Regular)
    {
        Check(heightMm);
        return heightMm / FigureHeight(weight);
    }

    /// <summary>Breaks a text into lines no wider than a width.</summary>
    /// <remarks>
    /// As many words a line as fit. A break in the text stays a break, an empty line stays empty, runs of spaces count as
    /// one. A single word wider than the width is broken between characters; a single character always stands.
    /// </remarks>
    /// <param name="text">Any text, line breaks included.</param>
    /// <param name="widthMm">Greatest width of a line, above 0.</param>
    /// <param name="sizeMm">Font size, above 0.</param>
    /// <param name="weight">Regular or bold.</param>
    /// <returns>The lines, at least one; as <see cref="DrawnText.Of"/> shows them.</returns>
    public static IReadOnlyList<string> Wrap(string text, double widthMm, double sizeMm, FontWeight weight = FontWeight.Regular)
    {
        ArgumentNullException.ThrowIfNull(text);
        Check(sizeMm);
        Check(widthMm);
        bool Fits(string line) => AdvanceMm(line, sizeMm, weight) <= widthMm;

        var lines = new List<string>();
        foreach (var paragraph in text.ReplaceLineEndings("\n").Split('\n'))
        {
            var line = "";
            foreach (var word in DrawnText.Of(paragraph.Replace('\t', ' ')).Split(' ', StringSplitOptions.RemoveEmptyEntries))
            {
                if (line.Length == 0)
                {
                    line = word;
                }
                else if (Fits($"{line} {word}"))
                {
                    line = $"{line} {word}";
                    continue;
                }
                else
                {
                    lines.Add(line);
                    line = word;
                }

                while (!Fits(line))
                {
                    var taken = FirstPart(line, Fits);
                    if (taken == line.Length) break;
                    lines.Add(line[..taken]);
                    line = line[taken..];
                }
            }

            lines.Add(line);
        }

        return lines;
    }

    private static int FirstPart(string word, Func<string, bool> fits)
    {
        var taken = 0;
        foreach (var rune in word.EnumerateRunes())
        {
            var next = taken + rune.Utf16SequenceLength;
            if (taken > 0 && !fits(word[..next])) break;
            taken = next;
        }

        return taken;
    }

    private static void Check(double lengthMm)
    {
        if (!double.IsFinite(lengthMm) || lengthMm <= 0) throw new ArgumentOutOfRangeException(nameof(lengthMm), "A size or width is a finite number above 0.");
    }
}
