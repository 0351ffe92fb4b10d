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
        Tell((FormattableString)$"linear solve of a pulled triangle, {Environment.ProcessorCount} cores, medians of {runs} alternating runs in ms: ordering, analysis, factor and solve together");
        if (absent is not null)
            Tell((FormattableString)$"  without comparison: {absent}");
        var one = new List<(int Unknowns, double Time)>();
        foreach (var size in Sizes)
        {
            var cloth = new PulledCloth(size);
            one.Add((cloth.Unknowns, Compare(cloth, 1, absent is null, runs)));
            if (Environment.ProcessorCount > 1)
                Compare(cloth, Environment.ProcessorCount, absent is null, runs);
        }

        var (small, large) = (one[0], one[^1]);
        Tell((FormattableString)$"  our cost with one thread grows as n^{Math.Log(large.Time / small.Time) / Math.Log((double)large.Unknowns / small.Unknowns):0.00} from {small.Unknowns} to {large.Unknowns} unknowns");
        return 0;
    }

    /// <summary>Our whole solve.</summary>
    public static double[] Ours(PulledCloth cloth, int threads)
    {
        var factor = new FrontalCholesky(cloth.Matrix.Pattern, cloth.Nodes, threads);
        return factor.Factor(cloth.Matrix) ? factor.Solve(cloth.Right) : throw new InvalidOperationException("The matrix is not positive definite.");
    }

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
        for (var run = -1; run < runs; run++)
        {
            foreach (var (name, solve) in ways)
            {
                GC.Collect();
                var before = GC.GetTotalAllocatedBytes(precise: true);
                var started = Stopwatch.GetTimestamp();
                var solution = solve();
                var took = Stopwatch.GetElapsedTime(started).TotalMilliseconds;
                memory.TryAdd(name, GC.GetTotalAllocatedBytes(precise: true) - before);
                residuals[name] = cloth.Residual(solution);
                if (run >= 0)
                    times[name].Add(took);
            }
        }

        var ours = Median(times["ours"]);
        Tell((FormattableString)$"  {cloth.Unknowns,6} unknowns, {threads} thread{(threads > 1 ? "s" : "")}: ours {ours:0.0} ms ({memory["ours"] / 1e6:0} MB allocated in all, residual {residuals["ours"]:0e0})");
        if (!beside)
            return ours;
        var best = Orderings.MinBy(o => Median(times[$"{o}"]));
        Tell((FormattableString)$"      CHOLMOD {string.Join(", ", Orderings.Select(o => string.Create(CultureInfo.InvariantCulture, $"{o} {Median(times[$"{o}"]):0.0} ms")))}; at its best, {best}: time x {ours / Median(times[$"{best}"]):0.00}, its most memory {memory[$"{best}"] / 1e6:0} MB, residual {residuals[$"{best}"]:0e0}");
        return ours;
    }

    private static double Median(List<double> times) => times.Order().ElementAt(times.Count / 2);

    private static void Tell(FormattableString line) => Console.WriteLine(line.ToString(CultureInfo.InvariantCulture));
}
