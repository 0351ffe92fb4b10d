using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Tests.Shapes;

public sealed class OutlineTests
{
    [Fact]
    public void The_area_of_a_half_disc_is_found_from_its_flattened_ring()
    {
        var half = Rings.Of((new(0, 0), new CircularArc(new(0, 0), new(200, 0), 100)), (new(200, 0), new StraightEdge(new(200, 0), new(0, 0))));
        Assert.Equal(Math.PI * 100 * 100 / 2, half.SignedArea(1e-4), 0.1);
        Assert.Equal((100 * Math.PI) + 200, half.Length, 1e-9);
        Assert.Equal(half.SignedArea(), half.HullArea(), 1e-6);
    }

    [Fact]
    public void A_gap_between_edges_throws()
    {
        Edge a = new("a", new StraightEdge(new(0, 0), new(10, 0))), b = new("b", new StraightEdge(new(10, 0.001), new(0, 0)));
        Assert.Throws<ArgumentException>(() => new Outline([a, b], [new("p"), new("q")]));
        Assert.Throws<ArgumentException>(() => new Outline([], []));
        Assert.Throws<ArgumentException>(() => new Outline([a], [new("p"), new("q")]));
    }

    [Fact]
    public void A_map_that_mirrors_throws() =>
        Assert.Throws<ArgumentException>(() => Rings.Polygon(new(0, 0), new(10, 0), new(0, 10)).Mapped(Affine.MirrorLeftRight));

    [Fact]
    public void Seen_from_behind_it_is_mirrored_and_still_counter_clockwise() => RandomCurves.Any.Check(100, curve =>
    {
        // A ring of the curve and a way back round a far corner.
        var far = curve.Start.Toward(curve.End, 0.5) + (3000 * (curve.End - curve.Start).Unit.TurnedLeft);
        var ring = new Outline(
            [new("a", curve), new("b", new StraightEdge(curve.End, far)), new("c", new StraightEdge(far, curve.Start))],
            [new("p"), new("q", true), new("r")]);
        var behind = ring.SeenFromBehind();
        Assert.Equal(ring.SignedArea(), behind.SignedArea(), 1e-6 * Math.Abs(ring.SignedArea()));
        Assert.Equal(["c", "b", "a"], behind.Edges.Select(e => e.Name));
        Assert.Equal(["p", "r", "q"], behind.Corners.Select(c => c.Name));
        for (var i = 0; i < 3; i++)
        {
            var name = behind.Corners[i].Name;
            var before = ring.CornerAt(ring.Corners.ToList().FindIndex(c => c.Name == name));
            Assert.InRange(behind.CornerAt(i).DistanceTo(new(-before.X, before.Y)), 0, 1e-9);
            Assert.Equal(name == "q", behind.Corners[i].Smooth);
        }

        var twice = behind.SeenFromBehind();
        for (var f = 0.0; f <= 1; f += 0.125)
            Assert.InRange(twice.Edges[0].Curve.At(f).DistanceTo(curve.At(f)), 0, 1e-8);
    });

    [Fact]
    public void Crossing_edges_are_named()
    {
        // A bow tie: the second and the fourth edge cross at (5, 5).
        var (at, edges) = OutlineCrossing.Find(Rings.Polygon(new(0, 0), new(100, 0), new(0, 100), new(100, 100)))!.Value;
        Assert.InRange(at.DistanceTo(new(50, 50)), 0, 1e-6);
        Assert.Equal([1, 3], edges);
    }

    [Fact]
    public void An_inward_bow_that_reaches_the_other_side_is_found()
    {
        Outline With(double bow) => Rings.Of(
            (new(0, 0), new StraightEdge(new(0, 0), new(300, 0))),
            (new(300, 0), new StraightEdge(new(300, 0), new(300, 50))),
            (new(300, 50), new CircularArc(new(300, 50), new(0, 50), bow)),
            (new(0, 50), new StraightEdge(new(0, 50), new(0, 0))));
        Assert.Null(OutlineCrossing.Find(With(-49)));
        var (_, edges) = OutlineCrossing.Find(With(-51))!.Value;
        Assert.Equal([0, 2], edges);
    }

    [Fact]
    public void Points_vectors_and_boxes_can_be_printed()
    {
        Assert.Equal("(1.5, -2)", new Vector(1.5, -2).ToString());
        Assert.NotEmpty(new Point(1, 2).ToString());
        Assert.NotEmpty(new Box(0, 0, 2, 1).ToString());
        Assert.NotEmpty(new MirrorPairing([0], new(1, 2), new(0, 1)).ToString());
    }

    [Fact]
    public void A_stretch_scales_its_two_directions_about_a_fixed_point()
    {
        var map = Affine.Stretch(new(3, 4), 0.7, 1.2, 0.9);
        Assert.InRange(map.Map(new Point(3, 4)).DistanceTo(new(3, 4)), 0, 1e-12);
        var u = Vector.AtAngle(0.7);
        Assert.InRange((map.Map(u) - (1.2 * u)).Length, 0, 1e-12);
        Assert.InRange((map.Map(u.TurnedLeft) - (0.9 * u.TurnedLeft)).Length, 0, 1e-12);
        Assert.Equal(1.08, map.Determinant, 1e-12);
    }
}
