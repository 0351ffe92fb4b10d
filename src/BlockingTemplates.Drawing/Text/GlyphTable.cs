using System.Collections.Concurrent;
using BlockingTemplates.Drawing.Pages;
using BlockingTemplates.Engine.Shapes;
using SkiaSharp;

namespace BlockingTemplates.Drawing.Text;

/// <summary>Widths and inked boxes of a font's glyphs, in ems. Safe from any thread.</summary>
internal sealed class GlyphTable
{
    private static readonly Lazy<GlyphTable> Regular = new(() => new(FontWeight.Regular));
    private static readonly Lazy<GlyphTable> Bold = new(() => new(FontWeight.Bold));

    private readonly FontWeight _weight;
    private readonly SKTypeface _typeface;
    private readonly double _unitsPerEm;
    private readonly double[] _advance;
    private readonly ConcurrentDictionary<ushort, Box?> _ink = new();

    private GlyphTable(FontWeight weight)
    {
        _weight = weight;
        _typeface = Typefaces.Of(weight);
        _unitsPerEm = _typeface.UnitsPerEm;
        using var font = Typefaces.FontOf(weight, _unitsPerEm);

        // The file holds widths as whole units; at a size of one unit per unit rounding gives them back exactly.
        var glyphs = Enumerable.Range(0, _typeface.GlyphCount).Select(g => (ushort)g).ToArray();
        _advance = [.. font.GetGlyphWidths(glyphs).Select(w => Math.Round(w) / _unitsPerEm)];
        Ascent = -font.Metrics.Ascent / _unitsPerEm;
        Descent = font.Metrics.Descent / _unitsPerEm;
        CapHeight = font.Metrics.CapHeight / _unitsPerEm;
        FigureHeight = Ink(Glyphs("1")[0])?.Upper ?? throw new InvalidOperationException("The font has no figures.");
    }

    /// <summary>Room above the baseline.</summary>
    public double Ascent { get; }

    /// <summary>Room below the baseline, positive.</summary>
    public double Descent { get; }

    /// <summary>Height of capitals.</summary>
    public double CapHeight { get; }

    /// <summary>Height of the figures, taken at the flat-topped 1 (round ones stand out a little more).</summary>
    public double FigureHeight { get; }

    public static GlyphTable Of(FontWeight weight) => weight switch
    {
        FontWeight.Regular => Regular.Value,
        FontWeight.Bold => Bold.Value,
        _ => throw new ArgumentOutOfRangeException(nameof(weight)),
    };

    /// <summary>One glyph a code point; 0 is the missing-glyph box.</summary>
    public ushort[] Glyphs(string drawnText) => _typeface.GetGlyphs(drawnText);

    public double Advance(ushort glyph) => _advance[glyph];

    public Box? Ink(ushort glyph) => _ink.GetOrAdd(glyph, static (g, self) => self.InkOf(g), this);

    private Box? InkOf(ushort glyph)
    {
        using var font = Typefaces.FontOf(_weight, _unitsPerEm);
        using var path = font.GetGlyphPath(glyph);
        if (path is null || path.IsEmpty) return null;
        var b = path.TightBounds;
        return new Box(b.Left / _unitsPerEm, -b.Bottom / _unitsPerEm, b.Right / _unitsPerEm, -b.Top / _unitsPerEm);
    }
}
