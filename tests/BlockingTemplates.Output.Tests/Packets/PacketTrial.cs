using System.Text;
using BlockingTemplates.Output.Packets;

namespace BlockingTemplates.Output.Tests.Packets;

/// <summary>A folder of its own for each test, and a short way to put files into it and look at them.</summary>
public abstract class PacketTrial : IDisposable
{
    protected string Root { get; } = Directory.CreateTempSubdirectory("packet-").FullName;

    protected string Target => Path.Combine(Root, "out", "demo");

    public void Dispose()
    {
        Directory.Delete(Root, recursive: true);
        GC.SuppressFinalize(this);
    }

    protected static PacketFile File(string name, string content) => new(name, Encoding.UTF8.GetBytes(content));

    protected void Write(params (string Name, string Content)[] files) => new PacketFolder(Target).Replace([.. files.Select(f => File(f.Name, f.Content))]);

    protected void Put(string name, string content) => System.IO.File.WriteAllText(Path.GetFullPath(Path.Combine(Target, name)), content);

    protected string Read(string name) => System.IO.File.ReadAllText(Path.Combine(Target, name));

    protected List<string> Names() => [.. Directory.EnumerateFileSystemEntries(Target).Select(p => Path.GetFileName(p)).Order(StringComparer.Ordinal)];

    /// <summary>The folder holds these files, its list, and nothing else, hidden or not.</summary>
    protected void AssertHolds(params (string Name, string Content)[] files)
    {
        Assert.Equal(files.Select(f => f.Name).Append("packet.txt").Order(StringComparer.Ordinal), Names());
        Assert.All(files, f => Assert.Equal(f.Content, Read(f.Name)));
        Assert.Equal(files.Select(f => f.Name), System.IO.File.ReadAllLines(Path.Combine(Target, "packet.txt")).Skip(1).Select(l => l[66..]));
    }
}
