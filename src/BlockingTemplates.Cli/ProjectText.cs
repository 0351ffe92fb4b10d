using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Projects;
using BlockingTemplates.Engine.Sheets;

namespace BlockingTemplates.Cli;

/// <summary>A project file as bytes, and its reading.</summary>
/// <param name="Name">Its name without folder and ending.</param>
/// <param name="Bytes">Its bytes; empty where the file is too long to be read.</param>
/// <param name="Length">Its length in bytes.</param>
/// <param name="Folder">The folder it stands in, or null where it stands in none.</param>
internal sealed record ProjectText(string Name, byte[] Bytes, long Length, string? Folder = null)
{
    private const string ExampleName = "lace-triangle.jsonc";

    /// <summary>The shipped example.</summary>
    public static ProjectText Example()
    {
        using var stream = typeof(ProjectText).Assembly.GetManifestResourceStream(ExampleName)
            ?? throw new InvalidOperationException("The shipped example is not in the program.");
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return new("demo", bytes, bytes.Length);
    }

    /// <summary>A project file; throws an <see cref="IOException"/> with a clear sentence where it cannot be read.</summary>
    public static ProjectText Load(string path)
    {
        try
        {
            if (Directory.Exists(path))
                throw new IOException($"{path} is a folder; name a project file.");
            if (!File.Exists(path))
                throw new IOException($"{path} was not found.");
            var length = new FileInfo(path).Length;
            var bytes = ProjectReader.TooLong(length) is null ? File.ReadAllBytes(path) : [];
            return new(Path.GetFileNameWithoutExtension(path), bytes, length, Path.GetDirectoryName(Path.GetFullPath(path)));
        }
        catch (UnauthorizedAccessException e)
        {
            throw new IOException($"{path} cannot be read: {e.Message}", e);
        }
    }

    /// <summary>What the file says.</summary>
    public ProjectReading Read()
    {
        var reader = new ProjectReader(PieceKinds.All, PaperCatalogue.Find, [.. PaperCatalogue.All.Select(p => p.Name)], Folder is { } folder ? new FolderBeside(folder).Read : null);
        if (ProjectReader.TooLong(Length) is not { } tooLong)
            return reader.Read(Bytes);
        var findings = new Findings();
        findings.Problem(tooLong.Path, tooLong.What, tooLong.Do);
        return new(null, findings, reader.Read([]).Lines);
    }
}
