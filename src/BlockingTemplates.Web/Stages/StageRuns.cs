namespace BlockingTemplates.Web.Stages;

/// <summary>Runs the stages on the newest version of one working copy.</summary>
/// <remarks>
/// A newer version cancels the run of an older one, and an answer never takes the place of one of a newer version or of a
/// later stage. One version is computed at a time; versions that are overtaken while they wait are never computed.
/// </remarks>
internal sealed class StageRuns(IReadOnlyList<Stage> stages, Action changed) : IDisposable
{
    private readonly Lock _gate = new();
    private readonly SemaphoreSlim _computing = new(1);
    private CancellationTokenSource? _running;
    private StageResult? _latest;
    private StageProgress? _progress;

    /// <summary>The newest answer, or null before the first.</summary>
    public StageResult? Latest
    {
        get
        {
            lock (_gate)
                return _latest;
        }
    }

    /// <summary>How far the running slow stage has come, or null where none runs.</summary>
    public StageProgress? Progress
    {
        get
        {
            lock (_gate)
                return _progress;
        }
    }

    /// <summary>Starts on a version; answers with its first stage's result, or null where a newer version overtook it. The slower stages go on by themselves.</summary>
    public async Task<StageResult?> StartAsync(StageRequest request)
    {
        CancellationToken cancellation;
        lock (_gate)
        {
            if (_latest?.Version > request.Version)
                return null;
            _running?.Cancel();
            _running?.Dispose();
            _running = new();
            _progress = null;
            cancellation = _running.Token;
        }

        try
        {
            await _computing.WaitAsync(cancellation).ConfigureAwait(false);
            StageResult? first;
            try
            {
                first = await Task.Run(() => stages[0](request, null, Told(cancellation), cancellation), cancellation).ConfigureAwait(false);
            }
            finally
            {
                _computing.Release();
            }

            if (first is null || !Publish(first))
                return null;
            if (stages.Count > 1)
                _ = Task.Run(() => GoOnAsync(request, first, cancellation), CancellationToken.None);
            return first;
        }
        catch (OperationCanceledException)
        {
            return null;
        }
    }

    /// <summary>Lets go of the newest answer, to save memory; a run that goes on is cancelled.</summary>
    public void Forget()
    {
        lock (_gate)
        {
            _running?.Cancel();
            _latest = null;
            _progress = null;
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        Forget();
        _running?.Dispose();
    }

    private async Task GoOnAsync(StageRequest request, StageResult first, CancellationToken cancellation)
    {
        var before = first;
        try
        {
            foreach (var stage in stages.Skip(1))
            {
                await _computing.WaitAsync(cancellation).ConfigureAwait(false);
                try
                {
                    if (stage(request, before, Told(cancellation), cancellation) is { } result && Publish(result))
                        before = result;
                }
                finally
                {
                    _computing.Release();
                }
            }
        }
        catch (OperationCanceledException)
        {
            // A newer version took its place.
        }
        finally
        {
            Tell(null, cancellation);
        }
    }

    private Action<StageProgress> Told(CancellationToken cancellation) => progress => Tell(progress, cancellation);

    private void Tell(StageProgress? progress, CancellationToken cancellation)
    {
        lock (_gate)
        {
            if (cancellation.IsCancellationRequested)
                return;
            _progress = progress;
        }

        changed();
    }

    private bool Publish(StageResult result)
    {
        lock (_gate)
        {
            if (_latest is { } latest && (latest.Version > result.Version || (latest.Version == result.Version && latest.Stage > result.Stage)))
                return false;
            _latest = result;
        }

        changed();
        return true;
    }
}
