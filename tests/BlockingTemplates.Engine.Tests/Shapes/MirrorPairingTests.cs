using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Tests.Shapes;

public sealed class MirrorPairingTests
{
    [Fact]
    public void A_rectangle_mirrors_left_and_right_before_up_and_down()
    {
        var all = MirrorPairing.All(Rings.Polygon(new(0, 0), new(300, 0), new(300, 100), new(0, 100)));
        Assert.Equal(2, all.Count);
        Assert.Equal([0, 3, 2, 1], all[0].Partner);
        Assert.Equal([2, 1, 0, 3], all[1].Partner);
        Assert.InRange(all[0].Image(new(10, 20)).DistanceTo(new(290, 20)), 0, 1e-9);
        Assert.InRange(all[1].Image(new(10, 20)).DistanceTo(new(10, 80)), 0, 1e-9);
    }

    [Fact]
    public void A_square_has_four_pairings() =>
        Assert.Equal(4, MirrorPairing.All(Rings.Polygon(new(0, 0), new(100, 0), new(100, 100), new(0, 100))).Count);

    [Fact]
    public void Circles_of_smooth_arcs_mirror_in_as_many_ways_as_arcs()
    {
        foreach (var arcs in new[] { 2, 3, 4, 5, 8 })
            Assert.Equal(arcs, MirrorPairing.All(Rings.Circle(new(40, 50), 300, arcs, 0.3)).Count);
    }

    [Fact]
    public void An_isosceles_triangle_mirrors_about_its_spine_however_it_lies()
    {
        foreach (var angle in new[] { 0, 0.3, 1.4, 2.9, -2 })
        {
            var ring = Rings.Polygon(new(0, 0), new(740, 700), new(-740, 700)).Mapped(Affine.Turn(angle).Then(Affine.Shift(new(1000, -500))));
            var found = MirrorPairing.Of(ring)!;
            Assert.Equal([2, 1, 0], found.Partner);
            for (var f = 0.0; f <= 1; f += 0.1)
                Assert.InRange(found.Image(ring.Edges[0].Curve.At(f)).DistanceTo(ring.Edges[2].Curve.At(1 - f)), 0, 1e-9);
        }
    }

    [Theory]
    [InlineData(0.04, true)]
    [InlineData(0.3, false)]
    public void Almost_symmetric_outlines_are_told_by_a_twentieth_of_a_millimetre(double shift, bool isSymmetric)
    {
        var ring = Rings.Polygon(new(0, 0), new(740 + shift, 700), new(-740, 700));
        Assert.Equal(isSymmetric, MirrorPairing.Of(ring) is not null);
    }

    [Fact]
    public void A_small_notch_on_one_side_is_seen()
    {
        Point foot = new(0, 0), right = new(500, 500), left = new(-500, 500);
        EdgeCurve Notched(Point a, Point b, double deep) =>
            new PolylineEdge([a, a.Toward(b, 0.502), a.Toward(b, 0.503) + (deep * (b - a).Unit.TurnedLeft), a.Toward(b, 0.504), b]);
        Outline With(double deepRight, double deepLeft) => Rings.Of(
            (foot, Notched(foot, right, deepRight)), (right, new StraightEdge(right, left)), (left, Notched(foot, left, -deepLeft).Reversed()));
        Assert.NotNull(MirrorPairing.Of(With(0.4, 0.4)));
        // As long and as deep, but inward on one side and outward on the other: between the even samples.
        Assert.Null(MirrorPairing.Of(With(0.4, -0.4)));
    }

    [Fact]
    public void Smooth_corners_mirror_smooth_corners_only()
    {
        var ring = Rings.Polygon(new(0, 0), new(300, 0), new(300, 100), new(0, 100));
        Outline With(params int[] smooth) => new(ring.Edges, [.. ring.Corners.Select((c, i) => c with { Smooth = smooth.Contains(i) })]);
        Assert.Equal([0, 3, 2, 1], MirrorPairing.Of(With(0, 1))!.Partner);
        Assert.Equal([2, 1, 0, 3], MirrorPairing.Of(With(0, 3))!.Partner);
        Assert.Null(MirrorPairing.Of(With(0)));
    }

    [Fact]
    public void Scalene_triangles_and_leaning_quadrilaterals_are_not_symmetric()
    {
        Assert.Null(MirrorPairing.Of(Rings.Polygon(new(0, 0), new(300, 10), new(90, 200))));
        Assert.Null(MirrorPairing.Of(Rings.Polygon(new(0, 0), new(300, 0), new(350, 100), new(50, 100))));
    }
}
