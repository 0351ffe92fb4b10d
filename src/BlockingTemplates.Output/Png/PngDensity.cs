using System.Buffers.Binary;
using BlockingTemplates.Engine.Measure;

namespace BlockingTemplates.Output.Png;

/// <summary>Puts the physical density into a PNG file, as a pHYs chunk (PNG specification, W3C, 11.3.5.3).</summary>
internal static class PngDensity
{
    private const int HeaderEnd = 8 + 4 + 4 + 13 + 4; // signature, then the IHDR chunk: length, name, content, check value

    public static byte[] Set(ReadOnlySpan<byte> png, double dotsPerInch)
    {
        var pixelsPerMetre = (uint)Math.Round(1000 * dotsPerInch / Length.MillimetresPerInch);
        var chunk = new byte[4 + 4 + 9 + 4];
        BinaryPrimitives.WriteUInt32BigEndian(chunk, 9);
        "pHYs"u8.CopyTo(chunk.AsSpan(4));
        BinaryPrimitives.WriteUInt32BigEndian(chunk.AsSpan(8), pixelsPerMetre);
        BinaryPrimitives.WriteUInt32BigEndian(chunk.AsSpan(12), pixelsPerMetre);
        chunk[16] = 1; // the unit is the metre
        BinaryPrimitives.WriteUInt32BigEndian(chunk.AsSpan(17), Crc32.Of(chunk.AsSpan(4, 13)));
        return [.. png[..HeaderEnd], .. chunk, .. png[HeaderEnd..]];
    }
}
