using System.Runtime.CompilerServices;
using System.Text;
using BlockingTemplates.Engine.Measure;

namespace BlockingTemplates.Fuzz;

/// <summary>The reading of lengths.</summary>
internal static class LengthTarget
{
    [MethodImpl(MethodImplOptions.NoInlining)]
    public static FuzzTarget Create() => new(
        "lengths",
        Bytes("36.5", "36 1/2", "36-1/2 in", "36½″", "1/2", "4 ft 3/4 in", "4' 6 3/4\"", "1 m 24 cm", "-12.5 mm", "2 yards", "1e3 mm", "12,5 cm", "", "feet", "0.0001 in"),
        Bytes("mm", "cm", "m", "in", "inch", "inches", "″", "ft", "foot", "feet", "′", "yd", "yards", "½", "¾", "⅛", "1/2", " ", "-", "\u2212", "\u2044", ".", ",", "'", "\"", "e9", "999999999", "0000", "+", "\u00A0", "\u0660", "\uD835\uDFCE"),
        200, 2, Check);

    private static void Check(byte[] bytes)
    {
        var text = Encoding.UTF8.GetString(bytes);
        foreach (var unit in Enum.GetValues<LengthUnit>())
        {
            var read = LengthText.TryRead(text, unit, out var length, out var why);
            if (!double.IsFinite(length.Millimetres))
                throw new InvalidOperationException($"\"{text}\" is read as {length.Millimetres} mm.");
            if (read != (why is null) || why is { Length: 0 })
                throw new InvalidOperationException($"\"{text}\" is refused without a word, or taken with one.");
            if (why?.Any(char.IsControl) == true)
                throw new InvalidOperationException($"The refusal of \"{text}\" has a control character.");
            if (!read)
                continue;
            var again = LengthText.TryRead(text, unit, out var second, out string? _);
            if (!again || second != length)
                throw new InvalidOperationException($"\"{text}\" is read otherwise the second time.");
        }
    }

    private static byte[][] Bytes(params string[] texts) => [.. texts.Select(Encoding.UTF8.GetBytes)];
}
