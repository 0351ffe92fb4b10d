using BlockingTemplates.Engine.Fabrics;
using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Pins;
using BlockingTemplates.Engine.Shapes;
using BlockingTemplates.Engine.Tests.Pieces;

namespace BlockingTemplates.Engine.Tests.Pins;

// Edges with points, with a mark at every so many stitches, and with stitches whose place is known.
public class SaidEdgesTests
{
    private static readonly EdgePoints Ten = new(10, Mm(30), Mm(20), PointShape.Scallop);

    private static Length Mm(double value) => Length.FromMillimetres(value);

    private static EdgeTreatment Counted(int count) => EdgeTreatment.Unsaid with { Count = count };

    private static (Piece Piece, PinPlan Plan, Findings Findings) Planned(PieceRequest request, string anchor = "none", SpringBack? springBack = null)
    {
        var findings = new Findings(LengthUnit.Centimetres);
        var piece = Given.Made(request with { Fabric = FabricSettings.Unsaid with { SpringBack = springBack ?? new(0, 0) } }, findings);
        var plan = PinPlanner.Plan(piece, PinSettings.Default with { Anchor = anchor }, findings);
        return (piece, Assert.IsType<PinPlan>(plan), findings);
    }

    private static PieceRequest Rectangle(params (string Name, EdgeTreatment Said)[] edges) =>
        Given.Request(new RectanglePiece(), Given.Finished(("width", 400), ("length", 1000)), Given.Unblocked(("lower", 350), ("right", 900), ("top", 350), ("left", 900)))
            with
        { Edges = edges.ToDictionary(e => e.Name, e => e.Said) };

    private static List<Mark> On(PinPlan plan, int edge) => [.. plan.Marks.Where(m => m.Edge == edge).OrderBy(m => m.Fraction)];

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
    public void Marks_at_every_eighth_stitch_stand_there_whatever_the_spacing()
    {
        var (_, plan, _) = Planned(Rectangle(("right", Counted(160) with { Every = 8 })));
        Assert.Equal(Enumerable.Range(0, 20).Select(k => 8.0 * k), On(plan, 1).Select(m => m.Count!.Value));
        Assert.Equal("as asked; every 8th stitch", plan.Edges[1].SpacingRule);
    }

    [Fact]
    public void An_anchored_edge_with_set_places_gets_no_mark_between_them()
    {
        var (_, plan, _) = Planned(Rectangle(("lower", Counted(110) with { Every = 10 })), "lower");
        Assert.Equal(Enumerable.Range(0, 11).Select(k => 10.0 * k), On(plan, 0).Select(m => m.Count!.Value));
        Assert.All(On(plan, 0), m => Assert.Equal((1, true), (m.Round, m.IsAnchor)));
    }

    [Fact]
    public void Marks_further_apart_than_the_cap_are_noted_and_stay()
    {
        var (_, plan, findings) = Planned(Rectangle(("right", Counted(160) with { Every = 20 })));
        var note = Assert.Single(findings.Notes, n => n.Place == "piece.edges.right.every");
        Assert.Contains("up to 12.5 cm apart", note.What, StringComparison.Ordinal);
        Assert.Equal(8, On(plan, 1).Count);
    }

    [Theory]
    [InlineData(90, 8)]
    [InlineData(92, 8)]
    [InlineData(91, 7)]
    [InlineData(91, 8)]
    [InlineData(3, 2)]
    [InlineData(2, 2)]
    [InlineData(5, 5)]
    [InlineData(9, 1)]
    public void On_an_edge_that_mirrors_itself_stitches_are_counted_off_from_both_corners(int count, int every)
    {
        var (_, plan, _) = Planned(Rectangle(("lower", Counted(count) with { Every = every })));
        Assert.NotNull(plan.Mirror);
        double[] at = [.. On(plan, 0).Select(m => m.Count!.Value), count];
        Assert.Equal(at.Select(a => count - a).Order(), at);
        var gaps = at.Zip(at.Skip(1), (a, b) => b - a).ToList();
        Assert.All(gaps, g => Assert.InRange(g, 1, every));
        Assert.True(gaps.Count(g => g != every) <= 3);
    }

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
    public void A_mark_on_such_an_edge_is_not_moved_off_a_seam()
    {
        var (_, plan, _) = Planned(Rectangle(("right", Counted(120) with { Points = Ten }), ("left", Counted(120) with { Every = 6 }), ("top", Counted(91))));
        Assert.All(plan.Marks.Where(m => m.Edge is 1 or 3), m => Assert.Null(MarkShift.Moved(plan, m.Number, 1)));
        Assert.Contains(plan.Marks.Where(m => m.Edge == 2), m => MarkShift.Moved(plan, m.Number, 1) is not null);
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
