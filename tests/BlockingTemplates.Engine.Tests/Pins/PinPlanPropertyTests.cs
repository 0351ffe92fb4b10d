using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Pins;
using BlockingTemplates.Engine.Shapes;
using CsCheck;

namespace BlockingTemplates.Engine.Tests.Pins;

/// <summary>What holds for every plan, on random pieces.</summary>
public sealed class PinPlanPropertyTests
{
    private static readonly Gen<(Piece Piece, PinSettings Settings)> Both = Gen.OneOf(RandomPieces.Any, RandomPieces.Symmetric);

    [Fact]
    public void Symmetric_in_is_symmetric_out()
    {
        var seen = (Odd: 0, Rings: 0, OffAxis: 0);
        RandomPieces.Symmetric.Check(300, given =>
        {
            var plan = RandomPieces.Plan(given);
            var mirror = plan.Mirror;
            Assert.NotNull(mirror);
            foreach (var mark in plan.Marks)
            {
                var image = plan.Marks.Where(m => m.At.DistanceTo(mirror.Image(mark.At)) < 1e-6).ToList();
                var twin = Assert.Single(image);
                if (mark is { Count: { } k, Fraction: > 0 })
                    Assert.Equal(plan.Edges[mark.Edge].Treatment.Count - k, twin.Count);
            }

            seen.Odd += plan.Edges.Any(e => e.Treatment.Count % 2 == 1) ? 1 : 0;
            seen.Rings += plan.Pinned.Corners.All(c => c.Smooth) ? 1 : 0;
            seen.OffAxis += plan.Anchor.Place is var (e, f) && plan.Pinned.Edges[e].Curve.At(f) is var at && mirror.Image(at).DistanceTo(at) > 1 ? 1 : 0;
        });
        Assert.True(seen is { Odd: > 50, Rings: > 20, OffAxis: > 50 }, seen.ToString());
    }

    [Fact]
    public void Gaps_are_no_wider_than_the_rule_unless_one_stitch_is() => Both.Check(350, given =>
    {
        var plan = RandomPieces.Plan(given);
        var ring = new RingWalk(plan);
        foreach (var (from, to) in ring.Gaps)
        {
            var (edge, fraction) = ring.Locate((from + to) / 2);
            var limit = plan.Rule.At(edge, fraction);
            if (plan.Edges[edge].Treatment.Hold == Holding.None || to - from <= limit + 1e-5)
                continue;
            Assert.False(ring.HasFreePlace(from, to), $"{to - from} mm on edge {edge} where {limit} mm is allowed");
        }
    });

    [Fact]
    public void Marks_stand_on_whole_stitches_but_where_a_middle_is_anchored() => Both.Check(200, given =>
    {
        var plan = RandomPieces.Plan(given);
        foreach (var mark in plan.Marks)
        {
            var edge = plan.Edges[mark.Edge];
            Assert.Equal(edge.Treatment.Count is not null, mark.Count is not null);
            Assert.Equal(edge.Treatment.Of, mark.Of);
            if (edge.Treatment.Count is not { } n)
                continue;
            Assert.Equal(mark.Fraction * n, mark.Count!.Value, 1e-9);
            if (mark.Count != Math.Floor(mark.Count.Value))
                Assert.True(mark.Fraction == 0.5 && (plan.Anchor.Kind is AnchorKind.MiddleOfEdge or AnchorKind.WholeEdge || plan.Pinned.Corners.All(c => c.Smooth)), mark.ToString());
        }
    });

    [Fact]
    public void Every_corner_that_is_not_smooth_has_a_mark_and_numbers_run_from_one() => Both.Check(200, given =>
    {
        var plan = RandomPieces.Plan(given);
        Assert.Equal(Enumerable.Range(1, plan.Marks.Count), plan.Marks.Select(m => m.Number));
        Assert.True(plan.Marks.Zip(plan.Marks.Skip(1)).All(p => p.First.Round <= p.Second.Round));
        Assert.Equal(plan.Marks.Count, plan.Marks.Select(m => (m.Edge, m.Fraction)).Distinct().Count());
        Assert.All(plan.Marks, m => Assert.InRange(m.Fraction, 0, 0.9999999999));
        for (var c = 0; c < plan.Pinned.Corners.Count; c++)
            Assert.True(plan.Pinned.Corners[c].Smooth || plan.Marks.Any(m => m.Edge == c && m.Fraction == 0), $"corner {c}");
        Assert.Equal(plan.Anchor.Kind != AnchorKind.None, plan.Marks.Any(m => m.IsAnchor));
        Assert.All(plan.Marks, m => Assert.Equal(m.IsAnchor, m.Round == 1));
    });

    [Fact]
    public void With_no_anchor_the_pulls_sum_to_nothing_and_with_no_turn() => Both.Check(40, given =>
    {
        var plan = RandomPieces.Plan((given.Piece, given.Settings with { Anchor = "none" }));
        var pulls = Pulls(plan);
        var sum = pulls.Aggregate(default(Vector), (a, p) => a + (p.Weight * p.Pull));
        Assert.InRange(sum.Length / plan.Pinned.Length, 0, 1e-3);
        var total = pulls.Sum(p => p.Weight);
        NoTurnLowers(pulls, new(pulls.Sum(p => p.Weight * p.At.X) / total, pulls.Sum(p => p.Weight * p.At.Y) / total));
    });

    [Fact]
    public void An_anchor_is_not_pulled_and_no_turn_about_it_lowers_the_integral() => Both.Check(50, given =>
    {
        var plan = RandomPieces.Plan(given);
        if (plan.Anchor.Place is not var (edge, fraction))
            return;
        Assert.InRange((plan.Pinned.Edges[edge].Curve.At(fraction) - plan.LayLine!.Edges[edge].Curve.At(fraction)).Length, 0, 1e-8);
        if (plan.Anchor.Kind != AnchorKind.WholeEdge)
            Assert.InRange(Assert.Single(plan.Marks, m => m.IsAnchor).Pull!.Value.Length, 0, 1e-8);
        NoTurnLowers(Pulls(plan), plan.Pinned.Edges[edge].Curve.At(fraction));
    });

    [Fact]
    public void The_lay_line_is_the_unblocked_outline_neither_scaled_nor_mirrored() => Both.Check(60, given =>
    {
        var plan = RandomPieces.Plan(given);
        Assert.Equal(given.Piece.Unblocked!.SignedArea(), plan.LayLine!.SignedArea(), 1e-3);
        for (var i = 0; i < plan.Edges.Count; i++)
            Assert.Equal(given.Piece.Unblocked.Edges[i].Curve.Length, plan.LayLine.Edges[i].Curve.Length, 1e-7);
    });

    [Fact]
    public void Marks_lie_at_equal_fractions_of_the_pinned_edge_and_of_the_lay_line() => Both.Check(50, given =>
    {
        var plan = RandomPieces.Plan(given);
        foreach (var mark in plan.Marks)
        {
            Assert.InRange(mark.At.DistanceTo(plan.Pinned.Edges[mark.Edge].Curve.At(mark.Fraction)), 0, 1e-9);
            Assert.InRange(mark.Rest!.Value.DistanceTo(plan.LayLine!.Edges[mark.Edge].Curve.At(mark.Fraction)), 0, 1e-9);
            Assert.Equal(1, mark.Outward.Length, 1e-9);
        }

        var beside = plan.Marks.Where(m => m.Fraction > 0).Select(m => m.At + (0.01 * m.Outward)).ToList();
        var inside = plan.Pinned.ToPolygon(1e-3);
        Assert.All(beside, p => Assert.False(inside.Contains(new NetTopologySuite.Geometries.Point(p.X, p.Y))));
    });

    [Fact]
    public void Spring_back_makes_the_pinned_outline_larger_about_the_anchor() => RandomPieces.Any.Check(60, given =>
    {
        var plan = RandomPieces.Plan(given);
        var back = given.Piece.Fabric.SpringBack;
        Assert.Equal(given.Piece.Finished.SignedArea(1e-3) * (1 + back.Along) * (1 + back.Across), plan.Pinned.SignedArea(1e-3), 4.0);
        var about = plan.Anchor.Place is var (e, f) ? given.Piece.Finished.Edges[e].Curve.At(f) : Point.Origin;
        for (var i = 0; i < plan.Edges.Count; i++)
        {
            var from = given.Piece.Finished.CornerAt(i) - about;
            Assert.InRange(plan.Pinned.CornerAt(i).DistanceTo(about + new Vector((1 + back.Along) * from.X, (1 + back.Across) * from.Y)), 0, 1e-8);
        }
    });

    private static List<(double Weight, Vector Pull, Point At)> Pulls(PinPlan plan)
    {
        const int Parts = 600;
        return [.. plan.Pinned.Edges.SelectMany((e, i) => Enumerable.Range(0, Parts).Select(k =>
        {
            var f = (k + 0.5) / Parts;
            var at = e.Curve.At(f);
            return (e.Curve.Length / Parts, at - plan.LayLine!.Edges[i].Curve.At(f), at);
        }))];
    }

    private static void NoTurnLowers(List<(double Weight, Vector Pull, Point At)> pulls, Point about)
    {
        double Integral(double angle)
        {
            var turn = Affine.Shift(Point.Origin - about).Then(Affine.Turn(angle)).Then(Affine.Shift(about - Point.Origin));
            return pulls.Sum(p => (p.At - turn.Map(p.At - p.Pull)) is var pull ? p.Weight * pull.Dot(pull) : 0);
        }

        var least = Integral(0);
        foreach (var angle in new[] { 1e-4, 1e-3, 0.01, 0.1, 0.7, 3 })
            Assert.True(Integral(angle) > least && Integral(-angle) > least, $"a turn of {angle} lowers the integral");
    }
}
