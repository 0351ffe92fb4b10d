using System.Globalization;
using System.Text.Json;
using BlockingTemplates.Web.Stages;

namespace BlockingTemplates.Web.Desk;

/// <summary>All working copies, kept in the state folder.</summary>
internal sealed class WorkDesk : IDisposable
{
    /// <summary>The most working copies there may be.</summary>
    public const int MostCopies = 200;

    /// <summary>Copies whose computed answers stay in memory.</summary>
    private const int MostAnswers = 4;

    private readonly Lock _gate = new();
    private readonly string _folder;
    private readonly IReadOnlyList<Stage> _stages;
    private readonly FileStream _lock;
    private readonly SortedDictionary<int, WorkingCopy> _copies = [];
    private readonly List<WorkingCopy> _recent = [];
    private long _order;
    private int _last;

    /// <summary>The desk in a folder; throws an <see cref="IOException"/> where another program works there.</summary>
    public WorkDesk(string folder, IReadOnlyList<Stage> stages)
    {
        (_folder, _stages) = (folder, stages);
        Directory.CreateDirectory(folder);
        _lock = Locked(folder);
        foreach (var path in Directory.EnumerateDirectories(folder, "p*"))
        {
            var id = Path.GetFileName(path);
            if (NumberOf(id) is not { } number)
                continue;
            _last = Math.Max(_last, number);
            if (Kept(id) is { } copy)
                _copies[number] = copy;
        }

        _order = _copies.Values.Select(c => c.Card.Order).DefaultIfEmpty().Max();
    }

    /// <summary>The copies, the one touched last first.</summary>
    public IReadOnlyList<WorkingCopy> All
    {
        get
        {
            lock (_gate)
                return [.. _copies.Values.OrderByDescending(c => c.Card.Order)];
        }
    }

    /// <summary>The copy touched last, or null where there is none.</summary>
    public WorkingCopy? Newest => All is [var first, ..] ? first : null;

    /// <summary>The order of the next change.</summary>
    public long NextOrder() => Interlocked.Increment(ref _order);

    /// <summary>The copy of an id, or null; its answers stay in memory, those of copies not looked at for long do not.</summary>
    public WorkingCopy? Find(string id)
    {
        lock (_gate)
        {
            if (NumberOf(id) is not { } number || !_copies.TryGetValue(number, out var copy))
                return null;
            _recent.Remove(copy);
            _recent.Add(copy);
            if (_recent.Count > MostAnswers)
            {
                _recent[0].Forget();
                _recent.RemoveAt(0);
            }

            return copy;
        }
    }

    /// <summary>A new working copy, or null where there are too many.</summary>
    /// <param name="name">Its file name without the ending.</param>
    /// <param name="text">Its text.</param>
    /// <param name="beside">Files beside it.</param>
    /// <param name="filePath">The file it saves to, or null.</param>
    public WorkingCopy? Add(string name, byte[] text, IReadOnlyList<KeyValuePair<string, byte[]>> beside, string? filePath = null)
    {
        lock (_gate)
        {
            if (_copies.Count >= MostCopies)
                return null;
            var number = ++_last;
            var id = string.Create(CultureInfo.InvariantCulture, $"p{number}");
            var card = new CopyCard(name, 1, NextOrder(), filePath, filePath is null ? null : KeptFiles.HashOf(text), [.. beside.Select(b => b.Key)]);
            var copy = new WorkingCopy(id, card, text, [.. beside.Select(b => b.Value)], Files(id), _stages);
            copy.KeepAll();
            return _copies[number] = copy;
        }
    }

    /// <summary>Takes a copy away for good; whether there was one.</summary>
    public bool Delete(string id)
    {
        lock (_gate)
        {
            if (NumberOf(id) is not { } number || !_copies.Remove(number, out var copy))
                return false;
            _recent.Remove(copy);
            copy.Delete();
            return true;
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        foreach (var copy in All)
            copy.Dispose();
        _lock.Dispose();
    }

    private static FileStream Locked(string folder)
    {
        try
        {
            return new(Path.Combine(folder, "lock"), FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None, 1, FileOptions.DeleteOnClose);
        }
        catch (IOException e)
        {
            throw new IOException($"The page is running already with the work kept in {folder}. Open it there, end it first, or name another folder with --state.", e);
        }
    }

    private static int? NumberOf(string id) =>
        id is ['p', .. var digits] && digits.Length is > 0 and <= 9 && int.TryParse(digits, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && id == string.Create(CultureInfo.InvariantCulture, $"p{number}")
            ? number
            : null;

    private KeptFiles Files(string id) => new(Path.Combine(_folder, id));

    /// <summary>A copy as it was kept, or null where its files are not whole: they are left as they are.</summary>
    private WorkingCopy? Kept(string id)
    {
        var files = Files(id);
        try
        {
            if (files.Read(KeptFiles.Card) is not { } kept || files.Read(KeptFiles.Text) is not { } text || JsonSerializer.Deserialize(kept, DeskJson.Default.CopyCard) is not { } card)
                return null;
            var beside = Enumerable.Range(0, card.Beside.Count).Select(i => files.Read(KeptFiles.Beside(i)) ?? []).ToList();
            return new(id, card, text, beside, files, _stages);
        }
        catch (Exception e) when (e is IOException or JsonException or UnauthorizedAccessException)
        {
            return null;
        }
    }
}
