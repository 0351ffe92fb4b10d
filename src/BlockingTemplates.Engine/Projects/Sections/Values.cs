using System.Globalization;
using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Projects.Text;

namespace BlockingTemplates.Engine.Projects.Sections;

/// <summary>Reads single values; each gives null where there is none, and null after a problem where it is not as it should be.</summary>
internal static class Values
{
    private const string LengthForm = "a length: a number in the file's units, or text with its own unit";
    private const string LengthExample = "Write a number such as 148, or text such as \"48 3/4 in\" or \"1.48 m\".";

    /// <summary>A length within a range.</summary>
    public static Length? Length(this FileReading reading, JsonPlace? place, LengthRange range)
    {
        if (place is null or { Kind: JsonPlaceKind.Blank })
            return null;
        Length length;
        if (place.Kind == JsonPlaceKind.Text)
        {
            if (!LengthText.IsRead(place.Text, reading.Unit, out length, out LengthRefusal? refusal))
            {
                reading.Problem(place, refusal.What, refusal.Write);
                return null;
            }
        }
        else if (place.Kind != JsonPlaceKind.Number)
            return reading.WrongType<Length>(place, LengthForm, LengthExample);
        else if (!TryFinite(place.Number, reading.Unit, out length))
        {
            reading.Problem(place, "This number is beyond all bounds.", LengthExample);
            return null;
        }

        var isJudged = place.Kind == JsonPlaceKind.Text || reading.UnitIsKnown;
        return isJudged && !IsWithin(reading, place, length, range) ? null : length;
    }

    /// <summary>Two lengths in a list.</summary>
    /// <param name="reading">The reading.</param>
    /// <param name="place">Where they stand.</param>
    /// <param name="first">Range of the first.</param>
    /// <param name="second">Range of the second.</param>
    /// <param name="names">What they are, such as "[x, y]".</param>
    public static (Length First, Length Second)? Pair(this FileReading reading, JsonPlace? place, LengthRange first, LengthRange second, string names)
    {
        if (place is null or { Kind: JsonPlaceKind.Blank })
            return null;
        if (place.Kind != JsonPlaceKind.List || place.Items.Count != 2)
            return reading.WrongType<(Length, Length)>(place, $"two lengths in a list, {names}", "Write them such as [12, 34.5].");
        var one = reading.InPair(place.Items[0], first);
        var other = reading.InPair(place.Items[1], second);
        return one is { } a && other is { } b ? (a, b) : null;
    }

    /// <summary>A whole number.</summary>
    public static int? Whole(this FileReading reading, JsonPlace? place, int least, int most) =>
        reading.Number(place, least, most) is not { } number ? null
        : number == Math.Floor(number) ? (int)number
        : reading.WrongType<int>(place!, "a whole number", "Write it without decimals.");

    /// <summary>A number.</summary>
    public static double? Number(this FileReading reading, JsonPlace? place, double least, double most)
    {
        if (place is null or { Kind: JsonPlaceKind.Blank })
            return null;
        if (place.Kind != JsonPlaceKind.Number)
            return reading.WrongType<double>(place, "a number", "Write a number without quotes.");
        if (place.Number >= least && place.Number <= most)
            return place.Number;
        var what = place.Number < 0 && least >= 0 ? $"{place.Words} is negative." : $"{place.Words} is too {(place.Number < least ? "small" : "great")}.";
        reading.Problem(place, what, string.Create(CultureInfo.InvariantCulture, $"Write a number from {least} to {most}."));
        return null;
    }

    /// <summary>A yes or no.</summary>
    public static bool? YesNo(this FileReading reading, JsonPlace? place) => place switch
    {
        null or { Kind: JsonPlaceKind.Blank } => null,
        { Kind: JsonPlaceKind.YesNo } => place.IsYes,
        _ => reading.WrongType<bool>(place, "true or false", "Write true or false without quotes."),
    };

    /// <summary>A text, without the spaces around it.</summary>
    public static string? Text(this FileReading reading, JsonPlace? place, int longest, bool severalLines = false)
    {
        if (place is null or { Kind: JsonPlaceKind.Blank })
            return null;
        if (place.Kind != JsonPlaceKind.Text)
        {
            reading.WrongType<int>(place, "text", "Write it in double quotes.");
            return null;
        }

        var text = place.Text.Replace("\r\n", "\n", StringComparison.Ordinal).Trim();
        if (text.Length > longest)
        {
            reading.Problem(
                place,
                string.Create(CultureInfo.InvariantCulture, $"This text has {text.Length} characters."),
                string.Create(CultureInfo.InvariantCulture, $"Shorten it to {longest} or fewer."));
            return null;
        }

        if (text.Any(c => char.IsControl(c) && !(severalLines && c is '\n' or '\t')))
        {
            reading.Problem(place, "This text has a character that cannot be printed, such as a tab or a new line.", "Write spaces instead.");
            return null;
        }

        return text;
    }

    /// <summary>One of the words of a choice.</summary>
    public static T? Word<T>(this FileReading reading, JsonPlace? place)
        where T : struct, Enum
    {
        if (place is null or { Kind: JsonPlaceKind.Blank })
            return null;
        var words = Words.Of(typeof(T));
        if (place.Kind != JsonPlaceKind.Text)
            return reading.WrongType<T>(place, "one of the words " + Listed(words), $"Write one of them in double quotes, such as \"{words[0]}\".");
        if (Words.Find<T>(place.Text) is { } found)
            return found;
        reading.Problem(
            place,
            $"{place.Words} is none of the words {Listed(words)}.",
            NearestName.Of(place.Text, words) is { } near ? $"Did you mean \"{near}\"? Write one of them." : "Write one of them.");
        return null;
    }

    /// <summary>Whether a place holds an object; false without a problem where it is blank, with one where it holds anything else.</summary>
    public static bool IsObject(this FileReading reading, JsonPlace place, string expected, string @do) =>
        Is(reading, place, JsonPlaceKind.Object, expected, @do);

    /// <summary>Whether a place holds a list of at most so many; false without a problem where it is blank, with one where it holds anything else.</summary>
    public static bool IsList(this FileReading reading, JsonPlace place, int most, string expected, string @do)
    {
        if (!Is(reading, place, JsonPlaceKind.List, expected, @do) || place.IsCutShort)
            return false;
        if (place.Items.Count <= most)
            return true;
        reading.Problem(
            place,
            string.Create(CultureInfo.InvariantCulture, $"This list has {place.Items.Count} entries."),
            string.Create(CultureInfo.InvariantCulture, $"Give at most {most}."));
        return false;
    }

    /// <summary>Reports a name that is not among the known ones.</summary>
    public static void Unknown(this FileReading reading, JsonPlace place, IReadOnlyList<string> known, string why)
    {
        if (reading.IsFull)
        {
            reading.Problem(place, "", "");
            return;
        }

        var near = NearestName.Of(place.Name!, known);
        reading.Problem(
            place,
            $"\"{JsonPlace.Shown(place.Name!)}\" {why}.",
            near is not null ? $"Did you mean \"{near}\"?"
            : known.Count > 0 ? $"Take it out; known are {Listed(known)}."
            : "Take it out.");
    }

    /// <summary>Reports a value of another type than is expected.</summary>
    public static T? WrongType<T>(this FileReading reading, JsonPlace place, string expected, string @do)
        where T : struct
    {
        reading.Problem(place, $"Here stands {place.Words}, but expected is {expected}.", @do);
        return null;
    }

    /// <summary>Words in quotes, with commas between.</summary>
    public static string Listed(IReadOnlyList<string> words) => string.Join(", ", words.Select(w => $"\"{w}\""));

    private static Length? InPair(this FileReading reading, JsonPlace place, LengthRange range) => place.Kind == JsonPlaceKind.Blank
        ? reading.WrongType<Length>(place, LengthForm, LengthExample)
        : reading.Length(place, range);

    private static bool Is(FileReading reading, JsonPlace place, JsonPlaceKind kind, string expected, string @do)
    {
        if (place.Kind is not JsonPlaceKind.Blank && place.Kind != kind)
            reading.Problem(place, $"Here stands {place.Words}, but expected is {expected}.", @do);
        return place.Kind == kind;
    }

    private static bool TryFinite(double number, LengthUnit unit, out Length length)
    {
        const double Greatest = 1e12;
        var isFinite = Math.Abs(number) <= Greatest;
        length = Measure.Length.From(isFinite ? number : 0, unit);
        return isFinite;
    }

    private static bool IsWithin(FileReading reading, JsonPlace place, Length length, LengthRange range)
    {
        if (length >= range.Least && length <= range.Most)
            return true;
        var shown = place.Kind == JsonPlaceKind.Text ? place.Words : $"{place.Words} {LengthWords.UnitOf(reading.Unit)}";
        var what = length < range.Least
            ? length < Measure.Length.Zero && range.Least >= Measure.Length.Zero ? "is negative" : $"is less than {Limit(range.Least, reading.Unit)}"
            : $"is more than {Limit(range.Most, reading.Unit)}";
        reading.Problem(
            place,
            $"{shown} {what}.",
            $"Write a length from {Limit(range.Least, reading.Unit)} to {Limit(range.Most, reading.Unit)}; check the unit.");
        return false;
    }

    private static string Limit(Length length, LengthUnit unit) =>
        string.Create(CultureInfo.InvariantCulture, $"{length.In(unit):0.###} {LengthWords.UnitOf(unit)}");
}
