using BenchmarkDotNet.Attributes;

namespace BlockingTemplates.Benchmarks;

/// <summary>The linear solve beside CHOLMOD with OpenBLAS: ordering, analysis, factor and solve together. Where CHOLMOD is absent its rows fail with a word.</summary>
[ShortRunJob, MemoryDiagnoser]
public class SolveBenchmarks
{
    private PulledCloth _cloth = null!;

    /// <summary>Unknowns, about.</summary>
    [Params(5_000, 18_000, 46_000, 91_000)]
    public int Unknowns { get; set; }

    /// <summary>Threads: one, or all cores.</summary>
    [ParamsSource(nameof(ThreadCounts))]
    public int Threads { get; set; }

    public static IEnumerable<int> ThreadCounts => new[] { 1, Environment.ProcessorCount }.Distinct();

    [GlobalSetup]
    public void Pull() => _cloth = new PulledCloth(Unknowns);

    [GlobalSetup(Targets = [nameof(CholmodAmd), nameof(CholmodMetis), nameof(CholmodNesdis)])]
    public void PullForCholmod()
    {
        Pull();
        if (Cholmod.Absence() is { } why)
            throw new PlatformNotSupportedException(why);
    }

    [Benchmark(Baseline = true)]
    public double[] Ours() => SolveTable.Ours(_cloth, Threads);

    [Benchmark]
    public double[] CholmodAmd() => Cholmod.Solve(_cloth, CholmodOrdering.Amd, Threads).Solution;

    [Benchmark]
    public double[] CholmodMetis() => Cholmod.Solve(_cloth, CholmodOrdering.Metis, Threads).Solution;

    [Benchmark]
    public double[] CholmodNesdis() => Cholmod.Solve(_cloth, CholmodOrdering.Nesdis, Threads).Solution;
}
