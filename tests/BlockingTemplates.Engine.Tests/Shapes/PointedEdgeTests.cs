using BlockingTemplates.Engine.Shapes;
using CsCheck;

namespace BlockingTemplates.Engine.Tests.Shapes;

public class PointedEdgeTests
{
    private static double[] Even(int count) => [.. Enumerable.Range(0, count + 1).Select(k => (double)k / count)];

    private static double DistanceTo(EdgeCurve line, Point p) =>
        Enumerable.Range(0, 20001).Min(i => line.At(i / 20000.0).DistanceTo(p));

    [Fact]
    public void Three_scallops_over_a_chord_of_21_each_and_6_deep_are_three_arcs_of_the_published_length()
    {
        // Chord 21, height 6: arc 25.308373, segment area 89.254148 (matheass.eu, "Circular Sections").
        var basis = new StraightEdge(new(0, 0), new(63, 0));
        var edge = PointedEdge.On(basis, Even(3), PointShape.Scallop, 6);
        Assert.Equal(3 * 25.308373, edge.Length, 5);
        Outline ring = new(
            [new("lower", edge), new("right", new StraightEdge(new(63, 0), new(63, 40))), new("top", new StraightEdge(new(63, 40), new(0, 40))), new("left", new StraightEdge(new(0, 40), new(0, 0)))],
            [.. Enumerable.Range(1, 4).Select(i => new Corner($"corner {i}"))]);
        Assert.Equal((63 * 40) + (3 * 89.254148), ring.SignedArea(1e-4), 2);
    }

    [Fact]
    public void Points_are_pairs_of_sides_of_right_angled_triangles()
    {
        // Sides 3, 4, 5: half a point's width, its depth, its flank.
        var edge = PointedEdge.On(new StraightEdge(new(0, 0), new(60, 0)), Even(10), PointShape.Point, 4);
        Assert.Equal(20 * 5, edge.Length, 9);
        Assert.Equal(10, edge.Count);
        for (var k = 0; k <= 20; k++)
        {
            Assert.Equal(k / 20.0, edge.Places[k], 12);
            Assert.InRange(edge.At(edge.Places[k]).DistanceTo(new(3 * k, k % 2 == 1 ? -4 : 0)), 0, 1e-9);
        }
    }

    [Fact]
    public void Tips_stand_at_the_depth_over_any_line_and_valleys_on_it() =>
        Gen.Select(RandomCurves.Any, Gen.Int[2, 30], Gen.Bool).Check(60, x =>
        {
            var (basis, count, round) = x;
            var depth = 0.3 * Math.Min(basis.Length / count, PointedEdge.DeepestScallop(basis, Even(count)));
            if (depth < 1e-3)
                return;
            var edge = PointedEdge.On(basis, Even(count), round ? PointShape.Scallop : PointShape.Point, depth);
            for (var k = 0; k <= count; k++)
                Assert.InRange(edge.At(edge.Places[2 * k]).DistanceTo(basis.At((double)k / count)), 0, 1e-6);
            for (var k = 0; k < count; k++)
            {
                var tip = edge.At(edge.Places[(2 * k) + 1]);
                var (from, to) = (basis.At((double)k / count), basis.At((k + 1.0) / count));
                // Measured square to the straight line between the valleys, from where the base line is half-way.
                Assert.Equal(depth, (tip - basis.At((k + 0.5) / count)).Dot((to - from).Unit.TurnedRight), 6);
                Assert.Equal(tip.DistanceTo(from), tip.DistanceTo(to), 6);
            }
        });

    [Fact]
    public void A_scallop_is_one_arc_whose_halves_run_smoothly_into_each_other_at_the_tip()
    {
        var edge = PointedEdge.On(CircularArc.Between(new(0, 0), new(300, 0), 60), Even(6), PointShape.Scallop, 9);
        for (var k = 1; k < 12; k += 2)
        {
            var (before, after) = (edge.Direction(edge.Places[k] - 1e-7), edge.Direction(edge.Places[k] + 1e-7));
            Assert.InRange(Math.Abs(before.Cross(after)), 0, 1e-5);
            Assert.InRange((edge.Outward(edge.Places[k]) - after.TurnedRight).Length, 0, 1e-5);
        }
    }

    [Fact]
    public void Outward_at_a_tip_and_in_a_valley_is_half_way_between_its_flanks()
    {
        var edge = PointedEdge.On(new StraightEdge(new(0, 0), new(60, 0)), Even(10), PointShape.Point, 4);
        Assert.All(edge.Places.Skip(1).SkipLast(1), p => Assert.InRange((edge.Outward(p) - new Vector(0, -1)).Length, 0, 1e-9));
    }

    [Fact]
    public void The_deepest_scallop_is_a_half_circle_and_none_is_deeper()
    {
        var basis = new StraightEdge(new(0, 0), new(100, 0));
        Assert.Equal(10, PointedEdge.DeepestScallop(basis, Even(5)), 9);
        Assert.Equal(50 * Math.PI, PointedEdge.On(basis, Even(5), PointShape.Scallop, 10).Length, 6);
        Assert.Throws<ArgumentOutOfRangeException>(() => PointedEdge.On(basis, Even(5), PointShape.Scallop, 10.5));
    }

    [Fact]
    public void Mapped_and_reversed_it_has_the_same_tips()
    {
        var edge = PointedEdge.On(CircularArc.Between(new(0, 0), new(300, 0), 60), Even(7), PointShape.Scallop, 9);
        var map = Affine.Stretch(new(10, 20), 0.4, 1.05, 0.98);
        var mapped = Assert.IsType<PointedEdge>(edge.Mapped(map));
        var back = Assert.IsType<PointedEdge>(edge.Reversed());
        for (var k = 0; k <= 14; k++)
        {
            Assert.InRange(mapped.At(mapped.Places[k]).DistanceTo(map.Map(edge.At(edge.Places[k]))), 0, 1e-6);
            Assert.InRange(back.At(back.Places[k]).DistanceTo(edge.At(edge.Places[14 - k])), 0, 1e-6);
        }

        Assert.InRange(DistanceTo(mapped.Basis, mapped.At(mapped.Places[4])), 0, 0.02);
    }
}
