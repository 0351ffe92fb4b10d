using System.Security.Cryptography;

namespace BlockingTemplates.Web.Desk;

/// <summary>The files of one working copy in the state folder; each is replaced whole or not at all.</summary>
/// <param name="folder">Its folder.</param>
internal sealed class KeptFiles(string folder)
{
    /// <summary>The project's text.</summary>
    public const string Text = "project.jsonc";

    /// <summary>What is kept beside it.</summary>
    public const string Card = "card.json";

    /// <summary>How far the pinning has come.</summary>
    public const string Pins = "pins.json";

    /// <summary>The text that is pinned by.</summary>
    public const string PinnedText = "pinned.jsonc";

    /// <summary>The file beside the project of a number.</summary>
    public static string Beside(int number) => FormattableString.Invariant($"beside-{number}");

    /// <summary>A file's bytes, or null where there is none.</summary>
    public byte[]? Read(string name)
    {
        var path = Path.Combine(folder, name);
        return File.Exists(path) ? File.ReadAllBytes(path) : null;
    }

    /// <summary>Writes a file.</summary>
    public void Write(string name, ReadOnlySpan<byte> bytes)
    {
        Directory.CreateDirectory(folder);
        Replace(Path.Combine(folder, name), bytes);
    }

    /// <summary>Takes the folder away.</summary>
    public void Delete()
    {
        if (Directory.Exists(folder))
            Directory.Delete(folder, recursive: true);
    }

    /// <summary>SHA-256 of bytes, in hexadecimal.</summary>
    public static string HashOf(ReadOnlySpan<byte> bytes) => Convert.ToHexStringLower(SHA256.HashData(bytes));

    /// <summary>Writes a file whole or not at all.</summary>
    public static void Replace(string path, ReadOnlySpan<byte> bytes)
    {
        var fresh = path + ".new";
        using (var stream = new FileStream(fresh, FileMode.Create, FileAccess.Write, FileShare.None))
            stream.Write(bytes);
        File.Move(fresh, path, overwrite: true);
    }
}
