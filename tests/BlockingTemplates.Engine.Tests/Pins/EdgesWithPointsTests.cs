using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Shapes;
using BlockingTemplates.Engine.Tests.Pieces;
using static BlockingTemplates.Engine.Tests.Pins.SaidEdges;

namespace BlockingTemplates.Engine.Tests.Pins;

// Edges with points or scallops.
public class EdgesWithPointsTests
{
    [Fact]
    public void An_edge_with_scallops_has_a_mark_at_each_tip_and_none_between()
    {
        var (piece, plan, _) = Planned(Rectangle(("right", Counted(120) with { Points = Ten })));
        var marks = On(plan, 1);
        Assert.Equal([0, .. Enumerable.Range(0, 10).Select(k => 6.0 + (12 * k))], marks.Select(m => m.Count!.Value));
        for (var k = 0; k < 10; k++)
        {
            // Tips 30 mm out of the right side at x 400, each over the middle of a tenth of its 1000 mm; unblocked 20 mm out of 350, over a tenth of 900 mm.
            Assert.InRange(marks[k + 1].At.DistanceTo(new(430, 50 + (100 * k))), 0, 1e-6);
            Assert.InRange((marks[k + 1].Outward - new Vector(1, 0)).Length, 0, 1e-9);
            Assert.Equal(45 + (90 * k), plan.Edges[1].OnTape(marks[k + 1].Fraction)!.Value, 6);
        }

        Assert.Equal(10 * CircularSegment.Arc(100, 30), piece.Finished.Edges[1].Curve.Length, 6);
        Assert.Equal(10 * CircularSegment.Arc(90, 20), piece.Unblocked!.Edges[1].Curve.Length, 6);
        Assert.Equal("a mark at each of its 10 scallops, valleys free; every 12th stitch, near both corners every 6th", plan.Edges[1].SpacingRule);
        Assert.Null(plan.Edges[1].MayDipMm);
    }

    [Fact]
    public void Pinned_valleys_have_a_mark_each()
    {
        var (_, plan, _) = Planned(Rectangle(("right", Counted(120) with { Points = Ten with { Valleys = Valleys.Pinned } })));
        Assert.Equal(Enumerable.Range(0, 20).Select(k => 6.0 * k), On(plan, 1).Select(m => m.Count!.Value));
        Assert.EndsWith("valleys pinned; every 6th stitch", plan.Edges[1].SpacingRule, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(Valleys.Free, 16)]
    [InlineData(Valleys.Pinned, 32)]
    public void A_round_piece_with_points_has_marks_at_its_smooth_corners_only_where_valleys_are_pinned(Valleys valleys, int pins)
    {
        var points = EdgeTreatment.Unsaid with { Points = new(8, Mm(25), Mm(20), PointShape.Point, valleys) };
        var request = Given.Request(new CirclePiece(), Given.Finished(("diameter", 400)), new() { Path = "piece.unblocked", Sizes = Given.Mm(("width", 370), ("height", 360)) });
        var (_, plan, _) = Planned(request with { Edges = new Dictionary<string, EdgeTreatment> { ["lower"] = points, ["top"] = points } });
        Assert.Equal(pins, plan.Marks.Count);
        // A regular polygon's corners: all tips as far from the middle.
        var tips = plan.Marks.Select(m => m.At.DistanceTo(plan.Mirror!.Centre)).Where(d => d > 200.01).ToList();
        Assert.Equal(16, tips.Count);
        Assert.InRange(tips.Max() - tips.Min(), 0, 1e-6);
    }

    [Theory]
    [InlineData(0, 0)]
    [InlineData(0.08, -0.02)]
    public void Tips_of_an_edge_of_changing_curve_meet_their_own_tips_and_stitches(double along, double across)
    {
        var said = Counted(140) with { Points = new(14, Mm(20), Mm(14)) };
        var request = Given.Request(
            new SleevePiece(), Given.Finished(("cuff", 240), ("upperArm", 360), ("length", 440), ("cap", 140)),
            new() { Path = "piece.unblocked", Sizes = Given.Mm(("cuff", 230), ("upperArm", 330), ("length", 400), ("cap", 90)) });
        var (piece, plan, _) = Planned(request with { Edges = new Dictionary<string, EdgeTreatment> { ["cap"] = said } }, springBack: new(along, across));
        var marks = On(plan, 2);
        Assert.Equal([0, .. Enumerable.Range(0, 14).Select(k => 5.0 + (10 * k))], marks.Select(m => m.Count!.Value));
        var unblocked = Assert.IsType<PointedEdge>(plan.LayLine!.Edges[2].Curve);
        var finished = Assert.IsType<PointedEdge>(piece.Finished.Edges[2].Curve);
        for (var k = 0; k < 14; k++)
        {
            Assert.InRange(marks[k + 1].Rest!.Value.DistanceTo(unblocked.At(unblocked.Places[(2 * k) + 1])), 0, 1e-6);
            var tip = finished.At(finished.Places[(2 * k) + 1]);
            Assert.InRange(marks[k + 1].At.DistanceTo(new(tip.X * (1 + along), tip.Y * (1 + across))), 0, 1e-6);
        }

        // The first case is why tips are matched: by arc length alone they would lie off.
        Assert.Contains(Enumerable.Range(0, 29), k => Math.Abs(finished.Places[k] - (k / 28.0)) > 1e-3);
    }

    [Theory]
    [InlineData("middle of top", 32)]
    [InlineData("top", 32)]
    [InlineData("right", 32)]
    public void An_anchor_in_a_pinned_valley_is_that_valleys_mark(string anchor, int pins)
    {
        var points = Counted(96) with { Points = new(8, Mm(25), Mm(20), PointShape.Point, Valleys.Pinned) };
        var request = Given.Request(new CirclePiece(), Given.Finished(("diameter", 400)), new() { Path = "piece.unblocked", Sizes = Given.Mm(("width", 370), ("height", 360)) });
        var (_, plan, _) = Planned(request with { Edges = new Dictionary<string, EdgeTreatment> { ["lower"] = points, ["top"] = points } }, anchor);
        Assert.Equal(pins, plan.Marks.Count);
        Assert.Equal(pins, plan.Marks.Select(m => (Math.Round(m.At.X, 3), Math.Round(m.At.Y, 3))).Distinct().Count());
    }

    [Fact]
    public void Points_whose_unblocked_depth_is_not_said_are_taken_in_the_measure_of_the_edge_with_a_note()
    {
        var (piece, _, findings) = Planned(Rectangle(("right", EdgeTreatment.Unsaid with { Points = Ten with { UnblockedDepth = null } })));
        var note = Assert.Single(findings.Notes, n => n.Place == "piece.edges.right.points");
        Assert.Contains("2.7 cm is taken", note.What, StringComparison.Ordinal);
        Assert.Equal(10 * CircularSegment.Arc(90, 27), piece.Unblocked!.Edges[1].Curve.Length, 6);
    }

    [Fact]
    public void A_count_that_does_not_divide_over_the_points_is_noted()
    {
        var (_, plan, findings) = Planned(Rectangle(("right", Counted(125) with { Points = Ten })));
        Assert.Contains(findings.Notes, n => n.Place == "piece.edges.right.count" && n.What.Contains("125", StringComparison.Ordinal));
        Assert.All(On(plan, 1).Skip(1), m => Assert.Equal(430, m.At.X, 6));
    }

    [Fact]
    public void Scallops_past_the_half_circle_are_a_problem_with_the_greatest_depth()
    {
        var problem = Assert.Single(Given.Problems(Rectangle(("right", EdgeTreatment.Unsaid with { Points = Ten with { Depth = Mm(60) } }))));
        Assert.Equal("piece.edges.right.points.depth", problem.Path);
        Assert.Contains("5.0 cm", problem.Do, StringComparison.Ordinal);
        var unblocked = Assert.Single(Given.Problems(Rectangle(("right", EdgeTreatment.Unsaid with { Points = Ten with { UnblockedDepth = Mm(60) } }))));
        Assert.Equal("piece.edges.right.points.unblockedDepth", unblocked.Path);
        Assert.Contains("4.5 cm", unblocked.Do, StringComparison.Ordinal);
    }

    [Fact]
    public void Points_that_run_into_each_other_are_a_problem()
    {
        // On an edge that curves inward deep points fan together.
        var request = Given.Request(new RectanglePiece(), Given.Finished(("width", 400), ("length", 1000)) with { Bows = Given.Mm(("right", -150)) }, null);
        var problem = Assert.Single(Given.Problems(request with { Edges = new Dictionary<string, EdgeTreatment> { ["right"] = EdgeTreatment.Unsaid with { Points = new(4, Mm(950)) } } }));
        Assert.Equal("piece.edges.right.points", problem.Path);
        Assert.Contains("the finished outline crosses or touches itself", problem.What, StringComparison.Ordinal);
    }
}
