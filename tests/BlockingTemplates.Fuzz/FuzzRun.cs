using System.Diagnostics;

namespace BlockingTemplates.Fuzz;

/// <summary>Runs cases of a target, keeping those that reach what none before reached.</summary>
internal sealed class FuzzRun(FuzzTarget target, Coverage coverage, int seed)
{
    private readonly List<byte[]> _kept = [];
    private byte[] _case = [];
    private long _startedAt;
    private double _slowest;

    /// <summary>Whether so many cases ran without a fault; the first faulty case is written to a file beside the run.</summary>
    public bool Go(long count)
    {
        var random = new Random(seed);
        var mutation = new Mutation(random, target.Words, target.MostBytes);
        var watch = Stopwatch.StartNew();
        using var hang = new Timer(_ => StopHanging(), null, TimeSpan.FromSeconds(1), TimeSpan.FromSeconds(1));
        for (long i = 0; i < count; i++)
        {
            _case = i < target.Seeds.Count ? target.Seeds[(int)i] : mutation.Of(Pick(random), Pick(random));
            if (!Passes())
                return false;
            if ((i + 1) % Math.Max(1, count / 10) == 0)
                Tell(i + 1, watch);
        }

        return true;
    }

    // Half of the cases grow out of the newest findings.
    private byte[] Pick(Random random) =>
        _kept.Count == 0 ? [] : random.Next(2) == 0 ? _kept[random.Next(_kept.Count)] : _kept[^(1 + random.Next(Math.Min(_kept.Count, 50)))];

    private bool Passes()
    {
        coverage.Clear();
        Volatile.Write(ref _startedAt, Stopwatch.GetTimestamp());
        try
        {
            target.Check(_case);
        }
#pragma warning disable CA1031 // Any exception whatever is the fault looked for.
        catch (Exception e)
#pragma warning restore CA1031
        {
            Console.WriteLine($"{target.Name}: {e}");
            Save("throws");
            return false;
        }

        var took = Stopwatch.GetElapsedTime(Volatile.Read(ref _startedAt)).TotalSeconds;
        Volatile.Write(ref _startedAt, 0);
        _slowest = Math.Max(_slowest, took);
        if (took > target.MostSeconds)
        {
            Save("slow");
            return false;
        }

        if (coverage.IsNew())
            _kept.Add(_case);
        return true;
    }

    private void StopHanging()
    {
        var started = Volatile.Read(ref _startedAt);
        if (started == 0 || Stopwatch.GetElapsedTime(started).TotalSeconds < 2 * target.MostSeconds)
            return;
        Save("hangs");
        Environment.Exit(1);
    }

    private void Save(string why)
    {
        var file = Path.GetFullPath($"{target.Name}-{why}-{seed}.bin");
        File.WriteAllBytes(file, _case);
        Console.WriteLine($"{target.Name}: a case of {_case.Length} bytes {why}; saved as {file}");
    }

    private void Tell(long done, Stopwatch watch) => Console.WriteLine(FormattableString.Invariant(
        $"{target.Name}: {done} cases, {_kept.Count} kept, {coverage.Pairs} pairs of branches, slowest {1000 * _slowest:0} ms, {watch.Elapsed.TotalSeconds:0} s"));
}
