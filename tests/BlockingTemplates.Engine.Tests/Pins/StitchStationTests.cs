using BlockingTemplates.Engine.Tests.Pieces;
using static BlockingTemplates.Engine.Tests.Pins.SaidEdges;

namespace BlockingTemplates.Engine.Tests.Pins;

// Edges with stitches whose place is known.
public class StitchStationTests
{
    [Fact]
    public void Stations_move_the_edge_points_and_their_stretch_but_not_the_marks()
    {
        var even = Planned(Rectangle(("right", Counted(100)), ("left", Counted(100))));
        var (_, plan, _) = Planned(Rectangle(
            ("right", Counted(100) with { Stations = [new(40, Mm(270), null)] }),
            ("left", Counted(100) with { Stations = [new(60, Mm(630), null)] })));
        Assert.NotNull(plan.Mirror);
        Assert.Equal(On(even.Plan, 1).Select(m => m.Fraction), On(plan, 1).Select(m => m.Fraction), (a, b) => Math.Abs(a - b) < 1e-12);
        foreach (var mark in On(plan, 1))
        {
            // Piecewise linear: stitch 40 of 100 at 270 of 900 mm, so 6.75 mm a stitch before it and 10.5 mm after.
            var k = mark.Count!.Value;
            var along = k <= 40 ? 6.75 * k : 270 + (10.5 * (k - 40));
            Assert.Equal(along, plan.Edges[1].OnTape(mark.Fraction)!.Value, 6);
            Assert.Equal(along / 900, mark.RestFraction, 9);
            Assert.InRange(mark.Rest!.Value.DistanceTo(plan.LayLine!.Edges[1].Curve.At(along / 900)), 0, 1e-9);
        }
    }

    [Fact]
    public void A_stitch_that_shall_lie_somewhere_on_the_finished_edge_takes_its_neighbours_along()
    {
        var (_, plan, _) = Planned(Rectangle(("right", Counted(100) with { Every = 10, Stations = [new(40, null, Mm(500))] })));
        var marks = On(plan, 1);
        Assert.Equal(Enumerable.Range(0, 10).Select(k => k <= 4 ? 125.0 * k : 500 + (500.0 / 6 * (k - 4))), marks.Select(m => m.At.Y - marks[0].At.Y), (a, b) => Math.Abs(a - b) < 1e-6);
        Assert.All(marks, m => Assert.Equal(m.Count!.Value / 100, m.RestFraction, 9));
        Assert.Null(plan.Mirror);
    }

    [Fact]
    public void The_middle_of_an_edge_is_its_middle_stitch()
    {
        var (_, plan, _) = Planned(Rectangle(("right", Counted(100) with { Stations = [new(40, null, Mm(500))] })), "middle of right");
        var anchor = Assert.Single(plan.Marks, m => m.IsAnchor);
        Assert.Equal(50, anchor.Count);
        Assert.Equal(500 + (500.0 / 6), anchor.Fraction * 1000, 6);
        Assert.InRange(anchor.Pull!.Value.Length, 0, 1e-9);
    }

    [Fact]
    public void Stations_beyond_the_edge_are_problems_of_their_own()
    {
        var problems = Given.Problems(Rectangle(("right", Counted(100) with { Stations = [new(40, Mm(950), null), new(60, null, Mm(1000))] })));
        Assert.Equal(["piece.edges.right.stations[0].at", "piece.edges.right.stations[1].finished"], problems.Select(p => p.Path));
        Assert.Contains("Stitch 40 of the right edge stands at 95.0 cm, but the unblocked edge is 90.0 cm long.", problems[0].What, StringComparison.Ordinal);
        Assert.Contains("the finished edge is 100.0 cm long.", problems[1].What, StringComparison.Ordinal);
    }

    [Fact]
    public void Measured_stitches_of_a_piece_that_was_not_measured_are_noted()
    {
        var (_, plan, findings) = Planned(Rectangle(("right", Counted(100) with { Stations = [new(40, Mm(270), null)] })) with { Unblocked = null });
        Assert.Contains(findings.Notes, n => n.Place == "piece.edges.right.stations" && n.What.Contains("left out", StringComparison.Ordinal));
        Assert.True(plan.Edges[1].Match.IsEven);
    }
}
