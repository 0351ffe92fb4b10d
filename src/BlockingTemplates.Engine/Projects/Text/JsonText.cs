using System.Globalization;
using System.Text;
using System.Text.Json;

namespace BlockingTemplates.Engine.Projects.Text;

/// <summary>Reads JSON, with comments and trailing commas, into places that know their line.</summary>
internal static class JsonText
{
    /// <summary>How deep lists and objects may lie within each other; a project needs seven.</summary>
    public const int Deepest = 32;

    /// <summary>The most entries in one list.</summary>
    public const int LongestList = 10_000;

    private static readonly JsonReaderOptions Options = new()
    {
        AllowTrailingCommas = true,
        CommentHandling = JsonCommentHandling.Skip,
        MaxDepth = Deepest * 2,
    };

    private static ReadOnlySpan<byte> ByteOrderMark => [0xEF, 0xBB, 0xBF];

    /// <summary>The root of the file, or null after adding a problem.</summary>
    public static JsonPlace? Read(ReadOnlySpan<byte> utf8, FileReading reading)
    {
        if (utf8.StartsWith(ByteOrderMark))
            utf8 = utf8[ByteOrderMark.Length..];
        if (!IsText(utf8, reading))
            return null;
        var reader = new Utf8JsonReader(utf8, Options);
        try
        {
            return ReadTree(ref reader, utf8, reading);
        }
        catch (JsonException fault)
        {
            SyntaxAdvice.Add(reading, utf8, TextPosition.Offset(utf8, fault.LineNumber ?? 0, fault.BytePositionInLine ?? 0), reader.TokenType, reader.CurrentDepth);
            return null;
        }
    }

    private static bool IsText(ReadOnlySpan<byte> utf8, FileReading reading)
    {
        if (utf8.Length >= 2 && (utf8[..2] is [0xFF, 0xFE] || utf8[..2] is [0xFE, 0xFF]))
        {
            reading.Problem("", 1, "The file is saved as UTF-16.", "Save it as UTF-8.");
            return false;
        }

        if (utf8.Trim(" \t\r\n"u8).IsEmpty)
        {
            reading.Problem("", null, "The file is empty.", "Begin with `new`, which writes a project file with blanks.");
            return false;
        }

        if (FirstBadByte(utf8) is { } bad)
        {
            var (line, column) = TextPosition.At(utf8, bad);
            reading.Problem(
                "",
                line,
                string.Create(CultureInfo.InvariantCulture, $"The file is not UTF-8 text: line {line}, column {column} has the byte {utf8[bad]:X2}."),
                "Save it as UTF-8, and write the character there again.");
            return false;
        }

        return true;
    }

    private static int? FirstBadByte(ReadOnlySpan<byte> utf8)
    {
        if (System.Text.Unicode.Utf8.IsValid(utf8))
            return null;
        var at = 0;
        while (Rune.DecodeFromUtf8(utf8[at..], out _, out var length) == System.Buffers.OperationStatus.Done)
            at += length;
        return at;
    }

    private static JsonPlace? ReadTree(ref Utf8JsonReader reader, ReadOnlySpan<byte> utf8, FileReading reading)
    {
        JsonPlace? root = null;
        JsonPlace? within = null;
        string? name = null;
        var line = 1;
        var nameLine = 1;
        var counted = 0;
        while (reader.Read())
        {
            var start = (int)reader.TokenStartIndex;
            line += utf8[counted..start].Count((byte)'\n');
            counted = start;
            if (reader.CurrentDepth >= Deepest && reader.TokenType is JsonTokenType.StartArray or JsonTokenType.StartObject)
            {
                reading.Problem(
                    within!.Path,
                    line,
                    string.Create(CultureInfo.InvariantCulture, $"Lists and objects lie within each other more than {Deepest} deep."),
                    "Take the brackets out that are not needed; a project is seven deep at most.");
                return null;
            }

            switch (reader.TokenType)
            {
                case JsonTokenType.PropertyName:
                    name = TextOf(ref reader, reading, within!, line);
                    nameLine = line;
                    break;
                case JsonTokenType.EndObject or JsonTokenType.EndArray:
                    within = within!.Parent;
                    break;
                default:
                    var place = PlaceOf(ref reader, reading, within, name, name is null ? line : nameLine);
                    root ??= place;
                    if (within is not null)
                        Add(within, place, reading);
                    name = null;
                    if (place.Kind is JsonPlaceKind.Object or JsonPlaceKind.List)
                        within = place;
                    break;
            }
        }

        return root;
    }

    private static JsonPlace PlaceOf(ref Utf8JsonReader reader, FileReading reading, JsonPlace? within, string? name, int line)
    {
        var index = within?.Items.Count ?? 0;
        return reader.TokenType switch
        {
            JsonTokenType.StartObject => new(within, name, index, line, JsonPlaceKind.Object),
            JsonTokenType.StartArray => new(within, name, index, line, JsonPlaceKind.List),
            JsonTokenType.String => new(within, name, index, line, JsonPlaceKind.Text) { Text = TextOf(ref reader, reading, within, line) },
            JsonTokenType.Number => new(within, name, index, line, JsonPlaceKind.Number) { Number = reader.TryGetDouble(out var number) ? number : double.PositiveInfinity },
            JsonTokenType.True or JsonTokenType.False => new(within, name, index, line, JsonPlaceKind.YesNo) { IsYes = reader.TokenType == JsonTokenType.True },
            _ => new(within, name, index, line, JsonPlaceKind.Blank),
        };
    }

    private static void Add(JsonPlace within, JsonPlace place, FileReading reading)
    {
        if (within.Kind == JsonPlaceKind.List && within.Items.Count >= LongestList)
        {
            if (!within.IsCutShort)
            {
                within.IsCutShort = true;
                reading.Problem(
                    within,
                    string.Create(CultureInfo.InvariantCulture, $"This list has more than {LongestList} entries."),
                    "Give fewer; a point every few millimetres is more than any edge needs.");
            }
        }
        else if (!within.TryAdd(place))
        {
            reading.Problem(
                place,
                string.Create(CultureInfo.InvariantCulture, $"\"{JsonPlace.Shown(place.Name!)}\" stands here a second time; the first is in line {within.Member(place.Name!)!.Line}."),
                "Keep one of them.");
        }
    }

    // An escaped half of a surrogate pair (\uD800 alone) is JSON but no text.
    private static string TextOf(ref Utf8JsonReader reader, FileReading reading, JsonPlace? within, int line)
    {
        try
        {
            return reader.GetString()!;
        }
        catch (InvalidOperationException)
        {
            reading.Problem(
                within?.Path ?? "",
                line,
                "A text here has half a character: one of the escapes \\uD800 to \\uDFFF alone.",
                "Write the character itself.");
            return "";
        }
    }
}
