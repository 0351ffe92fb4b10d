using System.Diagnostics.CodeAnalysis;
using BlockingTemplates.Engine.Projects.Text;

namespace BlockingTemplates.Engine.Projects.Sections;

/// <summary>An object of the file whose names are known; reports the unknown ones.</summary>
internal sealed class Section
{
    private readonly JsonPlace? _place;
    private readonly IReadOnlyList<string> _names;
    private readonly string _what;

    private Section(JsonPlace? place, IReadOnlyList<string> names, string what)
    {
        _place = place;
        _names = names;
        _what = what;
    }

    /// <summary>Whether the file has it, as an object.</summary>
    public bool IsThere => _place is not null;

    /// <summary>A place in it, or null where the file has none or it is set aside; a name unknown to the section throws.</summary>
    public JsonPlace? this[string name] => _names.Contains(name)
        ? _place?.Member(name) is { IsSetAside: false } member ? member : null
        : throw new ArgumentOutOfRangeException(nameof(name), name, "The record of this section has no such name.");

    /// <summary>The section at a place; an empty one where it is left out, blank or no object.</summary>
    public static Section Open<[DynamicallyAccessedMembers(DynamicallyAccessedMemberTypes.PublicProperties)] TRecord>(JsonPlace? place, string what, FileReading reading) =>
        Open(place, SectionNames.Of<TRecord>(), what, reading);

    /// <summary>The section at a place, by its names.</summary>
    public static Section Open(JsonPlace? place, IReadOnlyList<string> names, string what, FileReading reading)
    {
        if (place is null || !reading.IsObject(place, $"{what}: names and values in braces", $"Write {{ \"{names[0]}\": ... }}."))
            return new(null, names, what);
        foreach (var item in place.Items)
        {
            if (!names.Contains(item.Name!))
                reading.Unknown(item, names, $"is no name in {what}");
        }

        return new(place, names, what);
    }

    /// <summary>A place that has to be there and filled in; null after a problem where it is not.</summary>
    public JsonPlace? Needed(string name, string @do, FileReading reading)
    {
        if (this[name] is { } member)
            return reading.NotBlank(member, @do);
        if (_place is not null)
        {
            var path = _place.Path;
            reading.Problem(path.Length == 0 ? name : $"{path}.{name}", _place.Line, $"\"{name}\" is missing in {_what}.", @do);
        }

        return null;
    }
}
