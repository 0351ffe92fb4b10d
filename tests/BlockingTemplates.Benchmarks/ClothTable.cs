using System.Diagnostics;
using System.Globalization;
using BlockingTemplates.Drawing.Guides;
using BlockingTemplates.Engine;
using BlockingTemplates.Engine.Measure;

namespace BlockingTemplates.Benchmarks;

/// <summary>The demo's cloth by stopwatch, warm, and how the cost grows with the stitches.</summary>
internal static class ClothTable
{
    public static int Run()
    {
        var bench = new ClothBenchmarks();
        var (geometry, first, all) = (Median(bench.Geometry), Median(bench.FirstAnswer), Median(bench.WithEnds));
        Tell($"demo, warm: geometry {geometry:0} ms, first full answer {first:0} ms, with the soft and the stiff end {all:0} ms (x {all / first:0.0}); most memory {Process.GetCurrentProcess().PeakWorkingSet64 / 1e6:0} MB");
        (double Nodes, double Ms)? before = null;
        foreach (var finer in new[] { 1, 2, 4 })
        {
            var demo = Projects.Demo();
            var finerDemo = demo with
            {
                Edges = demo.Edges.ToDictionary(e => e.Key, e => e.Value with { Count = e.Value.Count * finer }),
                Fabric = demo.Fabric with { Stitch = demo.Fabric.Stitch is var (along, across) ? (Length.FromMillimetres(along.Millimetres / finer), Length.FromMillimetres(across.Millimetres / finer)) : null },
            };
            var nodes = 0;
            var ms = Median(() => nodes = Planner.Plan(finerDemo, NumberPicture.Style, new Findings(demo.Units), new() { WithEnds = false })!.Cloth!.Nodes);
            Tell($"  {nodes,6} nodes {ms,6:0} ms{(before is { } b ? $", growing as n^{Math.Log(ms / b.Ms) / Math.Log(nodes / b.Nodes):0.00}" : "")}");
            before = (nodes, ms);
        }

        Tell($"most memory {Process.GetCurrentProcess().PeakWorkingSet64 / 1e6:0} MB");
        return 0;
    }

    private static double Median(Func<int> run)
    {
        run();
        run();
        List<double> took = [];
        for (var i = 0; i < 5; i++)
        {
            var started = Stopwatch.GetTimestamp();
            run();
            took.Add(Stopwatch.GetElapsedTime(started).TotalMilliseconds);
        }

        took.Sort();
        return took[2];
    }

    private static void Tell(FormattableString text) => Console.WriteLine(text.ToString(CultureInfo.InvariantCulture));
}
