using BenchmarkDotNet.Attributes;
using BlockingTemplates.Engine.Mats;
using BlockingTemplates.Engine.Pins;
using BlockingTemplates.Engine.Projects;
using BlockingTemplates.Engine.Shapes;
using BlockingTemplates.Engine.Sheets;
using BlockingTemplates.Engine.Tests.Shapes;

namespace BlockingTemplates.Benchmarks;

/// <summary>The demo's mats and sheets over every shift of 1 mm, beside the slow counter on one shift in <see cref="Every"/> squared.</summary>
[ShortRunJob]
public class SearchBenchmarks
{
    /// <summary>Steps of the slow counter along x and y, in millimetres; 1 tries every shift.</summary>
    public static int Every { get; set; } = 23;

    private static readonly bool[] BothWays = [false, true];
    private readonly Project _project = Projects.Demo();
    private readonly PinPlan _pins;

    public SearchBenchmarks() => _pins = Projects.Pins(_project);

    private double Border => _project.Mats.Border.Millimetres;

    [Benchmark]
    public int Mats() => MatField.Plan(_pins, _project.Mats).Layout.Mats.Count;

    [Benchmark]
    public int Sheets() => Grid().Least;

    /// <summary>Fewest mats that the slow counter finds with the sides upright.</summary>
    [Benchmark]
    public int SlowMats()
    {
        var ring = _pins.Pinned.Ring();
        var (box, region) = (Box.Around(ring).Grown(Border), SlowCounts.Polygon(ring));
        var (w, h) = (_project.Mats.Width.Millimetres, _project.Mats.Height.Millimetres);
        return Shifts(w, h).Min(s => SlowCounts.Met(region, Border, new(box.Left + s.X, box.Lower + s.Y), w, h).Count());
    }

    /// <summary>Fewest sheets that the slow counter finds.</summary>
    [Benchmark(Baseline = true)]
    public int SlowSheets()
    {
        var ring = _pins.Pinned.Ring();
        Point[] marks = [.. _pins.Marks.Select(m => m.At)];
        var box = Box.Around(ring);
        return BothWays.Min(landscape =>
        {
            var (w, h) = PageGrid.Pitch(_project.Sheets.Papers[0], landscape, _project.Sheets.Margin, _project.Sheets.Overlap);
            return Shifts(w, h).Min(s => SlowCounts.Held(ring, marks, new(box.Left + s.X, box.Lower + s.Y), w, h).Count);
        });
    }

    /// <summary>Whether the slow counter counts the same at the way chosen, and no fewer at any way it tries.</summary>
    public bool Agrees()
    {
        var field = MatField.Plan(_pins, _project.Mats);
        var ring = field.Pins.Pinned.Ring();
        var chosen = SlowCounts.Met(SlowCounts.Polygon(ring), Border, Point.Origin, field.Layout.PitchX, field.Layout.PitchY).Count();
        var grid = Grid();
        var layout = grid.Layout(grid.Tied[0]);
        var window = layout.Sheets[0].Window;
        var held = SlowCounts.Held(_pins.Pinned.Ring(), [.. _pins.Marks.Select(m => m.At)], new(window.Left, window.Lower), layout.PitchX, layout.PitchY).Count;
        return chosen == field.Layout.Mats.Count && SlowMats() >= chosen && held == grid.Least && SlowSheets() >= held;
    }

    private PageGrid Grid() => PageGrid.Search(
        _project.Sheets.Papers[0], _project.Sheets.Margin, _project.Sheets.Overlap, _pins.Pinned.Ring(), [.. _pins.Marks.Select(m => m.At)]);

    private static IEnumerable<(int X, int Y)> Shifts(double w, double h) =>
        from x in Enumerable.Range(0, (int)Math.Ceiling(w))
        where x % Every == 0
        from y in Enumerable.Range(0, (int)Math.Ceiling(h))
        where y % Every == 0
        select (x, y);
}
