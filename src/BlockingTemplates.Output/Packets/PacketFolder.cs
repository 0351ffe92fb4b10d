namespace BlockingTemplates.Output.Packets;

/// <summary>Writes a set of files into a folder, whole or not at all.</summary>
/// <remarks>
/// All files are first written into a hidden folder beside their places, and moved only once all are ready. Only files
/// that an earlier run wrote and nobody changed since are replaced or removed; the list of them is the file packet.txt.
/// When something fails or is cancelled, the folder is as it was. Two runs never write into one folder at once.
/// </remarks>
public sealed class PacketFolder
{
    private const string WaitingName = ".packet-waiting";

    private readonly Action<string, string, bool> _move;

    /// <summary>A folder, which need not exist yet.</summary>
    public PacketFolder(string folder)
        : this(folder, File.Move)
    {
    }

    internal PacketFolder(string folder, Action<string, string, bool> move)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(folder);
        Folder = Path.GetFullPath(folder);
        _move = move;
    }

    /// <summary>Full path of the folder.</summary>
    public string Folder { get; }

    /// <summary>Replaces the packet in the folder by these files.</summary>
    /// <param name="files">At least one file; names safe, no two alike but for case.</param>
    /// <param name="cancellation">Cancels while the files are being made ready; once they are, they are all moved.</param>
    /// <exception cref="PacketConflictException">Files in the folder are not the tool's own, or were changed since.</exception>
    /// <exception cref="IOException">The folder cannot be written, or another run is writing to it.</exception>
    /// <exception cref="OperationCanceledException">Cancelled; the folder is as it was.</exception>
    public PacketOutcome Replace(IReadOnlyList<PacketFile> files, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(files);
        if (files.Count == 0) throw new ArgumentException("A packet has at least one file.", nameof(files));
        if (files.FirstOrDefault(f => !PacketList.IsOwnName(f.Name)) is { } unsafeFile) throw new ArgumentException($"\"{unsafeFile.Name}\" is no safe file name.", nameof(files));
        if (files.DistinctBy(f => f.Name, StringComparer.OrdinalIgnoreCase).Count() < files.Count) throw new ArgumentException("Two files have the same name.", nameof(files));
        cancellation.ThrowIfCancellationRequested();

        var made = FirstMissing(Folder);
        var waiting = Path.Combine(Folder, WaitingName);
        var done = false;
        try
        {
            Directory.CreateDirectory(waiting);
            using (Lock(waiting))
            {
                var outcome = Replace(files, waiting, cancellation);
                done = true;
                return outcome;
            }
        }
        catch (UnauthorizedAccessException e)
        {
            throw new IOException($"{Folder} cannot be written: {e.Message}", e);
        }
        finally
        {
            RemoveIfEmpty(waiting);
            if (!done && made is not null) RemoveEmptyUpTo(Folder, made);
        }
    }

    private PacketOutcome Replace(IReadOnlyList<PacketFile> files, string waiting, CancellationToken cancellation)
    {
        var (fresh, old) = (Path.Combine(waiting, "new"), Path.Combine(waiting, "old"));
        try
        {
            Clear(fresh, old); // what a run that was cut off left behind
            var before = Check(files);
            Directory.CreateDirectory(fresh);
            Directory.CreateDirectory(old);
            var list = PacketList.Of(files);
            foreach (var own in files.Select(f => Path.GetDirectoryName(Path.Combine(fresh, f.Name))!).Distinct()) Directory.CreateDirectory(own);
            foreach (var file in files) Write(Path.Combine(fresh, file.Name), file.Bytes, cancellation);
            var both = Path.Combine(waiting, "both.txt");
            Write(both, before.With(list).ToBytes(), cancellation);
            Write(Path.Combine(fresh, PacketList.FileName), list.ToBytes(), cancellation);

            before = Check(files); // nothing has changed meanwhile
            var (removed, leftAlone) = Gone(before, list);
            cancellation.ThrowIfCancellationRequested();
            var swap = new FileSwap(Folder, old, _move);
            swap.Do(() =>
            {
                // Should the machine stop half-way, the list in place names the old and the new files as ours.
                swap.Place(both, PacketList.FileName);
                foreach (var name in removed) swap.Remove(name);
                foreach (var file in files) swap.Place(Path.Combine(fresh, file.Name), file.Name);
                swap.Place(Path.Combine(fresh, PacketList.FileName), PacketList.FileName);
            });
            return new([.. files.Select(f => Path.Combine(Folder, f.Name))], removed, leftAlone);
        }
        finally
        {
            Clear(fresh, old);
            File.Delete(Path.Combine(waiting, "both.txt"));
        }
    }

    /// <summary>The list of the packet in the folder, empty if there is none; throws when a file is in the way.</summary>
    private PacketList Check(IReadOnlyList<PacketFile> files)
    {
        var listPath = Path.Combine(Folder, PacketList.FileName);
        var before = File.Exists(listPath) ? PacketList.Parse(File.ReadAllText(listPath)) : PacketList.Of([]);
        if (before is null || Directory.Exists(listPath)) throw new PacketConflictException(Folder, [(PacketList.FileName, "is not a list that this tool wrote")]);

        var inTheWay = new List<(string, string)>();
        foreach (var file in files)
        {
            var path = Path.Combine(Folder, file.Name);
            if (Directory.Exists(path)) inTheWay.Add((file.Name, "is a folder"));
            if (Path.GetDirectoryName(path) is { } own && File.Exists(own)) inTheWay.Add((file.Name.Split('/')[0], "is no folder"));
            if (!File.Exists(path)) continue;
            var hash = PacketList.HashOf(path);
            if (before.Lists(file.Name, hash) || hash == PacketList.HashOf(file.Bytes.Span)) continue;
            inTheWay.Add((file.Name, before.Lists(file.Name) ? "was changed since this tool wrote it" : "was not written by this tool"));
        }

        return inTheWay.Count == 0 ? before : throw new PacketConflictException(Folder, inTheWay);
    }

    private (List<string> Removed, List<string> LeftAlone) Gone(PacketList before, PacketList now)
    {
        var gone = before.Names.Where(n => !now.Lists(n) && File.Exists(Path.Combine(Folder, n))).ToLookup(n => before.Lists(n, PacketList.HashOf(Path.Combine(Folder, n))));
        return ([.. gone[true]], [.. gone[false]]);
    }

    private static void Write(string path, ReadOnlyMemory<byte> bytes, CancellationToken cancellation)
    {
        const int Part = 1 << 20;
        using var stream = new FileStream(path, FileMode.CreateNew, FileAccess.Write, FileShare.None);
        for (var from = 0; from < bytes.Length; from += Part)
        {
            cancellation.ThrowIfCancellationRequested();
            stream.Write(bytes.Span.Slice(from, Math.Min(Part, bytes.Length - from)));
        }

        cancellation.ThrowIfCancellationRequested();
        stream.Flush(flushToDisk: true);
    }

    private FileStream Lock(string waiting)
    {
        try
        {
            return new FileStream(Path.Combine(waiting, "lock"), FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None, 1, FileOptions.DeleteOnClose);
        }
        catch (IOException e)
        {
            throw new IOException($"Another run is writing to {Folder}. Wait for it to end, then try again.", e);
        }
    }

    private static void Clear(params string[] folders)
    {
        foreach (var folder in folders.Where(Directory.Exists)) Directory.Delete(folder, recursive: true);
    }

    /// <summary>The uppermost folder on the way that does not exist yet, or null.</summary>
    private static string? FirstMissing(string folder)
    {
        string? missing = null;
        for (var at = folder; at is not null && !Directory.Exists(at); at = Path.GetDirectoryName(at)) missing = at;
        return missing;
    }

    private static void RemoveEmptyUpTo(string folder, string uppermost)
    {
        for (var at = folder; at is not null; at = Path.GetDirectoryName(at))
        {
            if (!RemoveIfEmpty(at) || at == uppermost) return;
        }
    }

    private static bool RemoveIfEmpty(string folder)
    {
        try
        {
            if (Directory.Exists(folder)) Directory.Delete(folder, recursive: false);
            return true;
        }
        catch (IOException)
        {
            return false; // something else is in it
        }
        catch (UnauthorizedAccessException)
        {
            return false;
        }
    }
}
