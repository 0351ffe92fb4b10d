using System.Security.Cryptography;
using System.Text;

namespace BlockingTemplates.Output.Packets;

/// <summary>The list a packet keeps of its own files, so that a later run knows what it may replace.</summary>
/// <remarks>
/// A text file of lines "SHA-256, two spaces, name" under a head line. A name may stand twice: while a packet is being
/// replaced, both the old and the new file are the tool's own.
/// </remarks>
internal sealed class PacketList
{
    /// <summary>Name of the list's file.</summary>
    public const string FileName = "packet.txt";

    private const string Head = "# Files of this packet. A new run replaces those that still are as listed, and no others.";

    private readonly List<(string Hash, string Name)> _entries = [];

    /// <summary>Names listed, each once.</summary>
    public IEnumerable<string> Names => _entries.Select(e => e.Name).Distinct(StringComparer.Ordinal);

    public static string HashOf(ReadOnlySpan<byte> bytes) => Convert.ToHexStringLower(SHA256.HashData(bytes));

    public static string HashOf(string path)
    {
        using var stream = File.OpenRead(path);
        return Convert.ToHexStringLower(SHA256.HashData(stream));
    }

    public static PacketList Of(IEnumerable<PacketFile> files)
    {
        var list = new PacketList();
        list._entries.AddRange(files.Select(f => (HashOf(f.Bytes.Span), f.Name)));
        return list;
    }

    /// <summary>Reads a list; null when the text is not one.</summary>
    public static PacketList? Parse(string text)
    {
        var lines = text.ReplaceLineEndings("\n").Split('\n', StringSplitOptions.RemoveEmptyEntries);
        if (lines.Length == 0 || lines[0] != Head) return null;
        var list = new PacketList();
        foreach (var line in lines.Skip(1))
        {
            var parts = line.Split("  ", 2);
            if (parts.Length != 2 || parts[0].Length != 64 || !parts[0].All(char.IsAsciiHexDigitLower) || !IsOwnName(parts[1])) return null;
            list._entries.Add((parts[0], parts[1]));
        }

        return list;
    }

    /// <summary>Whether a name can be a packet's file: a plain safe name, or one in a folder of a safe name; and not the list itself.</summary>
    public static bool IsOwnName(string name) =>
        name.Split('/') is { Length: 1 or 2 } steps && Array.TrueForAll(steps, SafeFileName.IsSafe) && !name.Equals(FileName, StringComparison.OrdinalIgnoreCase);

    public bool Lists(string name) => _entries.Exists(e => e.Name == name);

    public bool Lists(string name, string hash) => _entries.Contains((hash, name));

    public PacketList With(PacketList other)
    {
        var both = new PacketList();
        both._entries.AddRange(_entries.Concat(other._entries).Distinct());
        return both;
    }

    public byte[] ToBytes() => Encoding.UTF8.GetBytes(string.Concat(_entries.Select(e => $"{e.Hash}  {e.Name}\n").Prepend(Head + "\n")));
}
