namespace BlockingTemplates.Reference.Tests.Planning;

// The repository's folders, found from where the tests run.
internal static class Repository
{
    public static string Root { get; } = FindRoot();

    public static string Sources => Path.Combine(Root, "src");

    public static string Example(string name) => File.ReadAllText(Path.Combine(Root, "shared", "examples", $"{name}.jsonc"));

    private static string FindRoot()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "BlockingTemplates.sln")))
            folder = folder.Parent ?? throw new InvalidOperationException("The repository's root was not found.");
        return folder.FullName;
    }
}
