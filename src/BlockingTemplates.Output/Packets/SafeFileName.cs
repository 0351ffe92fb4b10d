using System.Globalization;
using System.Text;

namespace BlockingTemplates.Output.Packets;

/// <summary>File names that every system takes, made from a maker's title.</summary>
public static class SafeFileName
{
    /// <summary>Most characters of a name.</summary>
    public const int MostCharacters = 80;

    // Most file systems hold 255 bytes; a name of 80 characters in a rare script is more.
    private const int MostBytes = 240;

    // Names of devices, taken by Windows with any ending too (Microsoft, "Naming Files, Paths, and Namespaces").
    private static readonly HashSet<string> Reserved = new(
        [
            "CON", "PRN", "AUX", "NUL", "CONIN", "CONOUT",
            .. Enumerable.Range(0, 10).SelectMany(n => new[] { $"COM{n}", $"LPT{n}" }),
        ],
        StringComparer.OrdinalIgnoreCase);

    /// <summary>A file name for a title: letters, digits, hyphens, underscores and dots; spaces and slashes become hyphens.</summary>
    /// <remarks>Never empty ("untitled"), never starting with a dot or hyphen or ending with a dot, never a name Windows keeps for itself.</remarks>
    /// <param name="title">Any text.</param>
    public static string From(string title)
    {
        ArgumentNullException.ThrowIfNull(title);
        var name = new StringBuilder();
        var bytes = 0;
        foreach (var rune in title.EnumerateRunes())
        {
            var kept = Kept(rune);
            if (kept is null || (kept == "-" && name.Length > 0 && name[^1] == '-')) continue;
            if (name.Length == 0 && kept is "." or "-") continue;
            bytes += Encoding.UTF8.GetByteCount(kept);
            if (name.Length + kept.Length > MostCharacters || bytes > MostBytes) break;
            name.Append(kept);
        }

        var trimmed = name.ToString().TrimEnd('.', '-');
        if (trimmed.Length == 0) return "untitled";
        if (!Reserved.Contains(trimmed.Split('.')[0])) return trimmed;
        return trimmed.Length < MostCharacters ? "_" + trimmed : "_" + trimmed[1..];
    }

    /// <summary>Whether a name may be written as it is.</summary>
    public static bool IsSafe(string name) => !string.IsNullOrEmpty(name) && From(name) == name;

    private static string? Kept(Rune rune)
    {
        if (rune.Value is '-' or '_' or '.') return rune.ToString();
        if (Rune.IsWhiteSpace(rune) || rune.Value is '/' or '\\') return "-";
        return Rune.IsLetterOrDigit(rune) || IsMark(rune) ? rune.ToString() : null;
    }

    // Accents that follow their letter, and vowel signs: without them words in many scripts fall apart.
    private static bool IsMark(Rune rune) => Rune.GetUnicodeCategory(rune) is UnicodeCategory.NonSpacingMark or UnicodeCategory.SpacingCombiningMark;
}
