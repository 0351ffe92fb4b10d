namespace BlockingTemplates.Output.Packets;

/// <summary>A packet was not written because files in its folder are not the tool's own to replace.</summary>
/// <remarks>Nothing was changed. The message names every such file and says what to do.</remarks>
public sealed class PacketConflictException : IOException
{
    /// <summary>A conflict over files in a folder.</summary>
    /// <param name="folder">The folder.</param>
    /// <param name="files">Names of the files in the way, and why each is.</param>
    public PacketConflictException(string folder, IReadOnlyList<(string Name, string Why)> files)
        : base($"Nothing was written to {folder}: {string.Join("; ", files.Select(f => $"{f.Name} {f.Why}"))}. Move or rename {(files.Count == 1 ? "it" : "them")}, or choose another folder.")
    {
        Files = [.. files.Select(f => f.Name)];
    }

    /// <summary>Names of the files in the way.</summary>
    public IReadOnlyList<string> Files { get; }
}
