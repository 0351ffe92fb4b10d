using BlockingTemplates.Engine.Shapes;
using CsCheck;

namespace BlockingTemplates.Engine.Tests.Shapes;

public sealed class RigidFitTests
{
    /// <summary>Two unlike outlines of three edges each, of every kind of curve.</summary>
    private static readonly Gen<(Outline Moving, Outline Target)> Pair = Gen.Select(Ring(), Ring());

    [Fact]
    public void Without_an_anchor_pulls_sum_to_nothing_and_no_turn_lowers_the_integral() => Pair.Check(40, x =>
    {
        var laid = x.Moving.Mapped(RigidFit.Lay(x.Moving, x.Target, null));
        var sum = Pulls(laid, x.Target).Aggregate(default(Vector), (a, p) => a + (p.Weight * p.Pull));
        Assert.InRange(sum.Length / x.Target.Length, 0, 1e-3);
        NoTurnLowers(laid, x.Target, Middle(laid, x.Target));
    });

    [Fact]
    public void With_an_anchor_it_meets_its_mark_and_no_turn_about_it_lowers_the_integral() => Pair.Check(40, x =>
    {
        var (from, to) = (x.Moving.Edges[1].Curve.At(0.5), x.Target.Edges[1].Curve.At(0.5));
        var map = RigidFit.Lay(x.Moving, x.Target, (from, to));
        Assert.InRange(map.Map(from).DistanceTo(to), 0, 1e-9);
        Assert.Equal(1, map.Determinant, 1e-12);
        NoTurnLowers(x.Moving.Mapped(map), x.Target, to);
    });

    [Fact]
    public void An_outline_is_laid_back_on_itself() => Pair.Check(20, x =>
    {
        var away = x.Target.Mapped(Affine.Turn(2.2).Then(Affine.Shift(new(700, -90))));
        var back = away.Mapped(RigidFit.Lay(away, x.Target, null));
        for (var e = 0; e < 3; e++)
            Assert.InRange(back.Edges[e].Curve.At(0.3).DistanceTo(x.Target.Edges[e].Curve.At(0.3)), 0, 1e-8);
    });

    [Fact]
    public void Outlines_of_different_edges_throw()
    {
        var three = Rings.Polygon(new(0, 0), new(10, 0), new(0, 10));
        Assert.Throws<ArgumentException>(() => RigidFit.Lay(three, Rings.Polygon(new(0, 0), new(10, 0), new(10, 10), new(0, 10)), null));
    }

    private static Gen<Outline> Ring() => Gen.Select(RandomCurves.Any, Gen.Double[100, 900], (curve, far) =>
    {
        var apex = curve.Start.Toward(curve.End, 0.4) + (far * (curve.End - curve.Start).Unit.TurnedLeft);
        return Rings.Of((curve.Start, curve), (curve.End, CircularArc.Between(curve.End, apex, 20)), (apex, new StraightEdge(apex, curve.Start)));
    });

    /// <summary>The pulls by a slow even sum (midpoint rule).</summary>
    private static List<(double Weight, Vector Pull, Point At)> Pulls(Outline laid, Outline target)
    {
        const int Parts = 3000;
        return [.. target.Edges.SelectMany((e, i) => Enumerable.Range(0, Parts).Select(k =>
        {
            var f = (k + 0.5) / Parts;
            var at = e.Curve.At(f);
            return (e.Curve.Length / Parts, at - laid.Edges[i].Curve.At(f), at);
        }))];
    }

    private static Point Middle(Outline laid, Outline target)
    {
        var pulls = Pulls(laid, target);
        var total = pulls.Sum(p => p.Weight);
        return new(pulls.Sum(p => p.Weight * p.At.X) / total, pulls.Sum(p => p.Weight * p.At.Y) / total);
    }

    private static void NoTurnLowers(Outline laid, Outline target, Point about)
    {
        var pulls = Pulls(laid, target);
        double Integral(double angle)
        {
            var turn = Affine.Shift(Point.Origin - about).Then(Affine.Turn(angle)).Then(Affine.Shift(about - Point.Origin));
            return pulls.Sum(p => (p.At - turn.Map(p.At - p.Pull)) is var pull ? p.Weight * pull.Dot(pull) : 0);
        }

        var least = Integral(0);
        foreach (var angle in new[] { 1e-4, 1e-3, 0.01, 0.1, 0.5, 1, 2, 3 })
            Assert.True(Integral(angle) > least && Integral(-angle) > least, $"a turn of {angle} lowers the integral");
    }
}
