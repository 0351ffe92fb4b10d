namespace BlockingTemplates.Cli.Tests;

// Works in a folder until disposed of. The current folder is the whole process's: those who use it run one by one.
[CollectionDefinition(Name)]
public sealed class CurrentFolder : IDisposable
{
    public const string Name = "current folder";
    private readonly string _before = Directory.GetCurrentDirectory();

    public CurrentFolder() => _before = Directory.GetCurrentDirectory();

    internal CurrentFolder(string folder) => Directory.SetCurrentDirectory(folder);

    public void Dispose() => Directory.SetCurrentDirectory(_before);
}
