namespace BlockingTemplates.Web.Stages;

/// <summary>Runs the stages on the newest version of one project.</summary>
/// <remarks>
/// A newer version cancels the run of an older one, and an answer never takes the place of one of a newer version or of a
/// later stage. One version's first stage is computed at a time; versions that are overtaken while they wait are never
/// computed. The slower stages run beside the first one, so that they never hold up a quick answer.
/// </remarks>
internal sealed class StageRuns(IReadOnlyList<Stage> stages, Action changed) : IDisposable
{
    private static readonly TimeSpan _pause = TimeSpan.FromMilliseconds(30);
    private readonly Lock _gate = new();
    private readonly SemaphoreSlim _quick = new(1);
    private readonly SemaphoreSlim _slow = new(1);
    private CancellationTokenSource? _running;
    private Task<StageResult?>? _first;
    private long _current = long.MinValue;
    private StageResult? _latest;
    private StageProgress? _progress;
    private Exception? _failure;
    private TaskCompletionSource _told = new(TaskCreationOptions.RunContinuationsAsynchronously);

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

    /// <summary>Starts on a version unless it runs already; answers with its first stage's result, or null where a newer version overtook it. The slower stages go on by themselves.</summary>
    public Task<StageResult?> StartAsync(StageRequest request)
    {
        lock (_gate)
        {
            if (_current == request.Version && _first is not null)
                return _first;
            if (_current > request.Version)
                return Task.FromResult<StageResult?>(null);
            _running?.Cancel();
            _running?.Dispose();
            _running = new();
            (_current, _progress, _failure) = (request.Version, null, null);
            return _first = RunAsync(request, _running.Token);
        }
    }

    /// <summary>The answer of the last stage to a version, or null where a newer version overtook it; throws where a stage failed.</summary>
    public async Task<StageResult?> FinalAsync(StageRequest request, CancellationToken cancellation)
    {
        while (true)
        {
            Task told;
            lock (_gate)
            {
                if (_current > request.Version)
                    return null;
                if (_current == request.Version && _failure is { } failure)
                    throw new InvalidOperationException("A stage failed.", failure);
                if (_latest is { IsFinal: true } latest && latest.Version == request.Version)
                    return latest;
                told = _told.Task;
            }

            await StartAsync(request).ConfigureAwait(false);
            await told.WaitAsync(cancellation).ConfigureAwait(false);
        }
    }

    /// <summary>Lets go of the newest answer, to save memory; a run that goes on is cancelled.</summary>
    public void Forget()
    {
        lock (_gate)
        {
            _running?.Cancel();
            (_latest, _progress, _first, _failure, _current) = (null, null, null, null, long.MinValue);
        }

        Tell();
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        Forget();
        _running?.Dispose();
    }

    private async Task<StageResult?> RunAsync(StageRequest request, CancellationToken cancellation)
    {
        try
        {
            await _quick.WaitAsync(cancellation).ConfigureAwait(false);
            StageResult? first;
            try
            {
                first = await Task.Run(() => stages[0](request, null, Progressing(cancellation), cancellation), cancellation).ConfigureAwait(false);
            }
            finally
            {
                _quick.Release();
            }

            if (first is null || !Publish(first))
                return null;
            if (!first.IsFinal)
                _ = Task.Run(() => GoOnAsync(request, first, cancellation), CancellationToken.None);
            return first;
        }
        catch (OperationCanceledException) when (cancellation.IsCancellationRequested)
        {
            return null;
        }
    }

    private async Task GoOnAsync(StageRequest request, StageResult first, CancellationToken cancellation)
    {
        try
        {
            // The quick answer is drawn first.
            await Task.Delay(_pause, cancellation).ConfigureAwait(false);
            await _slow.WaitAsync(cancellation).ConfigureAwait(false);
            try
            {
                var before = first;
                foreach (var stage in stages.Skip(1))
                {
                    if (stage(request, before, Progressing(cancellation), cancellation) is { } result && Publish(result))
                        before = result;
                }
            }
            finally
            {
                _slow.Release();
            }
        }
        catch (OperationCanceledException) when (cancellation.IsCancellationRequested)
        {
            // A newer version took its place.
        }
        catch (Exception e)
        {
            // Told to those who wait for the last answer; the quick answer stands.
            lock (_gate)
            {
                if (_current == request.Version)
                    _failure = e;
            }
        }

        Took(null, cancellation);
    }

    private Action<StageProgress> Progressing(CancellationToken cancellation) => progress => Took(progress, cancellation);

    private void Took(StageProgress? progress, CancellationToken cancellation)
    {
        lock (_gate)
        {
            if (cancellation.IsCancellationRequested)
                return;
            _progress = progress;
        }

        Tell();
    }

    private bool Publish(StageResult result)
    {
        lock (_gate)
        {
            if (_latest is { } latest && (latest.Version > result.Version || (latest.Version == result.Version && latest.Stage > result.Stage)))
                return false;
            _latest = result;
        }

        Tell();
        return true;
    }

    private void Tell()
    {
        TaskCompletionSource before;
        lock (_gate)
            (before, _told) = (_told, new(TaskCreationOptions.RunContinuationsAsynchronously));
        before.TrySetResult();
        changed();
    }
}
