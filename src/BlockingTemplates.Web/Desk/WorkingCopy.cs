using System.Text.Json;
using BlockingTemplates.Engine.Projects.Files;
using BlockingTemplates.Web.Stages;

namespace BlockingTemplates.Web.Desk;

/// <summary>A project that is worked on in the page: its text, version by version, and the pinning that goes with it.</summary>
internal sealed class WorkingCopy : IDisposable
{
    private readonly Lock _gate = new();
    private readonly KeptFiles _files;
    private readonly StageRuns _runs;
    private readonly StageRuns _pinned;
    private readonly Dictionary<string, byte[]> _beside = new(StringComparer.Ordinal);
    private TaskCompletionSource _changed = new(TaskCreationOptions.RunContinuationsAsynchronously);
    private byte[] _text;
    private byte[]? _pinnedText;
    private PinsSoFar? _pins;
    private CopyCard _card;

    /// <summary>A working copy as kept, or a new one.</summary>
    /// <param name="id">Its id.</param>
    /// <param name="card">What is known of it.</param>
    /// <param name="text">Its text.</param>
    /// <param name="beside">Files beside it by name, in the card's order.</param>
    /// <param name="files">Where it is kept.</param>
    /// <param name="stages">What computes it.</param>
    public WorkingCopy(string id, CopyCard card, byte[] text, IReadOnlyList<byte[]> beside, KeptFiles files, IReadOnlyList<Stage> stages)
    {
        (Id, _card, _text, _files) = (id, card, text, files);
        for (var i = 0; i < card.Beside.Count; i++)
            _beside[card.Beside[i]] = beside[i];
        (_runs, _pinned) = (new(stages, Tell), new(stages, () => { }));
        if (files.Read(KeptFiles.Pins) is { } pins && files.Read(KeptFiles.PinnedText) is { } pinnedText)
            (_pins, _pinnedText) = (JsonSerializer.Deserialize(pins, DeskJson.Default.PinsSoFar), pinnedText);
    }

    /// <summary>Its id in addresses.</summary>
    public string Id { get; }

    /// <summary>What is known of it.</summary>
    public CopyCard Card => Held(() => _card);

    /// <summary>The text and its version.</summary>
    public (byte[] Text, long Version) Text => Held(() => (_text, _card.Version));

    /// <summary>How far the pinning has come, or null before it begins.</summary>
    public PinsSoFar? Pins => Held(() => _pins);

    /// <summary>Whether the project was changed after its pinning began.</summary>
    public bool ChangedSincePinning
    {
        get
        {
            lock (_gate)
                return _pinnedText is { } pinned && pinned != _text && !pinned.AsSpan().SequenceEqual(_text);
        }
    }

    /// <summary>How far a slow stage has come, or null.</summary>
    public StageProgress? Progress => _runs.Progress;

    /// <summary>The newest answer, or null.</summary>
    public StageResult? Latest => _runs.Latest;

    /// <summary>Ends at the next change of anything told here; to be taken before what is told is read.</summary>
    public Task Changed
    {
        get
        {
            lock (_gate)
                return _changed.Task;
        }
    }

    /// <summary>Takes a new text if it was made from the newest version; answers the new version, or null.</summary>
    public long? Edit(long madeFrom, byte[] text, long order)
    {
        lock (_gate)
        {
            if (madeFrom != _card.Version)
                return null;
            (_text, _card) = (text, _card with { Version = _card.Version + 1, Order = order });
            _files.Write(KeptFiles.Text, text);
            KeepCard();
        }

        Tell();
        return madeFrom + 1;
    }

    /// <summary>Puts a file beside the project, in place of one of the same name; the plan is made anew.</summary>
    public void Put(string name, byte[] bytes, long order)
    {
        lock (_gate)
        {
            var names = _card.Beside.Contains(name) ? _card.Beside : [.. _card.Beside, name];
            _beside[name] = bytes;
            _card = _card with { Version = _card.Version + 1, Order = order, Beside = names };
            _files.Write(KeptFiles.Beside(names.ToList().IndexOf(name)), bytes);
            KeepCard();
        }

        Tell();
    }

    /// <summary>The first answer to the newest version, or a later stage's where there is one; null where a newer version overtook it.</summary>
    public Task<StageResult?> AnswerAsync()
    {
        var request = Request();
        return _runs.Latest is { } latest && latest.Version == request.Version ? Task.FromResult<StageResult?>(latest) : _runs.StartAsync(request);
    }

    /// <summary>The last stage's answer to the newest version, which is what the command line finds; null where a newer version overtook it.</summary>
    public Task<StageResult?> FinalAnswerAsync(CancellationToken cancellation) => _runs.FinalAsync(Request(), cancellation);

    /// <summary>The last stage's answer to the text that is pinned by; null before the pinning begins.</summary>
    public async Task<StageResult?> PinnedAnswerAsync(CancellationToken cancellation)
    {
        byte[]? text;
        lock (_gate)
            text = _pinnedText;
        if (text is null)
            return null;
        return !ChangedSincePinning && await FinalAnswerAsync(cancellation).ConfigureAwait(false) is { Plan: not null } same
            ? same
            : await _pinned.FinalAsync(new(0, text, Beside), cancellation).ConfigureAwait(false);
    }

    /// <summary>Begins to pin by the text as it stands, with one of its plans of so many marks and wires.</summary>
    public PinsSoFar BeginPinning(int marks, int wires, int part)
    {
        PinsSoFar begun;
        lock (_gate)
        {
            begun = PinsSoFar.Begin(marks, wires, part, (_pins?.Change ?? 0) + 1);
            (_pins, _pinnedText) = (begun, _text);
            _pinned.Forget();
            _files.Write(KeptFiles.PinnedText, _text);
            KeepPins(begun);
        }

        Tell();
        return begun;
    }

    /// <summary>Takes a step of the pinning; null where there is no such step.</summary>
    public PinsSoFar? Step(string step, int number)
    {
        PinsSoFar? next;
        lock (_gate)
        {
            next = _pins?.After(step, number);
            if (next is null)
                return null;
            _pins = next;
            KeepPins(next);
        }

        Tell();
        return next;
    }

    /// <summary>Notes that the text was read from or written to its file.</summary>
    public void Saved(string path, byte[] text)
    {
        lock (_gate)
        {
            _card = _card with { FilePath = path, SavedHash = KeptFiles.HashOf(text) };
            KeepCard();
        }

        Tell();
    }

    /// <summary>Keeps everything, for a new copy.</summary>
    public void KeepAll()
    {
        lock (_gate)
        {
            _files.Write(KeptFiles.Text, _text);
            for (var i = 0; i < _card.Beside.Count; i++)
                _files.Write(KeptFiles.Beside(i), _beside[_card.Beside[i]]);
            KeepCard();
        }
    }

    /// <summary>Lets go of computed answers, to save memory.</summary>
    public void Forget()
    {
        _runs.Forget();
        _pinned.Forget();
    }

    /// <summary>Takes it away from the state folder.</summary>
    public void Delete()
    {
        Dispose();
        _files.Delete();
        Tell();
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        _runs.Dispose();
        _pinned.Dispose();
    }

    /// <summary>The file of a name beside the project, for the reader.</summary>
    public FileBeside Beside(string name)
    {
        lock (_gate)
            return _beside.TryGetValue(name, out var bytes) ? new(bytes, null) : new(null, $"{name} was not found beside the project file.");
    }

    private T Held<T>(Func<T> read)
    {
        lock (_gate)
            return read();
    }

    private StageRequest Request()
    {
        var (text, version) = Text;
        return new(version, text, Beside);
    }

    private void KeepCard() => _files.Write(KeptFiles.Card, JsonSerializer.SerializeToUtf8Bytes(_card, DeskJson.Default.CopyCard));

    private void KeepPins(PinsSoFar pins) => _files.Write(KeptFiles.Pins, JsonSerializer.SerializeToUtf8Bytes(pins, DeskJson.Default.PinsSoFar));

    private void Tell()
    {
        TaskCompletionSource before;
        lock (_gate)
            (before, _changed) = (_changed, new(TaskCreationOptions.RunContinuationsAsynchronously));
        before.TrySetResult();
    }
}
