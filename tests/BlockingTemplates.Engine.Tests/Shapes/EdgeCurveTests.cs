using BlockingTemplates.Engine.Shapes;
using CsCheck;

namespace BlockingTemplates.Engine.Tests.Shapes;

public sealed class EdgeCurveTests
{
    private const int Chords = 4000;

    [Fact]
    public void The_length_is_that_of_many_small_chords() => RandomCurves.Any.Check(200, curve =>
    {
        var chords = Sum(Walk(curve));
        Assert.InRange(chords, curve.Length * (1 - Lost(curve)), curve.Length * (1 + 1e-12));
    });

    [Fact]
    public void Equal_fractions_are_equally_far_along_the_edge() => RandomCurves.Any.Check(120, curve =>
    {
        var points = Walk(curve);
        var far = 0.0;
        for (var i = 1; i <= Chords; i++)
        {
            far += points[i].DistanceTo(points[i - 1]);
            Assert.InRange(far, curve.Length * (((double)i / Chords) - Lost(curve)), (curve.Length * i / Chords) + 1e-9);
        }
    });

    [Fact]
    public void Points_lie_where_an_even_walk_over_the_undistorted_parameter_finds_them() => Gen.OneOf(RandomCurves.Spline, RandomCurves.Arc).Check(60, curve =>
    {
        // A second way: flatten very finely, walk along the flattened line.
        var line = curve.Flatten(1e-5);
        var total = Sum(line);
        Assert.Equal(curve.Length, total, 1e-6 * curve.Length);
        for (var f = 0.1; f < 1; f += 0.27)
            Assert.InRange(curve.At(f).DistanceTo(AlongLine(line, f * total)), 0, 0.005);
    });

    [Fact]
    public void The_direction_is_that_of_a_small_step() => Gen.Select(RandomCurves.Any, Gen.Double[0.001, 0.999]).Check(300, x =>
    {
        var (curve, f) = x;
        const double H = 1e-6;
        if (curve.Breaks.Any(b => Math.Abs(b - f) < 2 * H))
            return;
        var step = (1 / (2 * H * curve.Length)) * (curve.At(f + H) - curve.At(f - H));
        Assert.InRange((step - curve.Direction(f)).Length, 0, 1e-5);
        Assert.Equal(1, curve.Direction(f).Length, 1e-12);
    });

    [Fact]
    public void Ends_directions_are_those_of_a_small_step_inward() => RandomCurves.Any.Check(100, curve =>
    {
        const double H = 1e-7;
        var length = H * curve.Length;
        Assert.InRange(((1 / length) * (curve.At(H) - curve.Start) - curve.Direction(0)).Length, 0, 1e-4);
        Assert.InRange(((1 / length) * (curve.End - curve.At(1 - H)) - curve.Direction(1)).Length, 0, 1e-4);
    });

    [Fact]
    public void Flattened_lines_stay_within_the_tolerance() => Gen.Select(RandomCurves.Any, Gen.Double[0.01, 5]).Check(200, x =>
    {
        var (curve, tolerance) = x;
        var line = curve.Flatten(tolerance);
        Assert.InRange(line[0].DistanceTo(curve.Start), 0, 1e-9);
        Assert.InRange(line[^1].DistanceTo(curve.End), 0, 1e-9);
        foreach (var p in Walk(curve, 600))
            Assert.InRange(Distance(line, p), 0, tolerance + 1e-9);
    });

    [Fact]
    public void A_reversed_edge_is_the_same_line_the_other_way() => Gen.Select(RandomCurves.Any, Gen.Double[0, 1]).Check(200, x =>
    {
        var (curve, f) = x;
        var back = curve.Reversed();
        Assert.Equal(curve.Length, back.Length, 1e-9);
        Assert.InRange(curve.At(f).DistanceTo(back.At(1 - f)), 0, 1e-8);
        if (curve.Breaks.All(b => Math.Abs(b - f) > 1e-9))
            Assert.InRange((curve.Direction(f) + back.Direction(1 - f)).Length, 0, 1e-9);
        Assert.Equal(curve.Breaks.Select(b => 1 - b).Order().ToArray(), back.Breaks, (a, b) => Math.Abs(a - b) < 1e-9);
    });

    [Fact]
    public void A_mapped_edge_lies_on_the_mapped_line() => Gen.Select(RandomCurves.Any, RandomCurves.Map).Check(100, x =>
    {
        var (curve, map) = x;
        var mapped = curve.Mapped(map);
        var line = curve.Flatten(0.001).Select(map.Map).ToList();
        Assert.InRange(mapped.Start.DistanceTo(map.Map(curve.Start)), 0, 1e-9);
        Assert.InRange(mapped.End.DistanceTo(map.Map(curve.End)), 0, 1e-9);
        for (var i = 0; i <= 50; i++)
            Assert.InRange(Distance(line, mapped.At(i / 50.0)), 0, 0.002);
    });

    [Fact]
    public void A_similar_map_keeps_an_arc_an_arc()
    {
        var arc = new CircularArc(new(10, 20), new(130, 45), 31);
        var mapped = Assert.IsType<CircularArc>(arc.Mapped(Affine.Turn(1.1).Then(Affine.Stretch(new(3, 4), 0, 1.03, 1.03))));
        Assert.Equal(1.03 * arc.Length, mapped.Length, 1e-9);
        Assert.IsType<EllipticArc>(arc.Mapped(Affine.Stretch(new(3, 4), 0, 1.03, 1.04)));
    }

    [Theory]
    [InlineData(1e-12)]
    [InlineData(1e-8)]
    [InlineData(1e-4)]
    [InlineData(-1e-6)]
    public void A_hardly_bowed_arc_is_as_exact_as_a_straight_line(double bow)
    {
        Point from = new(1000, 2000), to = new(1800, 2600);
        var arc = new CircularArc(from, to, bow);
        Assert.Equal(1000, arc.Length, 1e-9);
        var middle = from.Toward(to, 0.5) + (bow * (to - from).Unit.TurnedRight);
        Assert.InRange(arc.At(0.5).DistanceTo(middle), 0, 1e-9);
        Assert.Equal(2, arc.Flatten(0.05).Count);
        var stretch = Affine.Stretch(from, Math.Atan2(600, 800), 1.1, 0.9);
        Assert.InRange(arc.Mapped(stretch).At(0.5).DistanceTo(stretch.Map(middle)), 0, 1e-8);
    }

    [Fact]
    public void No_bow_is_a_straight_edge()
    {
        Assert.IsType<StraightEdge>(CircularArc.Between(new(0, 0), new(5, 0), 0));
        Assert.IsType<StraightEdge>(CircularArc.Between(new(0, 0), new(5, 0), -1e-12));
    }

    [Fact]
    public void A_positive_bow_lies_to_the_right_of_travel()
    {
        Assert.InRange(new CircularArc(new(0, 0), new(100, 0), 20).At(0.5).DistanceTo(new(50, -20)), 0, 1e-12);
        Assert.InRange(new SplineEdge(new(0, 0), new(100, 0), [(50, 20)]).At(0.5).DistanceTo(new(50, -20)), 0, 1e-9);
    }

    [Fact]
    public void Fractions_outside_the_edge_throw() => RandomCurves.Any.Check(50, curve =>
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => curve.At(-1e-9));
        Assert.Throws<ArgumentOutOfRangeException>(() => curve.At(1 + 1e-9));
        Assert.Throws<ArgumentOutOfRangeException>(() => curve.At(double.NaN));
    });

    [Fact]
    public void Impossible_edges_throw()
    {
        Point p = new(3, 4), q = new(13, 4);
        Assert.Throws<ArgumentException>(() => new StraightEdge(p, p));
        Assert.Throws<ArgumentOutOfRangeException>(() => new CircularArc(p, q, 5.1));
        Assert.Throws<ArgumentOutOfRangeException>(() => new CircularArc(p, p, 1));
        Assert.Throws<ArgumentException>(() => new PolylineEdge([p]));
        Assert.Throws<ArgumentException>(() => new PolylineEdge([p, p, q]));
        Assert.Throws<ArgumentException>(() => new SplineEdge(p, q, [(6, 1), (5, 1)]));
        Assert.Throws<ArgumentException>(() => new SplineEdge(p, q, [(10, 1)]));
    }

    /// <summary>What chords may fall short by: at most one chord a kink; smooth parts lose about (turning per chord)^2 / 24.</summary>
    private static double Lost(EdgeCurve curve) => 1e-5 + ((curve is PolylineEdge ? curve.Breaks.Count - 2.0 : 0) / Chords);

    private static Point[] Walk(EdgeCurve curve, int chords = Chords) => [.. Enumerable.Range(0, chords + 1).Select(i => curve.At((double)i / chords))];

    private static double Sum(IReadOnlyList<Point> line) => Enumerable.Range(1, line.Count - 1).Sum(i => line[i].DistanceTo(line[i - 1]));

    private static Point AlongLine(IReadOnlyList<Point> line, double far)
    {
        for (var i = 1; i < line.Count; i++)
        {
            var step = line[i].DistanceTo(line[i - 1]);
            if (far <= step)
                return line[i - 1].Toward(line[i], far / step);
            far -= step;
        }

        return line[^1];
    }

    private static double Distance(IReadOnlyList<Point> line, Point p) => Enumerable.Range(1, line.Count - 1).Min(i =>
    {
        var step = line[i] - line[i - 1];
        return p.DistanceTo(line[i - 1].Toward(line[i], Math.Clamp((p - line[i - 1]).Dot(step) / step.Dot(step), 0, 1)));
    });
}
