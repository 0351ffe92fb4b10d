using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Projects.Text;

namespace BlockingTemplates.Engine.Projects.Sections;

/// <summary>Reads values that have to be filled in: null is a blank, and a problem.</summary>
internal static class Blanks
{
    /// <summary>A measurement; where it is blank or unreadable, null and its path among the unreadable ones.</summary>
    public static Length? Measured(this FileReading reading, JsonPlace place, LengthRange range, string fill, HashSet<string> unreadable)
    {
        var length = reading.NotBlank(place, fill) is null ? null : reading.Length(place, range);
        if (length is null)
            unreadable.Add(place.Path);
        return length;
    }

    /// <summary>Two measurements in a list, likewise.</summary>
    public static (Length First, Length Second)? MeasuredPair(
        this FileReading reading, JsonPlace place, LengthRange first, LengthRange second, string names, string fill, HashSet<string> unreadable)
    {
        if (place.Kind != JsonPlaceKind.List || place.Items.Count != 2)
        {
            unreadable.Add(place.Path);
            if (reading.NotBlank(place, fill) is not null)
                reading.Pair(place, first, second, names);
            return null;
        }

        var one = reading.Measured(place.Items[0], first, fill, unreadable);
        var other = reading.Measured(place.Items[1], second, fill, unreadable);
        return one is { } a && other is { } b ? (a, b) : null;
    }

    /// <summary>The place, or null after a problem where it is blank.</summary>
    public static JsonPlace? NotBlank(this FileReading reading, JsonPlace place, string fill)
    {
        if (place.Kind != JsonPlaceKind.Blank)
            return place;
        reading.Problem(place, "This is still blank.", fill);
        return null;
    }
}
