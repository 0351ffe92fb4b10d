namespace BlockingTemplates.Output.Packets;

/// <summary>Moves files into a folder one by one, and back again if one of the moves fails.</summary>
/// <param name="folder">Where the files go.</param>
/// <param name="old">An empty folder on the same volume that keeps what they replace.</param>
/// <param name="move">Moves a file to a path, over the file there if so told.</param>
internal sealed class FileSwap(string folder, string old, Action<string, string, bool> move)
{
    private readonly Stack<Action> _undo = new();
    private int _count;

    /// <summary>Does all moves, or undoes those already done and throws.</summary>
    public void Do(Action moves)
    {
        try
        {
            moves();
        }
        catch (Exception failure)
        {
            var failures = new List<Exception>();
            while (_undo.TryPop(out var undo))
            {
                try
                {
                    undo();
                }
                catch (Exception e) when (e is IOException or UnauthorizedAccessException)
                {
                    failures.Add(e);
                }
            }

            if (failures.Count == 0) throw;
            throw new IOException(
                $"{failure.Message} Not all files in {folder} could be put back: {string.Join(" ", failures.Select(f => f.Message))} Write the packet again to make it whole.",
                new AggregateException([failure, .. failures]));
        }
    }

    /// <summary>Puts a file in place, over the one of that name if there is one: at no moment is there none, or half a one.</summary>
    public void Place(string file, string name)
    {
        var place = Path.Combine(folder, name);
        if (Path.GetDirectoryName(place) is { } own && !Directory.Exists(own))
        {
            Directory.CreateDirectory(own);
            _undo.Push(() => Directory.Delete(own, recursive: false));
        }

        if (File.Exists(place))
        {
            var kept = NextKept();
            File.Copy(place, kept);
            move(file, place, true);
            _undo.Push(() => File.Move(kept, place, overwrite: true));
        }
        else
        {
            move(file, place, false);
            _undo.Push(() => File.Delete(place));
        }
    }

    /// <summary>Takes a file away, if it is there, and its own folder once that is empty.</summary>
    public void Remove(string name)
    {
        var place = Path.Combine(folder, name);
        if (!File.Exists(place)) return;
        var kept = NextKept();
        move(place, kept, false);
        _undo.Push(() => File.Move(kept, place, overwrite: true));
        if (Path.GetDirectoryName(place) is { } own && own != Path.TrimEndingDirectorySeparator(folder) && !Directory.EnumerateFileSystemEntries(own).Any())
        {
            Directory.Delete(own, recursive: false);
            _undo.Push(() => Directory.CreateDirectory(own));
        }
    }

    private string NextKept() => Path.Combine(old, $"{_count++}");
}
