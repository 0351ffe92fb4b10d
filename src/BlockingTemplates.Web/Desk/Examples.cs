using System.Text.Json;
using BlockingTemplates.Web.Routes;

namespace BlockingTemplates.Web.Desk;

/// <summary>The shipped examples.</summary>
internal static class Examples
{
    private const string Folder = "examples/";
    private const string Ending = ".jsonc";

    /// <summary>Their file names without the ending, and their titles.</summary>
    public static IReadOnlyList<(string Name, string Title)> All { get; } = Read();

    /// <summary>The text of an example and the files beside it, or null where there is none of that name.</summary>
    public static (byte[] Text, IReadOnlyList<KeyValuePair<string, byte[]>> Beside)? Find(string name) =>
        All.Any(e => e.Name == name)
            ? (Bytes(name + Ending), [.. Names.Where(n => !n.EndsWith(Ending, StringComparison.Ordinal)).Where(n => Path.GetFileNameWithoutExtension(n) == name).Select(n => KeyValuePair.Create(n, Bytes(n)))])
            : null;

    private static IEnumerable<string> Names => typeof(Examples).Assembly.GetManifestResourceNames()
        .Where(n => n.StartsWith(Folder, StringComparison.Ordinal)).Select(n => n[Folder.Length..]).Order(StringComparer.Ordinal);

    private static byte[] Bytes(string name) => PageFiles.Resource(typeof(Examples).Assembly, Folder + name);

    private static List<(string Name, string Title)> Read()
    {
        var options = new JsonDocumentOptions { CommentHandling = JsonCommentHandling.Skip, AllowTrailingCommas = true };
        var examples = new List<(string, string)>();
        foreach (var name in Names.Where(n => n.EndsWith(Ending, StringComparison.Ordinal)))
        {
            using var document = JsonDocument.Parse(Bytes(name), options);
            examples.Add((name[..^Ending.Length], document.RootElement.TryGetProperty("title", out var title) ? title.GetString() ?? name : name));
        }

        return examples;
    }
}
