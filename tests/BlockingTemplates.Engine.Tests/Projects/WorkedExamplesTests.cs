using System.Globalization;
using BlockingTemplates.Engine.Fabrics;
using BlockingTemplates.Engine.Pins;
using BlockingTemplates.Engine.Sheets;

namespace BlockingTemplates.Engine.Tests.Projects;

// The figures of shared/examples/README.md, worked out a second time by school formulas and compared with page and plan.
public class WorkedExamplesTests
{
    private static readonly NumberStyle Style = new(text => 0.85 * text.Length);

    private static readonly string[] Page = File.ReadAllLines(Path.Combine(Reading.Shared, "examples", "README.md"));

    private static IReadOnlyList<Plan> Planned(string example)
    {
        var reading = Reading.Reader.Read(File.ReadAllBytes(Path.Combine(Reading.Shared, "examples", example)));
        var file = PartsPlanner.Plan(reading, (project, mirrorOf, findings) => Planner.Plan(project, Style, findings, Computation.GeometryOnly, mirrorOf));
        Assert.Empty(file.Findings.Problems);
        return [.. file.Parts.Select(p => p.Plan)];
    }

    /// <summary>The cells of a row of the page, by how it begins under a heading.</summary>
    private static string[] Row(string heading, string begins)
    {
        var section = Page.SkipWhile(l => l != "## " + heading).Skip(1).TakeWhile(l => !l.StartsWith("## ", StringComparison.Ordinal));
        var row = Assert.Single(section, l => l.StartsWith($"| {begins}", StringComparison.Ordinal));
        return [.. row.Trim('|', ' ').Split('|').Skip(1).Select(c => c.Trim())];
    }

    private static void Says(string heading, string begins, params double[] figures) =>
        Assert.Equal(figures.Select(f => f.ToString("0.0", CultureInfo.InvariantCulture)), Row(heading, begins));

    private static bool Holds(string words) => string.Join(" ", Page).Contains(words, StringComparison.Ordinal);

    private static EdgePlan Edge(Plan plan, string name) => plan.Pins.Edges.Single(e => e.Name == name);

    private static double Arc(double chord, double height) =>
        ((chord * chord) + (4 * height * height)) / (8 * height) * 4 * Math.Atan(2 * height / chord);

    /// <summary>Length of a curve by its speed from parameter 0 to 1, by Simpson's rule.</summary>
    private static double Length(Func<double, double> speed)
    {
        const int parts = 4000;
        return Enumerable.Range(0, parts + 1).Sum(i => (i is 0 or parts ? 1 : i % 2 == 1 ? 4 : 2) * speed((double)i / parts)) / (3 * parts);
    }

    private static double QuarterEllipse(double a, double b) =>
        Length(t => Math.PI / 2 * Math.Sqrt(Math.Pow(a * Math.Sin(Math.PI / 2 * t), 2) + Math.Pow(b * Math.Cos(Math.PI / 2 * t), 2)));

    private static double Armhole(double inset, double height) => QuarterEllipse(inset, height / 2) + (height / 2);

    /// <summary>Half a cap: a cubic with its handles half the width long, level at both ends.</summary>
    private static double HalfCap(double width, double height) => Length(t =>
    {
        double s = 1 - t, x = 3 * ((s * s * width / 2) + (t * t * width / 2)), y = 6 * s * t * height;
        return Math.Sqrt((x * x) + (y * y));
    });

    [Fact]
    public void The_scalloped_edge()
    {
        const string heading = "A scalloped edge";
        double side = Math.Sqrt((70 * 70) + (66 * 66)), unblocked = Arc(84, 4);
        Says(heading, "over the valleys, finished", side);
        Says(heading, "width of one scallop", side / 10);
        Says(heading, "one scallop along its arc", Arc(side / 10, 3));
        Says(heading, "along all ten", 10 * Arc(side / 10, 3));
        Says(heading, "over the valleys, unblocked", unblocked);
        Says(heading, "first tip on the edge strip", unblocked / 20);

        var plan = Assert.Single(Planned("scalloped-shawl.jsonc"));
        foreach (var edge in new[] { Edge(plan, "right"), Edge(plan, "left") })
        {
            Assert.Equal(100 * Arc(side / 10, 3), edge.FinishedMm, 6);
            Assert.Equal(102 * Arc(side / 10, 3), edge.PinnedMm, 6);
            Assert.Equal(10 * unblocked, edge.TapeMm!.Value, 6);
            Assert.True(Holds("every 12th stitch, near both corners every 6th") && edge.SpacingRule.Contains("every 12th stitch, near both corners every 6th", StringComparison.Ordinal));
            var marks = plan.Pins.Marks.Where(m => plan.Pins.Edges[m.Edge] == edge && !m.IsCorner).OrderBy(m => m.Count).ToList();
            Assert.Equal(Enumerable.Range(0, 10).Select(k => 6.0 + (12 * k)), marks.Select(m => m.Count!.Value));
            Assert.Equal(unblocked / 2, edge.OnTape(marks[0].Fraction)!.Value, 6);
        }

        Assert.True(Holds($"make {3 + 20 + 29} pins"));
        Assert.Equal(3 + 20 + 29, plan.Pins.Marks.Count);
    }

    [Fact]
    public void The_panel_with_neckline_and_armholes()
    {
        const string heading = "A garment panel with neckline and armholes";
        var plan = Assert.Single(Planned("sweater-front.jsonc"));
        void Line(string row, string edge, double finished, double unblocked)
        {
            Says(heading, row, finished, unblocked, 100 * ((finished / unblocked) - 1));
            Assert.Equal(10 * finished, Edge(plan, edge).FinishedMm, 3);
            Assert.Equal(10 * unblocked, Edge(plan, edge).UnblockedMm!.Value, 3);
            Assert.Equal((finished / unblocked) - 1, Edge(plan, edge).Stretch!.Value, 5);
        }

        Line("hem", "hem", 50, 49);
        Line("side", "right side", Math.Sqrt(1 + (37 * 37)), Arc(Math.Sqrt((0.5 * 0.5) + (35 * 35)), 0.5));
        Line("armhole", "right armhole", Armhole(6, 20), Armhole(5.75, 19));
        Line("shoulder", "left shoulder", Math.Sqrt((11 * 11) + 9), Math.Sqrt((10.5 * 10.5) + 9));
        Line("neckline", "neckline", 2 * QuarterEllipse(9, 8), 2 * QuarterEllipse(8.75, 7.5));
    }

    [Fact]
    public void The_pair_of_sleeves()
    {
        const string heading = "A pair of sleeves";
        var plans = Planned("two-sleeves.jsonc");
        Assert.Equal(["right sleeve", "left sleeve"], plans.Select(p => p.Project.PieceName));
        foreach (var plan in plans)
        {
            void Line(string row, string edge, double finished, double unblocked)
            {
                Says(heading, row, finished, unblocked);
                Assert.Equal(10 * finished, Edge(plan, edge).FinishedMm, 3);
                Assert.Equal(10 * unblocked, Edge(plan, edge).UnblockedMm!.Value, 3);
            }

            Line("cuff", "cuff", 22, 21.5);
            Line("side", "left side", Math.Sqrt(36 + (42 * 42)), Arc(Math.Sqrt((5.5 * 5.5) + (40 * 40)), 0.4));
            Line("cap", "cap", 2 * HalfCap(17, 13), 2 * HalfCap(16.25, 12));
            Assert.Equal([6, 12, 18, 24, 30, 36, 42], plan.Pins.Marks.Where(m => plan.Pins.Edges[m.Edge].Name == "cuff" && !m.IsCorner).Select(m => m.Count!.Value).Order());
        }
    }

    [Fact]
    public void The_three_sizes()
    {
        const string heading = "Three sizes";
        var plans = Planned("sweater-back-sizes.jsonc");
        Assert.Equal(["S", "M", "L"], Row(heading, "size"));
        double[] chest = [50, 55, 60], length = [60, 62, 64], armhole = [20, 21.5, 23], shoulders = [38, 40, 42], neck = [18, 19, 20];
        double[] chestNow = [48.5, 53.5, 58], lengthNow = [57, 59, 61], armholeNow = [19, 20.5, 22];
        int[] all = [0, 1, 2];
        double[] side = [.. all.Select(i => length[i] - armhole[i] - 3)], sideNow = [.. all.Select(i => Arc(lengthNow[i] - armholeNow[i] - 3, 0.5))];
        void Line(string row, double[] figures, Func<Plan, double> planned)
        {
            Says(heading, row, figures);
            foreach (var i in all)
                Assert.Equal(figures[i], planned(plans[i]), 4);
        }

        Line("finished chest", chest, p => p.Project.Finished.Sizes["chest"].Millimetres / 10);
        Line("finished length", length, p => p.Project.Finished.Sizes["length"].Millimetres / 10);
        Line("right side edge, finished", side, p => Edge(p, "right side").FinishedMm / 10);
        Line("right armhole edge, finished", [.. all.Select(i => Armhole((chest[i] - shoulders[i]) / 2, armhole[i]))], p => Edge(p, "right armhole").FinishedMm / 10);
        Line("neckline edge, finished", [.. all.Select(i => 2 * QuarterEllipse(neck[i] / 2, 3))], p => Edge(p, "neckline").FinishedMm / 10);
        Line("right side edge, stretch", [.. all.Select(i => 100 * ((side[i] / sideNow[i]) - 1))], p => 100 * Edge(p, "right side").Stretch!.Value);
        Line("hem edge, stretch", [.. all.Select(i => 100 * ((chest[i] / chestNow[i]) - 1))], p => 100 * Edge(p, "hem").Stretch!.Value);
        Assert.True(Holds("10, 11 and 12 marks between its corners"));
        Assert.Equal([10, 11, 12], plans.Select(p => p.Pins.Marks.Count(m => p.Pins.Edges[m.Edge].Name == "hem" && !m.IsCorner)));
    }
}
