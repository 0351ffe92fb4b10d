using BlockingTemplates.Engine.Fabrics;
using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Pins;
using BlockingTemplates.Engine.Shapes;
using BlockingTemplates.Engine.Tests.Shapes;
using CsCheck;

namespace BlockingTemplates.Engine.Tests.Pins;

public sealed class SpacingTests
{
    private static readonly EdgeTreatment Loose = new(null, CountedIn.Stitches, Holding.None);

    [Fact]
    public void Half_the_spacing_holds_within_one_spacing_of_a_corner()
    {
        var rule = new SpacingRule(Rings.Polygon(new(0, 0), new(1000, 0), new(1000, 300), new(0, 300)), 50, 15, [false, true, false, false]);
        Assert.Equal((50, 25), (rule.FullMm, rule.HalfMm));
        Assert.Equal(25, rule.At(0, 0));
        Assert.Equal(25, rule.At(0, 0.0499));
        Assert.Equal(50, rule.At(0, 0.0501));
        Assert.Equal(50, rule.At(0, 0.9499));
        Assert.Equal(25, rule.At(0, 0.9501));
        Assert.Equal(25, rule.At(1, 0.5));
        Assert.Equal((50, 25), (rule.OnEdge(0), rule.OnEdge(1)));
    }

    [Fact]
    public void Corners_count_through_smooth_ones()
    {
        var ring = Rings.Polygon(new(0, 0), new(30, 0), new(1000, 0), new(1000, 300), new(0, 300));
        ring = new(ring.Edges, [.. ring.Corners.Select((c, i) => c with { Smooth = i is 1 })]);
        var rule = new SpacingRule(ring, 50, 15, new bool[5]);
        Assert.Equal(25, rule.At(1, 19.0 / 970));
        Assert.Equal(50, rule.At(1, 21.0 / 970));
        Assert.Equal(35, rule.Behind(1, 5.0 / 970), 1e-9);
        Assert.Equal(995, rule.Ahead(0, 5.0 / 30), 1e-9);
    }

    /// <summary>The rule's distance to a sharp corner, by walking in small steps.</summary>
    [Fact]
    public void Distances_to_corners_are_those_of_a_walk() => RandomPieces.Any.Check(60, given =>
    {
        var plan = RandomPieces.Plan(given);
        var n = plan.Edges.Count;
        for (var edge = 0; edge < n; edge++)
        {
            double behind = 0.25 * plan.Edges[edge].PinnedMm, ahead = 0.75 * plan.Edges[edge].PinnedMm;
            int b = edge, a = (edge + 1) % n, steps = 0;
            while (plan.Pinned.Corners[b].Smooth && steps++ < n)
            {
                b = (b + n - 1) % n;
                behind += plan.Edges[b].PinnedMm;
            }

            for (steps = 0; plan.Pinned.Corners[a].Smooth && steps < n; steps++)
            {
                ahead += plan.Edges[a].PinnedMm;
                a = (a + 1) % n;
            }

            var isRound = plan.Pinned.Corners.All(c => c.Smooth);
            Assert.Equal(isRound ? double.PositiveInfinity : behind, plan.Rule.Behind(edge, 0.25), 1e-6);
            Assert.Equal(isRound ? double.PositiveInfinity : ahead, plan.Rule.Ahead(edge, 0.25), 1e-6);
        }
    });

    [Fact]
    public void A_ring_without_a_sharp_corner_is_full_everywhere()
    {
        var rule = new SpacingRule(Rings.Circle(new(0, 0), 10, 4, 0), 5000, 15, new bool[4]);
        Assert.Equal(5000, rule.At(2, 0.3));
    }

    [Theory]
    [InlineData(50, 15, 25)]
    [InlineData(50, 30, 30)]
    [InlineData(50, 80, 50)]
    public void A_half_is_never_less_than_the_least_spacing_unless_the_full_one_is(double full, double least, double half) =>
        Assert.Equal(half, new SpacingRule(Rings.Circle(new(0, 0), 10, 4, 0), full, least, new bool[4]).HalfMm);

    [Fact]
    public void A_plain_square_gets_the_marks_one_would_set_by_hand()
    {
        var plan = Plan(Rings.Polygon(new(0, 0), new(500, 0), new(500, 500), new(0, 500)), 50, "none");
        // 25 mm apart up to 50 mm from each corner, 50 mm apart between.
        Assert.Equal([0, 25, 50, 100, 150, 200, 250, 300, 350, 400, 450, 475], plan.Marks.Where(m => m.Edge == 0).Select(m => Math.Round(m.Fraction * 500, 6)).Order());
        Assert.Equal(48, plan.Marks.Count);
    }

    [Fact]
    public void An_edge_that_must_shrink_gets_half_the_spacing_and_a_note_with_figures()
    {
        var finished = Rings.Polygon(new(0, 0), new(500, 0), new(500, 500), new(0, 500));
        var unblocked = Rings.Polygon(new(0, 0), new(550, 0), new(500, 480), new(0, 480));
        var findings = new Findings(LengthUnit.Centimetres);
        var plan = PinPlanner.Plan(
            new Piece(finished, unblocked, [.. Enumerable.Repeat(EdgeTreatment.Unsaid, 4)], WorkSide.RightSide, FabricSettings.Unsaid), PinSettings.Default with { Spacing = Length.FromCentimetres(5), Anchor = "none" }, findings)!;
        Assert.Equal(20, plan.Marks.Count(m => m.Edge == 0));
        Assert.Equal("half spacing: the edge must shrink", plan.Edges[0].SpacingRule);
        Assert.Equal(25, plan.Edges[0].SpacingMm);
        var note = Assert.Single(findings.Notes);
        Assert.Equal("edge edge 0", note.Place);
        Assert.Equal("The edge 0 edge must shrink by 9.1 %: from 55.0 cm to 50.0 cm. Its pins stand at half the spacing.", note.What);
    }

    [Fact]
    public void Nothing_stands_between_the_corners_of_an_edge_that_is_not_held()
    {
        var ring = Rings.Polygon(new(0, 0), new(500, 0), new(500, 500), new(0, 500));
        var plan = Plan(ring, 50, "none", [Loose, EdgeTreatment.Unsaid, EdgeTreatment.Unsaid, EdgeTreatment.Unsaid]);
        Assert.Equal(0, Assert.Single(plan.Marks, m => m.Edge == 0).Fraction);
        Assert.Null(plan.Edges[0].MayDipMm);
        Assert.Equal("no pins between its corners", plan.Edges[0].SpacingRule);
    }

    [Fact]
    public void An_edge_that_is_not_held_is_pinned_at_its_smooth_ends()
    {
        var plan = Plan(Rings.Circle(new(0, 0), 300, 4, 0.2), 50, "none", [Loose, EdgeTreatment.Unsaid, EdgeTreatment.Unsaid, EdgeTreatment.Unsaid]);
        Assert.Contains(plan.Marks, m => m is { Edge: 0, Fraction: 0 });
        Assert.Contains(plan.Marks, m => m is { Edge: 1, Fraction: 0 });
        Assert.Single(plan.Marks, m => m.Edge == 0);
    }

    [Fact]
    public void A_smooth_corner_of_an_anchored_piece_gets_the_anchor_and_no_other_does()
    {
        var plan = Plan(Rings.Circle(new(0, 0), 300, 4, 0.2), 400, "corner 2");
        Assert.Equal((2, 0.0), (plan.Marks[0].Edge, plan.Marks[0].Fraction));
        Assert.True(plan.Marks[0].IsAnchor);
        Assert.Equal(5, plan.Marks.Count);
    }

    [Fact]
    public void Odd_pieces_are_planned_in_a_moment()
    {
        Outline lens = Rings.Of((new(0, 0), new CircularArc(new(0, 0), new(600, 0), 200)), (new(600, 0), new CircularArc(new(600, 0), new(0, 0), 30)));
        Outline tiny = Rings.Polygon(new(0, 0), new(900, 0), new(901.1, 0.2), new(901, 500), new(0, 500));
        Outline[] rings = [lens, tiny, Rings.Circle(new(0, 0), 400, 2, 0.4), Rings.Circle(new(0, 0), 400, 3, 0.4), Rings.Circle(new(0, 0), 400, 5, 0.4)];
        double[] spacings = [4, 50, 333, 10_000];
        string[] anchors = ["none", "corner 0", "corner 1", "edge 0", "edge 1", "middle of edge 0", "middle of edge 1"];
        int?[] counts = [null, 1, 2, 7, 100, 100_000];
        foreach (var ring in rings)
        {
            foreach (var spacing in spacings)
            {
                foreach (var (count, k) in counts.Select((c, k) => (c, k)))
                {
                    // The second edge is counted otherwise than the first.
                    var plan = Plan(ring, spacing, anchors[(k + (int)spacing) % anchors.Length], [.. ring.Edges.Select((_, i) => new EdgeTreatment(i == 1 ? 1 : count, CountedIn.Rows, Holding.Pins))]);
                    Assert.NotEmpty(plan.Marks);
                }
            }
        }
    }

    [Fact]
    public void More_stitches_than_can_be_pinned_change_nothing()
    {
        var ring = Rings.Polygon(new(0, 0), new(500, 0), new(500, 500), new(0, 500));
        var counted = Plan(ring, 50, "none", [.. Enumerable.Repeat(new EdgeTreatment(1_000_000, CountedIn.Stitches, Holding.Pins), 4)]);
        Assert.Equal(Plan(ring, 50, "none").Marks.Select(m => m.Fraction), counted.Marks.Select(m => m.Fraction), (a, b) => Math.Abs(a - b) < 1e-6);
    }

    [Fact]
    public void An_edge_of_one_stitch_is_pinned_at_its_ends_only()
    {
        var ring = Rings.Polygon(new(0, 0), new(500, 0), new(500, 500), new(0, 500));
        var plan = Plan(ring, 50, "none", [new(1, CountedIn.Stitches, Holding.Pins), EdgeTreatment.Unsaid, EdgeTreatment.Unsaid, EdgeTreatment.Unsaid]);
        Assert.Single(plan.Marks, m => m.Edge == 0);
    }

    [Fact]
    public void A_spacing_outside_the_limits_is_kept_with_a_note_and_unsaid_it_is_capped()
    {
        var piece = Piece(Rings.Polygon(new(0, 0), new(500, 0), new(500, 500), new(0, 500)), null);
        PinSettings With(double? spacing, double least, double? most) => PinSettings.Default with
        {
            Spacing = spacing is { } s ? Length.FromMillimetres(s) : null,
            MinSpacing = Length.FromMillimetres(least),
            MaxSpacing = most is { } m ? Length.FromMillimetres(m) : null,
        };
        double Full(PinSettings settings, int notes)
        {
            var findings = new Findings();
            var plan = PinPlanner.Plan(piece, settings, findings)!;
            Assert.Equal(notes, findings.Notes.Count(n => n.Place == "pins.spacing"));
            return plan.Rule.FullMm;
        }

        Assert.Equal(50, Full(With(null, 15, 80), 0));
        Assert.Equal(40, Full(With(null, 15, 40), 0));
        Assert.Equal(60, Full(With(null, 60, null), 0));
        Assert.Equal(90, Full(With(90, 15, 80), 1));
        Assert.Equal(10, Full(With(10, 15, null), 1));
        Assert.Equal(90, Full(With(90, 15, null), 0));
    }

    private static Piece Piece(Outline ring, IReadOnlyList<EdgeTreatment>? edges) =>
        new(ring, ring, edges ?? [.. ring.Edges.Select(_ => EdgeTreatment.Unsaid)], WorkSide.RightSide, FabricSettings.Unsaid);

    private static PinPlan Plan(Outline ring, double spacing, string anchor, IReadOnlyList<EdgeTreatment>? edges = null) =>
        Assert.IsType<PinPlan>(PinPlanner.Plan(Piece(ring, edges), PinSettings.Default with { Spacing = Length.FromMillimetres(spacing), Anchor = anchor }, new Findings()));
}
