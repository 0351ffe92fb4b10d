namespace BlockingTemplates.Cli.Tests;

// A folder of its own in which command lines are run, taken away afterwards.
internal sealed class Bench : IDisposable
{
    public Bench() => Directory.CreateDirectory(Folder);

    public string Folder { get; } = Path.Combine(Path.GetTempPath(), $"blocking-{Guid.NewGuid():N}");

    public static string Examples { get; } = FindExamples();

    public string At(params string[] parts) => Path.Combine([Folder, .. parts]);

    public string Write(string name, string text)
    {
        File.WriteAllText(At(name), text);
        return At(name);
    }

    public static async Task<Run> RunAsync(params string[] arguments) => await RunAsync(CancellationToken.None, arguments);

    public static async Task<Run> RunAsync(CancellationToken cancellation, params string[] arguments)
    {
        using var output = new StringWriter();
        using var error = new StringWriter();
        var code = await CommandLine.RunAsync(arguments, output, error, cancellation);
        return new(code, output.ToString().ReplaceLineEndings("\n"), error.ToString().ReplaceLineEndings("\n"));
    }

    public Dictionary<string, byte[]> Files() => Directory.EnumerateFiles(Folder, "*", SearchOption.AllDirectories)
        .ToDictionary(f => Path.GetRelativePath(Folder, f).Replace('\\', '/'), File.ReadAllBytes);

    public void Dispose() => Directory.Delete(Folder, recursive: true);

    private static string FindExamples()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "BlockingTemplates.sln")))
            folder = folder.Parent ?? throw new InvalidOperationException("The repository's root was not found.");
        return Path.Combine(folder.FullName, "shared", "examples");
    }
}
