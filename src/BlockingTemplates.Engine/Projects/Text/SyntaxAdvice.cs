using System.Globalization;
using System.Text;
using System.Text.Json;

namespace BlockingTemplates.Engine.Projects.Text;

/// <summary>Says in plain words where a file stops being JSON.</summary>
internal static class SyntaxAdvice
{
    /// <summary>Adds the problem.</summary>
    /// <param name="reading">Takes it.</param>
    /// <param name="utf8">The file.</param>
    /// <param name="offset">The byte where it stops being JSON.</param>
    /// <param name="last">What was read last.</param>
    /// <param name="depth">How many lists and objects were open.</param>
    public static void Add(FileReading reading, ReadOnlySpan<byte> utf8, int offset, JsonTokenType last, int depth)
    {
        while (offset < utf8.Length && utf8[offset] is (byte)' ' or (byte)'\t')
            offset++;
        var (line, column) = TextPosition.At(utf8, offset);
        var (what, @do) = Words(utf8[..offset], utf8[offset..], last, depth);
        reading.Problem("", line, string.Create(CultureInfo.InvariantCulture, $"Line {line}, column {column}: {what}"), @do);
    }

    private static (string What, string Do) Words(ReadOnlySpan<byte> read, ReadOnlySpan<byte> rest, JsonTokenType last, int depth)
    {
        if (rest.Trim(" \t\r\n"u8).IsEmpty)
        {
            return last == JsonTokenType.None
                ? ("the file ends before anything but comments was said.", "Begin with `new`, which writes a project file with blanks.")
                : ("the file ends too early.", "Close what is open: each { needs its }, each [ its ], each \" its second \".");
        }

        Rune.DecodeFromUtf8(rest, out var rune, out _);
        var here = rune.Value is '\n' or '\r' ? "the end of the line" : JsonPlace.Shown(rune.ToString());
        if (depth == 0 && last is JsonTokenType.EndObject or JsonTokenType.EndArray)
            return ($"the project ends above, but here stands {here}.", "Take out what follows the last }, or a } too many before it.");

        // What stands before, in the same line; nothing is a line's beginning.
        var before = read.TrimEnd(" \t"u8) is [.., var b] ? b : (byte)'\n';
        if (before is >= (byte)'0' and <= (byte)'9' or (byte)'.' && rune.Value is not ('}' or ']' or '\n' or '\r'))
            return ($"after a number stands {here}.", "Put a length with a fraction or a unit in double quotes, such as \"48 3/4 in\"; put a comma between two entries.");
        if (before is (byte)',' or (byte)'{' && rune.Value is >= '0' and <= '9' or '-')
            return ($"where a name should begin stands {here}.", "Write decimals with a point, such as 1.24, and put names in double quotes.");
        if (before == (byte)'\n' && IsEndOfValue(last) && rune.Value is '"' or '{' or '[')
            return ($"before {here} a comma is missing.", "Put a comma between two entries, at the end of the line before.");
        return OfCharacter(rune.Value, here);
    }

    private static (string What, string Do) OfCharacter(int rune, string here) => rune switch
    {
        '\'' or 0x2018 or 0x2019 or 0x201C or 0x201D => ($"here stands {here}, which is no straight double quote.", "Put names and texts in straight double quotes: \"."),
        '}' or ']' => ($"here stands {here}, which does not close what was opened last or comes too early.", "Close { with } and [ with ], and give every name a value."),
        ',' => ("here stands a comma with nothing before it.", "Take it out, or write what is missing before it."),
        '"' => ("a quote stands where a comma or the end of a text was due.", "Put a comma between two entries; inside a text write \\\" for a quote, or in for inches."),
        '\n' or '\r' => ("the line ends inside a text.", "Close the text with a double quote in the same line."),
        'N' or 'I' => ($"here stands {here}: a word that is no value.", "NaN and Infinity are no lengths: write a number, or null for a blank."),
        _ => ($"here stands {here}, where it cannot.", "Look there and at the end of the line before: a comma, a quote or a bracket is missing or too many."),
    };

    private static bool IsEndOfValue(JsonTokenType last) =>
        last is not (JsonTokenType.None or JsonTokenType.PropertyName or JsonTokenType.StartArray or JsonTokenType.StartObject);
}
