using System.Text.RegularExpressions;
using BlockingTemplates.Reference.Tests.Planning;

namespace BlockingTemplates.Reference.Tests.House;

// One C# file of src.
internal sealed partial class SourceFile
{
    private SourceFile(string path)
    {
        Path = System.IO.Path.GetRelativePath(Repository.Sources, path).Replace('\\', '/');
        Text = File.ReadAllText(path).ReplaceLineEndings("\n");
        Lines = Text.Split('\n');
        Code = Comments().Replace(Text, m => m.Value.StartsWith('"') || m.Value.StartsWith('@') || m.Value.StartsWith('\'') ? m.Value : "");
        Words = Strings().Replace(Code, "\"\"");
    }

    public static IReadOnlyList<SourceFile> All { get; } =
    [
        .. Directory.EnumerateFiles(Repository.Sources, "*.cs", SearchOption.AllDirectories)
            .Where(p => !System.IO.Path.GetRelativePath(Repository.Sources, p).Split(System.IO.Path.DirectorySeparatorChar).Any(f => f is "bin" or "obj"))
            .Order(StringComparer.Ordinal).Select(p => new SourceFile(p)),
    ];

    // From src, with forward slashes.
    public string Path { get; }

    public string Text { get; }

    public string[] Lines { get; }

    // Without comments.
    public string Code { get; }

    // Without comments and what stands in string literals.
    public string Words { get; }

    public string Project => Path.Split('/')[0];

    // The folder in the project, empty for its own files.
    public string Folder => Path.Split('/') is { Length: > 2 } parts ? parts[1] : "";

    public IEnumerable<string> Usings => UsingLines().Matches(Words).Select(m => m.Groups[1].Value);

    // Names of types that stand directly in the file's namespace and are public.
    public IReadOnlyList<string> PublicTypes => [.. PublicType().Matches(Words).Select(m => m.Groups[1].Value)];

    public IReadOnlyList<string> TypeNames => [.. AnyType().Matches(Words).Select(m => m.Groups[1].Value)];

    [GeneratedRegex("""@?\$?"(?:\\.|[^"\\\n])*"|'(?:\\.|[^'\\\n])'|//[^\n]*|/\*.*?\*/""", RegexOptions.Singleline)]
    private static partial Regex Comments();

    [GeneratedRegex("""
        "(?:\\.|[^"\\\n])*"
        """, RegexOptions.IgnorePatternWhitespace)]
    private static partial Regex Strings();

    [GeneratedRegex(@"^using (?:static )?(?:\w+ = )?([\w.]+);", RegexOptions.Multiline)]
    private static partial Regex UsingLines();

    [GeneratedRegex(@"^public (?:(?:static|sealed|abstract|partial|readonly) )*(?:record struct|record class|record|class|struct|interface|enum|delegate \w+) (\w+)", RegexOptions.Multiline)]
    private static partial Regex PublicType();

    [GeneratedRegex(@"\b(?:record struct|record class|record|class|struct|interface|enum) (\w+)")]
    private static partial Regex AnyType();
}
