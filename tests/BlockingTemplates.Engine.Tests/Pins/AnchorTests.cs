using BlockingTemplates.Engine.Fabrics;
using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Pins;
using BlockingTemplates.Engine.Shapes;
using BlockingTemplates.Engine.Tests.Pieces;
using BlockingTemplates.Engine.Tests.Shapes;

namespace BlockingTemplates.Engine.Tests.Pins;

public sealed class AnchorTests
{
    private static readonly Outline Square = Rings.Polygon(new(0, 0), new(500, 0), new(500, 500), new(0, 500));

    [Theory]
    [InlineData("corner 2", AnchorKind.Corner, 2)]
    [InlineData("edge 3", AnchorKind.WholeEdge, 3)]
    [InlineData("middle of edge 1", AnchorKind.MiddleOfEdge, 1)]
    [InlineData("none", AnchorKind.None, 0)]
    [InlineData(null, AnchorKind.MiddleOfEdge, 0)]
    public void An_anchor_is_found_by_name(string? name, AnchorKind kind, int index)
    {
        var anchor = Anchor.Find(name, Square, new Findings())!;
        Assert.Equal((kind, index), (anchor.Kind, anchor.Index));
    }

    [Fact]
    public void Unsaid_it_is_the_foot_where_there_is_one()
    {
        var triangle = Given.Made(Given.Request(new TrianglePiece(), Given.Finished(("wingspan", 1480), ("depth", 740)), null)).Finished;
        Assert.Equal(new Anchor(AnchorKind.Corner, 0, "foot"), Anchor.Find(null, triangle, new Findings()));
    }

    [Fact]
    public void An_unknown_name_is_a_problem_that_lists_the_known_ones()
    {
        var findings = new Findings();
        Assert.Null(Anchor.Find("spine", Square, findings));
        var problem = Assert.Single(findings.Problems);
        Assert.Equal("pins.anchor", problem.Path);
        Assert.Contains("corner 0, corner 1", problem.Do, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(101, 50.5)]
    [InlineData(100, 50)]
    public void The_anchored_middle_of_a_counted_edge_stands_in_the_middle_between_two_stitches_if_need_be(int count, double at)
    {
        EdgeTreatment counted = new(count, CountedIn.Rows, Holding.Pins);
        var piece = new Piece(Square, null, [counted, counted, counted, counted], WorkSide.RightSide, FabricSettings.Unsaid);
        foreach (var name in new[] { "middle of edge 0", "middle of edge 1", "edge 1" })
        {
            var plan = PinPlanner.Plan(piece, PinSettings.Default with { Anchor = name }, new Findings())!;
            var edge = plan.Anchor.Index;
            var mark = Assert.Single(plan.Marks, m => m.Edge == edge && m.Fraction == 0.5);
            Assert.Equal((true, 1, (double?)at, CountedIn.Rows), (mark.IsAnchor, mark.Round, mark.Count, mark.Of));
        }
    }

    [Fact]
    public void The_second_symmetry_is_taken_where_the_first_does_not_fit_all()
    {
        // Finished a rectangle; unblocked its right side is longer than its left, lower and top alike: symmetric up and down only.
        var finished = Rings.Polygon(new(0, 0), new(500, 0), new(500, 300), new(0, 300));
        var unblocked = Rings.Polygon(new(0, 20), new(450, 0), new(450, 280), new(0, 260));
        var plan = PinPlanner.Plan(new Piece(finished, unblocked, [.. Enumerable.Repeat(EdgeTreatment.Unsaid, 4)], WorkSide.RightSide, FabricSettings.Unsaid), PinSettings.Default, new Findings())!;
        Assert.Equal([2, 1, 0, 3], plan.Mirror!.Partner);
        // Said differently of lower and top: no symmetry is left.
        var said = new Piece(finished, unblocked, [new(50, CountedIn.Stitches, Holding.Pins), EdgeTreatment.Unsaid, EdgeTreatment.Unsaid, EdgeTreatment.Unsaid], WorkSide.RightSide, FabricSettings.Unsaid);
        Assert.Null(PinPlanner.Plan(said, PinSettings.Default, new Findings())!.Mirror);
    }

    [Fact]
    public void A_symmetry_through_the_anchor_comes_first()
    {
        var piece = new Piece(Square, Square, [.. Enumerable.Repeat(EdgeTreatment.Unsaid, 4)], WorkSide.RightSide, FabricSettings.Unsaid);
        int Partner(string anchor) => PinPlanner.Plan(piece, PinSettings.Default with { Anchor = anchor }, new Findings())!.Mirror!.Partner[0];
        Assert.Equal(0, Partner("none"));
        Assert.Equal(0, Partner("middle of edge 2"));
        Assert.Equal(2, Partner("middle of edge 1"));
        Assert.Equal(3, Partner("corner 0"));
        Assert.Equal(1, Partner("corner 1"));
    }

    [Fact]
    public void A_dip_is_told_from_the_widest_gap_round_a_smooth_corner_too()
    {
        // Two half circles joined smoothly, pinned only where the anchor and its one opposite stand.
        var ring = Rings.Circle(new(0, 0), 300, 2, 0);
        var unblocked = Rings.Circle(new(0, 0), 250, 2, 0);
        EdgeTreatment counted = new(120, CountedIn.Stitches, Holding.Pins);
        var plan = PinPlanner.Plan(new Piece(ring, unblocked, [counted, counted], WorkSide.RightSide, FabricSettings.Unsaid), PinSettings.Default with { Spacing = Length.FromMillimetres(950), Anchor = "middle of edge 0" }, new Findings())!;
        Assert.Equal(2, plan.Marks.Count);
        var gap = 300 * Math.PI;
        // The strain across comes from areas of rings flattened to 0.05 mm.
        Assert.Equal(ScallopEstimate.MayDip(0.2, gap, gap / 120), plan.Edges[0].MayDipMm!.Value, 0.5);
        Assert.Equal(plan.Edges[0].MayDipMm!.Value, plan.Edges[1].MayDipMm!.Value, 1e-9);
    }

    [Fact]
    public void Stretch_beyond_habit_is_noted_by_kind_of_fabric()
    {
        var unblocked = Rings.Polygon(new(0, 0), new(400, 0), new(400, 490), new(0, 490));
        var findings = new Findings(LengthUnit.Centimetres);
        PinPlanner.Plan(new Piece(Square, unblocked, [.. Enumerable.Repeat(EdgeTreatment.Unsaid, 4)], WorkSide.RightSide, FabricSettings.Unsaid with { Kind = FabricKind.Plain }), PinSettings.Default, findings);
        Assert.Equal(["edge edge 0", "edge edge 2"], findings.Notes.Select(n => n.Place));
        Assert.Equal("The edge 0 edge is stretched by 25 %, more than 15 % that plain fabric habitually takes.", findings.Notes[0].What);
    }

    [Fact]
    public void A_shifted_plan_is_the_same_plan_elsewhere()
    {
        var plan = RandomPieces.Plan((new Piece(Square, Square, [.. Enumerable.Repeat(EdgeTreatment.Unsaid, 4)], WorkSide.RightSide, FabricSettings.Unsaid), PinSettings.Default));
        var by = new Vector(31, -7);
        var shifted = plan.Shifted(by);
        Assert.All(plan.Marks.Zip(shifted.Marks), p => Assert.InRange((p.Second.At - p.First.At - by).Length + (p.Second.Rest!.Value - p.First.Rest!.Value - by).Length, 0, 1e-9));
        Assert.InRange((shifted.Mirror!.Image(new Point(31, 0)) - new Point(531, 0)).Length, 0, 1e-9);
    }
}
