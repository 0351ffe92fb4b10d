using System.Diagnostics;
using System.Globalization;
using BlockingTemplates.Engine.Fabrics;

namespace BlockingTemplates.Benchmarks;

/// <summary>The linear solve beside CHOLMOD: ordering, analysis, factor and solve together, in alternating runs; medians of wall-clock times, told as ratios.</summary>
internal static class SolveTable
{
    private static readonly CholmodOrdering[] Orderings = [CholmodOrdering.Amd, CholmodOrdering.Metis, CholmodOrdering.Nesdis];

    /// <summary>Unknowns, about.</summary>
    public static IReadOnlyList<int> Sizes { get; } = [5_000, 18_000, 46_000, 91_000];

    public static int Run(int runs)
    {
        var absent = Cholmod.Absence();
        Tell((FormattableString)$"linear solve of a pulled triangle, {Environment.ProcessorCount} cores, medians of {runs} or more alternating runs, wall clock: ordering, analysis, factor and solve together");
        if (absent is not null)
            Tell((FormattableString)$"  without comparison: {absent}");
        int[] threads = [.. new[] { 1, Environment.ProcessorCount }.Distinct()];
        var ours = threads.ToDictionary(t => t, _ => new List<(int Unknowns, double Time)>());
        foreach (var size in Sizes)
        {
            var cloth = new PulledCloth(size);
            foreach (var count in threads)
                ours[count].Add((cloth.Unknowns, Compare(cloth, count, absent is null, Math.Max(runs, runs * 46_000 / size))));
        }

        foreach (var (count, times) in ours)
            Tell((FormattableString)$"  our cost with {Threads(count)} grows as n^{Exponent(times):0.00} from {times[0].Unknowns} to {times[^1].Unknowns} unknowns (fastest runs, least squares through all sizes)");
        return 0;
    }

    /// <summary>Our whole solve.</summary>
    public static double[] Ours(PulledCloth cloth, int threads)
    {
        using var factor = new FrontalCholesky(cloth.Matrix.Pattern, cloth.Nodes, threads);
        return factor.Factor(cloth.Matrix) ? factor.Solve(cloth.Right) : throw new InvalidOperationException("The matrix is not positive definite.");
    }

    /// <summary>Tells medians; gives the time of our fastest run, which other work on the machine disturbs least.</summary>
    private static double Compare(PulledCloth cloth, int threads, bool beside, int runs)
    {
        List<(string Name, Func<double[]> Solve)> ways = [("ours", () => Ours(cloth, threads))];
        var memory = new Dictionary<string, long>();
        if (beside)
        {
            ways.AddRange(Orderings.Select(o => ($"{o}", (Func<double[]>)(() =>
            {
                var (solution, most) = Cholmod.Solve(cloth, o, threads);
                memory[$"{o}"] = most;
                return solution;
            }))));
        }

        var times = ways.ToDictionary(w => w.Name, _ => new List<double>());
        var residuals = new Dictionary<string, double>();
        Warm(ways[0].Solve);
        memory["ours"] = Held(cloth, threads);
        for (var run = -1; run < runs; run++)
        {
            foreach (var (name, solve) in ways)
            {
                var started = Stopwatch.GetTimestamp();
                var solution = solve();
                var took = Stopwatch.GetElapsedTime(started).TotalMilliseconds;
                residuals[name] = cloth.Residual(solution);
                if (run >= 0)
                    times[name].Add(took);
            }
        }

        var ours = Median(times["ours"]);
        Tell((FormattableString)$"  {cloth.Unknowns,6} unknowns, {Threads(threads)}: ours {ours:0.0} ms ({memory["ours"] / 1e6:0} MB asked for in all, residual {residuals["ours"]:0e0})");
        if (!beside)
            return times["ours"].Min();
        var best = Orderings.MinBy(o => Median(times[$"{o}"]));
        Tell((FormattableString)$"      CHOLMOD {string.Join(", ", Orderings.Select(o => string.Create(CultureInfo.InvariantCulture, $"{o} {Median(times[$"{o}"]):0.0} ms")))}; at its best, {best}: time x {ours / Median(times[$"{best}"]):0.00}, its most memory {memory[$"{best}"] / 1e6:0} MB, residual {residuals[$"{best}"]:0e0}");
        return times["ours"].Min();
    }

    /// <summary>Bytes that a whole solve asks for, as if none were at hand from before: more than it holds at any one time.</summary>
    private static long Held(PulledCloth cloth, int threads)
    {
        var before = GC.GetTotalAllocatedBytes(precise: true);
        Ours(cloth, threads);
        var structure = GC.GetTotalAllocatedBytes(precise: true) - before;
        using var factor = new FrontalCholesky(cloth.Matrix.Pattern, cloth.Nodes, threads);
        return structure + (sizeof(double) * factor.Room);
    }

    private static string Threads(int count) => count == 1 ? "1 thread" : string.Create(CultureInfo.InvariantCulture, $"{count} threads");

    /// <summary>Slope of the straight line through logarithms.</summary>
    private static double Exponent(List<(int Unknowns, double Time)> times)
    {
        var (x, y) = (times.Average(t => Math.Log(t.Unknowns)), times.Average(t => Math.Log(t.Time)));
        return times.Sum(t => (Math.Log(t.Unknowns) - x) * (Math.Log(t.Time) - y)) / times.Sum(t => Math.Pow(Math.Log(t.Unknowns) - x, 2));
    }

    /// <summary>Until the runtime has compiled what runs often.</summary>
    private static void Warm(Func<double[]> solve)
    {
        var started = Stopwatch.GetTimestamp();
        for (var calls = 0; calls < 40 || Stopwatch.GetElapsedTime(started).TotalSeconds < 1; calls++)
        {
            solve();
            if (Stopwatch.GetElapsedTime(started).TotalSeconds > 4)
                break;
        }
    }

    private static double Median(List<double> times) => times.Order().ElementAt(times.Count / 2);

    private static void Tell(FormattableString line) => Console.WriteLine(line.ToString(CultureInfo.InvariantCulture));
}
