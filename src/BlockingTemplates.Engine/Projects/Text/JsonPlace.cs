using System.Globalization;
using System.Text;

namespace BlockingTemplates.Engine.Projects.Text;

/// <summary>A value of a project file, with its line and its path.</summary>
internal sealed class JsonPlace(JsonPlace? parent, string? name, int index, int line, JsonPlaceKind kind)
{
    private const int LongestShown = 40;

    private Dictionary<string, JsonPlace>? _byName;
    private List<JsonPlace>? _items;

    public JsonPlace? Parent { get; } = parent;

    /// <summary>Its name in the object it stands in, or null.</summary>
    public string? Name { get; } = name;

    /// <summary>Its line, from 1; the line of its name where it has one.</summary>
    public int Line { get; } = line;

    public JsonPlaceKind Kind { get; } = kind;

    /// <summary>The text of a text.</summary>
    public string Text { get; init; } = "";

    /// <summary>The number of a number; infinite where the file's is beyond all bounds.</summary>
    public double Number { get; init; }

    /// <summary>The answer of a yes or no.</summary>
    public bool IsYes { get; init; }

    /// <summary>Whether it is to be read as if it had been left out.</summary>
    public bool IsSetAside { get; set; }

    /// <summary>Whether entries of a list beyond the longest were left off, which was reported.</summary>
    public bool IsCutShort { get; set; }

    /// <summary>The entries of a list or an object, in the file's order.</summary>
    public IReadOnlyList<JsonPlace> Items => _items ?? (IReadOnlyList<JsonPlace>)[];

    /// <summary>Its path, such as <c>piece.unblocked.edges[2].bow</c>; empty for the file as a whole.</summary>
    public string Path
    {
        get
        {
            var steps = new Stack<string>();
            for (var place = this; place.Parent is not null; place = place.Parent)
                steps.Push(place.Step);
            var path = string.Concat(steps);
            return path.StartsWith('.') ? path[1..] : path;
        }
    }

    /// <summary>The last step of its path: <c>.bow</c> or <c>[2]</c>.</summary>
    public string Step => Name is null ? string.Create(CultureInfo.InvariantCulture, $"[{index}]") : $".{Shown(Name)}";

    /// <summary>What stands there, as the file has it but never long.</summary>
    public string Words => Kind switch
    {
        JsonPlaceKind.Blank => "null",
        JsonPlaceKind.Object => "{ ... }",
        JsonPlaceKind.List => "[ ... ]",
        JsonPlaceKind.Text => $"\"{Shown(Text)}\"",
        JsonPlaceKind.Number => double.IsFinite(Number) ? Number.ToString("R", CultureInfo.InvariantCulture) : "a number beyond all bounds",
        _ => IsYes ? "true" : "false",
    };

    /// <summary>The entry of a name, or null.</summary>
    public JsonPlace? Member(string member) => _byName?.GetValueOrDefault(member);

    /// <summary>Adds an entry to a list or an object, where its name is not taken.</summary>
    public bool TryAdd(JsonPlace item)
    {
        if (item.Name is not null && !(_byName ??= []).TryAdd(item.Name, item))
            return false;
        (_items ??= []).Add(item);
        return true;
    }

    /// <summary>A text from a file, short and in one line.</summary>
    public static string Shown(string text)
    {
        var shown = new StringBuilder();
        foreach (var rune in text.EnumerateRunes())
        {
            if (shown.Length >= LongestShown)
                return shown.Append('\u2026').ToString();
            shown.Append(IsWithoutShape(rune) ? "\uFFFD" : rune.ToString());
        }

        return shown.ToString();
    }

    private static bool IsWithoutShape(Rune rune) => Rune.GetUnicodeCategory(rune)
        is UnicodeCategory.Control or UnicodeCategory.Format or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator;
}
