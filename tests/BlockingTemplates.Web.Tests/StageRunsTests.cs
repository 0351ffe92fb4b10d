using System.Collections.Concurrent;
using System.Text;
using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Web.Stages;

namespace BlockingTemplates.Web.Tests;

// Quick answers first, slow ones after; newer versions before older ones.
public class StageRunsTests
{
    private static readonly TimeSpan Long = TimeSpan.FromSeconds(30);

    [Fact]
    public async Task The_quick_answer_does_not_wait_for_the_slow_one_which_follows_with_progress()
    {
        using var go = new ManualResetEventSlim();
        var progress = new ConcurrentQueue<double>();
        StageRuns? runs = null;
        using var made = runs = new StageRuns([Quick, (r, before, tell, c) =>
        {
            tell(new(r.Version, 0.5, "half"));
            go.Wait(c);
            return Result(r, 1);
        }], () => { if (runs?.Progress is { } p) progress.Enqueue(p.Part); });
        Assert.Equal((1, 0), Said(await runs.StartAsync(Request(1))));
        Assert.Equal((1, 0), Said(runs.Latest));
        go.Set();
        await Until(() => runs.Latest!.Stage == 1);
        Assert.Contains(0.5, progress);
        await Until(() => runs.Progress is null);
    }

    [Fact]
    public async Task A_newer_version_cancels_the_slow_stage_of_an_older_one()
    {
        using var cancelled = new ManualResetEventSlim();
        using var began = new ManualResetEventSlim();
        using var runs = new StageRuns([Quick, (r, _, _, c) =>
        {
            if (r.Version > 1)
                return Result(r, 1);
            began.Set();
            c.WaitHandle.WaitOne(Long);
            cancelled.Set();
            c.ThrowIfCancellationRequested();
            return Result(r, 1);
        }], () => { });
        await runs.StartAsync(Request(1));
        Assert.True(began.Wait(Long));
        var second = runs.StartAsync(Request(2));
        Assert.True(cancelled.Wait(Long));
        Assert.Equal((2, 0), Said(await second));
        await Until(() => Said(runs.Latest) == (2, 1));
    }

    [Fact]
    public async Task An_older_answer_never_takes_the_place_of_a_newer_one()
    {
        using var go = new ManualResetEventSlim();
        var seen = new List<(long, int)>();
        StageRuns? runs = null;
        using var made = runs = new StageRuns([(r, _, _, _) =>
        {
            // Takes no notice of being cancelled, as a stage may that is nearly done.
            if (r.Version == 1)
                go.Wait(Long, CancellationToken.None);
            return Result(r, 0);
        }], () =>
        {
            lock (seen)
            {
                if (runs?.Latest is { } latest)
                    seen.Add((latest.Version, latest.Stage));
            }
        });
        var older = runs.StartAsync(Request(1));
        await Task.Delay(50);
        var newer = runs.StartAsync(Request(2));
        go.Set();
        await Task.WhenAll(older, newer);
        Assert.Equal((2, 0), Said(await newer));
        Assert.Equal((2, 0), Said(runs.Latest));
        lock (seen)
            Assert.Equal(seen.Order(), seen);
        Assert.Null(await runs.StartAsync(Request(1)));
        Assert.Equal((2, 0), Said(runs.Latest));
    }

    [Fact]
    public async Task Of_many_versions_that_come_at_once_those_overtaken_while_they_wait_are_never_computed()
    {
        using var go = new ManualResetEventSlim();
        var computed = new ConcurrentQueue<long>();
        using var runs = new StageRuns([(r, _, _, _) =>
        {
            computed.Enqueue(r.Version);
            go.Wait(Long, CancellationToken.None);
            return Result(r, 0);
        }], () => { });
        var all = new List<Task<StageResult?>> { runs.StartAsync(Request(1)) };
        await Until(() => !computed.IsEmpty);
        for (var version = 2; version <= 50; version++)
            all.Add(runs.StartAsync(Request(version)));
        go.Set();
        await Task.WhenAll(all);
        Assert.Equal((50, 0), Said(runs.Latest));
        Assert.Equal([1, 50], computed);
    }

    [Fact]
    public async Task A_stage_that_fails_does_not_stop_the_next_version()
    {
        using var runs = new StageRuns([(r, _, _, _) => r.Version == 1 ? throw new InvalidOperationException("broken") : Result(r, 0)], () => { });
        await Assert.ThrowsAsync<InvalidOperationException>(() => runs.StartAsync(Request(1)));
        Assert.Equal((2, 0), Said(await runs.StartAsync(Request(2))));
    }

    [Fact]
    public async Task Who_waits_for_the_last_answer_gets_it_or_hears_that_it_was_overtaken_or_failed()
    {
        using var go = new ManualResetEventSlim();
        using var runs = new StageRuns([Quick, (r, _, _, c) =>
        {
            go.Wait(c);
            return r.Version == 3 ? throw new InvalidOperationException("broken") : Result(r, 1);
        }], () => { });
        var first = runs.FinalAsync(Request(1), CancellationToken.None);
        await Until(() => runs.Latest is not null);
        var second = runs.FinalAsync(Request(2), CancellationToken.None);
        Assert.Null(await first);
        go.Set();
        Assert.Equal((2, 1), Said(await second));
        Assert.Equal((2, 1), Said(await runs.FinalAsync(Request(2), CancellationToken.None)));
        runs.Forget();
        Assert.Equal((2, 1), Said(await runs.FinalAsync(Request(2), CancellationToken.None)));
        await Assert.ThrowsAsync<InvalidOperationException>(() => runs.FinalAsync(Request(3), CancellationToken.None));
        Assert.Equal((4, 1), Said(await runs.FinalAsync(Request(4), CancellationToken.None)));
    }

    [Fact]
    public async Task The_same_version_asked_for_twice_is_computed_once()
    {
        var computed = 0;
        using var runs = new StageRuns([(r, _, _, _) =>
        {
            Interlocked.Increment(ref computed);
            return Result(r, 0) with { IsFinal = true };
        }], () => { });
        var both = await Task.WhenAll(runs.StartAsync(Request(1)), runs.StartAsync(Request(1)), runs.FinalAsync(Request(1), CancellationToken.None));
        Assert.All(both, r => Assert.Equal((1, 0), Said(r)));
        Assert.Equal(1, computed);
    }

    [Fact]
    public async Task The_engine_s_geometry_is_the_first_stage_and_the_cloth_the_second()
    {
        using var runs = new StageRuns(EngineStages.All, () => { });
        var result = await runs.StartAsync(new(3, Encoding.UTF8.GetBytes(Pieces.Small()), _ => new(null, "none")));
        Assert.Equal((3, 0), Said(result));
        Assert.NotNull(result!.Plan);
        Assert.Null(result.Plan.Cloth);
        var last = await runs.FinalAsync(new(3, Encoding.UTF8.GetBytes(Pieces.Small()), _ => new(null, "none")), CancellationToken.None);
        Assert.Equal((3, 1), Said(last));
        Assert.NotNull(last!.Plan!.Cloth);
    }

    private static StageResult Quick(StageRequest request, StageResult? before, Action<StageProgress> progress, CancellationToken cancellation) => Result(request, 0);

    private static StageResult Result(StageRequest request, int stage) => new(request.Version, stage, null, [], new Findings()) { IsFinal = stage > 0 };

    private static StageRequest Request(long version) => new(version, [], _ => new(null, "none"));

    private static (long, int)? Said(StageResult? result) => result is null ? null : (result.Version, result.Stage);

    private static async Task Until(Func<bool> holds)
    {
        for (var i = 0; i < 600 && !holds(); i++)
            await Task.Delay(50);
        Assert.True(holds());
    }
}
