using BlockingTemplates.Drawing.Pages;
using SkiaSharp;

namespace BlockingTemplates.Drawing.Text;

/// <summary>The shipped fonts as SkiaSharp knows them, loaded once.</summary>
/// <remarks>Safe from any thread: typefaces never change, and every call gives a font of its own.</remarks>
public static class Typefaces
{
    private static readonly Lazy<SKTypeface> Regular = new(() => Load(FontWeight.Regular));
    private static readonly Lazy<SKTypeface> Bold = new(() => Load(FontWeight.Bold));

    /// <summary>A font of a weight and size, with no hinting and widths in proportion to its size.</summary>
    /// <param name="weight">Regular or bold.</param>
    /// <param name="size">Size of the em in the canvas's units, above 0.</param>
    /// <returns>A font; the caller disposes of it.</returns>
    public static SKFont FontOf(FontWeight weight, double size) => new(Of(weight), (float)size)
    {
        Hinting = SKFontHinting.None,
        LinearMetrics = true,
        Subpixel = true,
        EmbeddedBitmaps = false,
        Edging = SKFontEdging.Antialias,
    };

    internal static SKTypeface Of(FontWeight weight) => weight switch
    {
        FontWeight.Regular => Regular.Value,
        FontWeight.Bold => Bold.Value,
        _ => throw new ArgumentOutOfRangeException(nameof(weight)),
    };

    private static SKTypeface Load(FontWeight weight)
    {
        using var data = SKData.CreateCopy(FontFiles.Of(weight).Span);
        return SKTypeface.FromData(data) ?? throw new InvalidOperationException($"The {weight} font cannot be read.");
    }
}
