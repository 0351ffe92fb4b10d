using System.Globalization;
using BlockingTemplates.Drawing.Pages;
using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Output.Pages;
using SkiaSharp;

namespace BlockingTemplates.Output.Png;

/// <summary>Turns a page into a PNG picture in greys, on white, that knows its own density.</summary>
/// <remarks>Width and height are rounded to whole pixels; places on it are not stretched to fit. The same page gives the same bytes on one platform.</remarks>
public static class PngWriter
{
    /// <summary>Most pixels along a side.</summary>
    public const int MostPixels = 20_000;

    /// <summary>The bytes of the file.</summary>
    /// <param name="page">The page.</param>
    /// <param name="dotsPerInch">Pixels in an inch, above 0.</param>
    /// <exception cref="ArgumentException">Numbers that cannot be drawn.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A side would have more than 20,000 pixels.</exception>
    public static byte[] Write(Page page, double dotsPerInch)
    {
        ArgumentNullException.ThrowIfNull(page);
        if (!double.IsFinite(dotsPerInch) || dotsPerInch <= 0) throw new ArgumentOutOfRangeException(nameof(dotsPerInch), "A density is a finite number above 0.");
        var pixelsPerMm = dotsPerInch / Length.MillimetresPerInch;
        var info = new SKImageInfo(Pixels(page.WidthMm), Pixels(page.HeightMm), SKColorType.Gray8, SKAlphaType.Opaque);

        using var surface = SKSurface.Create(info) ?? throw new InvalidOperationException("There is not enough memory for the picture.");
        surface.Canvas.Clear(SKColors.White);
        surface.Canvas.Scale((float)pixelsPerMm);
        PageWalk.Draw(page, new PngSurface(surface.Canvas, page.HeightMm));
        using var image = surface.Snapshot();
        using var data = image.Encode(SKEncodedImageFormat.Png, 100) ?? throw new InvalidOperationException("The picture cannot be written as PNG.");
        return PngDensity.Set(data.AsSpan(), dotsPerInch);

        int Pixels(double millimetres)
        {
            var pixels = Math.Max(1, Math.Round(millimetres * pixelsPerMm));
            if (pixels <= MostPixels) return (int)pixels;
            throw new ArgumentOutOfRangeException(nameof(dotsPerInch), string.Create(
                CultureInfo.InvariantCulture,
                $"A side of {millimetres:0.#} mm at {dotsPerInch:0.##} dots per inch has {pixels:0} pixels; at most {MostPixels} are written. Ask for fewer dots per inch."));
        }
    }
}
