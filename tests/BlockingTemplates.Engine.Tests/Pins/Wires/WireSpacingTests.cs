using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Pins;
using BlockingTemplates.Engine.Pins.Wires;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Tests.Pins.Wires;

public class WireSpacingTests
{
    private const double Length = 1200;

    [Fact]
    public void A_very_stiff_wire_needs_marks_at_its_ends_only() =>
        Assert.Equal([0, Length], Spacing(1e12).Marks([(0, Length)], [])!);

    [Fact]
    public void A_limp_wire_saves_no_pin() => Assert.Null(Spacing(1).Marks([(0, Length)], []));

    [Fact]
    public void Inner_spans_of_a_straight_wire_are_as_long_as_a_built_in_beam_allows()
    {
        // Span whose built-in beam sags by the tolerance: s^4 = 384 EI f / q. Even spans may be a little shorter than that.
        const double ei = 47961, load = 0.02, tolerance = 5;
        var most = Math.Pow(384 * ei * tolerance / load, 0.25);
        var marks = Spacing(ei, load, tolerance, 6000).Marks([(0, 6000)], [])!;
        Assert.InRange(marks[11] - marks[10], 0.93 * most, 1.02 * most);
        Assert.True(marks[1] < 0.85 * (marks[11] - marks[10]), "the end span is shorter");
        Assert.InRange(new WireSag(Line(6000), ei, load).Worst(marks).Max(), 0.75 * tolerance, tolerance + 1e-6);
    }

    [Fact]
    public void The_count_is_the_least_of_all_even_ones()
    {
        // Slow and obvious: more and more even marks (end spans as planned) until the deepest sag is within the tolerance.
        foreach (var load in new[] { 0.005, 0.02, 0.06 })
        {
            var spacing = Spacing(47961, load, 5, 2000);
            var found = spacing.Marks([(0, 2000)], [])!;
            var fewest = Enumerable.Range(1, 100).First(n =>
            {
                double[] parts = [.. Enumerable.Range(0, n).Select(k => k == 0 || k == n - 1 ? Math.Pow(384 * 0.0065, -0.25) : 1)];
                double[] marks = [.. Enumerable.Range(0, n + 1).Select(k => 2000 * parts.Take(k).Sum() / parts.Sum())];
                return spacing.Sags[0].Worst(marks).Max(Math.Abs) <= 5;
            });
            Assert.Equal(fewest + 1, found.Count);
        }
    }

    [Fact]
    public void A_curve_asks_for_closer_marks_at_the_wires_ends_only()
    {
        var arc = CircularArc.Between(new(0, 0), new(900, 0), 150);
        var spacing = Spacing(47961, 0, 0.5, arc.Length, arc);
        var marks = spacing.Marks([(0, arc.Length)], [])!;
        Assert.True(spacing.Worst(marks, [(0, arc.Length)]).Max() <= 0.5 + 1e-6);
        Assert.True(marks.Count > 2);
    }

    private static StraightEdge Line(double length) => new(new(0, 0), new(length, 0));

    private static WireSpacing Spacing(double stiffness, double load = 0.02, double tolerance = 5, double length = Length, EdgeCurve? curve = null)
    {
        var line = curve ?? Line(length);
        // A ring whose edge 0 is the line.
        Point far = new(length / 2, 4000);
        var ring = new Outline([new("wired", line), new("a", new StraightEdge(line.End, far)), new("b", new StraightEdge(far, line.Start))], [new("1", false), new("2", false), new("3", false)]);
        var run = EdgeRun.Of(ring, _ => true, (0, 0))[0];
        return new([new(line, stiffness, load)], new(run, [.. ring.Edges.Select(e => new EdgePlan { Name = e.Name, Treatment = EdgeTreatment.Unsaid, FinishedMm = e.Curve.Length, PinnedMm = e.Curve.Length, SpacingMm = 50, SpacingRule = "" })], false), tolerance, 50);
    }
}
