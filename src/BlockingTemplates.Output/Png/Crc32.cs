namespace BlockingTemplates.Output.Png;

/// <summary>The check value of a PNG chunk (PNG specification, W3C, Annex D; ISO 3309).</summary>
internal static class Crc32
{
    private const uint Polynomial = 0xEDB88320; // x^32 + x^26 + x^23 + ... + 1, bits in reverse order

    private static readonly uint[] Table = [.. Enumerable.Range(0, 256).Select(n => OfByte((uint)n))];

    public static uint Of(ReadOnlySpan<byte> bytes)
    {
        var c = uint.MaxValue;
        foreach (var b in bytes) c = Table[(c ^ b) & 0xFF] ^ (c >> 8);
        return ~c;
    }

    private static uint OfByte(uint c)
    {
        for (var bit = 0; bit < 8; bit++) c = (c & 1) == 1 ? Polynomial ^ (c >> 1) : c >> 1;
        return c;
    }
}
