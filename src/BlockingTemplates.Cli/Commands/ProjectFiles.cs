namespace BlockingTemplates.Cli.Commands;

/// <summary>The project files that the words of a command line name.</summary>
internal static class ProjectFiles
{
    private static readonly string[] Endings = [".jsonc", ".json"];

    /// <summary>Files as they are; for a folder every project file in it (.jsonc and .json, not below it), in the order of their names.</summary>
    public static IReadOnlyList<string> Named(IEnumerable<string> words) => [.. words.SelectMany(Of).Distinct(StringComparer.Ordinal)];

    private static IEnumerable<string> Of(string word) => Directory.Exists(word)
        ? Directory.EnumerateFiles(word)
            .Where(f => Endings.Contains(Path.GetExtension(f), StringComparer.OrdinalIgnoreCase))
            .Order(StringComparer.Ordinal)
            .DefaultIfEmpty(word)
        : [word];
}
