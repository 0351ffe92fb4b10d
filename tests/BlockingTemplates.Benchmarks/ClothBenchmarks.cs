using BenchmarkDotNet.Attributes;
using BlockingTemplates.Drawing.Guides;
using BlockingTemplates.Engine;
using BlockingTemplates.Engine.Fabrics;
using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Projects;

namespace BlockingTemplates.Benchmarks;

/// <summary>The demo's plan with and without the cloth.</summary>
[MemoryDiagnoser]
public class ClothBenchmarks
{
    private readonly Project _demo = Projects.Demo();

    /// <summary>By geometry alone.</summary>
    [Benchmark(Baseline = true)]
    public int Geometry() => Planned(Computation.GeometryOnly);

    /// <summary>The first full answer: spacing, pulls in turn, anchor.</summary>
    [Benchmark]
    public int FirstAnswer() => Planned(new() { WithEnds = false });

    /// <summary>The soft and the stiff end too.</summary>
    [Benchmark]
    public int WithEnds() => Planned(Computation.Whole);

    private int Planned(Computation computation) =>
        Planner.Plan(_demo, NumberPicture.Style, new Findings(_demo.Units), computation)!.Pins.Marks.Count;
}
