namespace BlockingTemplates.Engine.Projects.Files;

/// <summary>A file that stands beside the project file, as the caller could read it.</summary>
/// <param name="Bytes">Its bytes, or null where it was not read.</param>
/// <param name="Why">Why it was not read, in one sentence; null where it was.</param>
public sealed record FileBeside(byte[]? Bytes, string? Why)
{
    /// <summary>The most bytes such a file may have: 5 MB, counted as 5,000,000 bytes.</summary>
    public const int MostBytes = 5_000_000;

    private const int LongestName = 100;

    /// <summary>Whether a name is plain: no folder, no drive, nothing hidden, so that it can only mean a file beside the project file.</summary>
    public static bool IsPlainName(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        return name.Length is > 0 and <= LongestName
            && name[0] is not ('.' or '~' or '-' or ' ')
            && name[^1] is not ('.' or ' ')
            && !name.Any(c => char.IsControl(c) || c is '/' or '\\' or ':' or '*' or '?' or '"' or '<' or '>' or '|');
    }
}
