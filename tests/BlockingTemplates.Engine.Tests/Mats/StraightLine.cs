using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Tests.Mats;

/// <summary>A straight edge, all that these tests need of an outline.</summary>
internal sealed class StraightLine(Point from, Point to) : EdgeCurve
{
    public override double Length => from.DistanceTo(to);

    public static Outline Outline(IReadOnlyList<Point> ring) => new(
        [.. ring.Select((p, i) => new Edge($"edge {i}", new StraightLine(p, ring[(i + 1) % ring.Count])))],
        [.. ring.Select((_, i) => new Corner($"corner {i}"))]);

    public override Point At(double fraction) => fraction is 1 ? to : from.Toward(to, fraction);

    public override Vector Direction(double fraction) => (to - from).Unit;

    public override IReadOnlyList<Point> Flatten(double toleranceMm) => [from, to];

    public override EdgeCurve Mapped(Affine map) => new StraightLine(map.Map(from), map.Map(to));

    public override EdgeCurve Reversed() => new StraightLine(to, from);
}
