using System.Text;
using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Projects;
using BlockingTemplates.Engine.Sheets;

namespace BlockingTemplates.Engine.Tests.Projects;

// Reads project texts with stand-in kinds and three papers.
internal static class Reading
{
    private static readonly Paper[] Papers =
    [
        new("A4", Length.FromMillimetres(210), Length.FromMillimetres(297)),
        new("A3", Length.FromMillimetres(297), Length.FromMillimetres(420)),
        new("Letter", Length.FromInches(8.5), Length.FromInches(11)),
    ];

    public static ProjectReader Reader { get; } = new(
        PieceKinds.All,
        name => Papers.FirstOrDefault(p => p.Name.Equals(name, StringComparison.OrdinalIgnoreCase)),
        [.. Papers.Select(p => p.Name)],
        name => Path.Combine(Shared!, "examples", name) is var path && File.Exists(path) ? new(File.ReadAllBytes(path), null) : new(null, $"{name} was not found."));

    public static string Shared { get; } = SharedFolder();

    // With files beside the project, by name.
    public static ProjectReading With(string text, params (string Name, string Content)[] files) => new ProjectReader(
        PieceKinds.All,
        name => Papers.FirstOrDefault(p => p.Name == name),
        [.. Papers.Select(p => p.Name)],
        name => files.FirstOrDefault(f => f.Name == name) is { Name: not null } file ? new(Encoding.UTF8.GetBytes(file.Content), null) : new(null, $"{name} was not found.")).Read(Encoding.UTF8.GetBytes(text));

    public static ProjectReading Of(string text) => Reader.Read(Encoding.UTF8.GetBytes(text));

    public static Project Clean(string text)
    {
        var reading = Of(text);
        Assert.Empty(reading.Findings.Problems);
        return reading.Project!;
    }

    public static string Triangle(string more = "", string piece = "", string finished = "\"wingspan\": 148, \"depth\": 74") =>
        $"{{ \"units\": \"cm\", \"piece\": {{ \"shape\": \"triangle\", \"finished\": {{ {finished} }}{piece} }}{more} }}";

    public static string Rectangle(string unblocked) =>
        $"{{ \"units\": \"cm\", \"piece\": {{ \"shape\": \"rectangle\", \"finished\": {{ \"width\": 50, \"length\": 150 }}, \"unblocked\": {{ {unblocked} }} }} }}";

    public static string Outline(string finished, string piece = "") =>
        $"{{ \"units\": \"cm\", \"piece\": {{ \"shape\": \"outline\", \"finished\": {{ {finished} }}{piece} }} }}";

    // The one problem of a text.
    public static Problem Single(string text)
    {
        var problem = Assert.Single(Of(text).Findings.Problems);
        AssertSaysAll(problem);
        return problem;
    }

    public static void IsSingle(string text, string path, string what, string @do)
    {
        var problem = Single(text);
        Assert.Equal(path, problem.Path);
        Assert.Contains(what, problem.What, StringComparison.Ordinal);
        Assert.Contains(@do, problem.Do, StringComparison.Ordinal);
        Assert.Equal(1, problem.Line);
    }

    public static void AssertSaysAll(Problem problem)
    {
        Assert.EndsWith(".", problem.What, StringComparison.Ordinal);
        Assert.True(problem.Do.EndsWith('.') || problem.Do.EndsWith('?'), problem.Do);
    }

    private static string SharedFolder()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "BlockingTemplates.sln")))
            folder = folder.Parent ?? throw new InvalidOperationException("The repository's root was not found.");
        return Path.Combine(folder.FullName, "shared");
    }
}
