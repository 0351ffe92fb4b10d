using BlockingTemplates.Engine.Shapes;
using CsCheck;

namespace BlockingTemplates.Engine.Tests.Shapes;

/// <summary>Random edges of every kind, as they are, mapped and reversed.</summary>
internal static class RandomCurves
{
    private static readonly Gen<Point> Point = Gen.Select(Gen.Double[-800, 800], Gen.Double[-800, 800], (x, y) => new Point(x, y));

    private static readonly Gen<(Point From, Point To)> Ends = Gen.Select(Point, Point).Where(p => p.Item1.DistanceTo(p.Item2) > 50);

    public static Gen<EdgeCurve> Straight { get; } = Ends.Select(e => (EdgeCurve)new StraightEdge(e.From, e.To));

    public static Gen<EdgeCurve> Arc { get; } =
        Gen.Select(Ends, Gen.Double[0.0005, 0.5], Gen.Bool, (e, bow, inward) => (EdgeCurve)new CircularArc(e.From, e.To, (inward ? -bow : bow) * e.From.DistanceTo(e.To)));

    public static Gen<EdgeCurve> Spline { get; } = Gen.Select(Ends, Gen.Double[-0.3, 0.3].Array[1, 6], Gen.Double[0.2, 0.8], (e, outs, shift) =>
    {
        var chord = e.From.DistanceTo(e.To);
        return (EdgeCurve)new SplineEdge(e.From, e.To, [.. outs.Select((o, i) => ((i + shift) / outs.Length * chord, o * chord))]);
    });

    public static Gen<EdgeCurve> Polyline { get; } =
        Gen.Select(Ends, Point.Array[0, 6], (e, between) => (Point[])[e.From, .. between, e.To])
            .Where(line => Enumerable.Range(1, line.Length - 1).All(i => line[i].DistanceTo(line[i - 1]) > 1))
            .Select(line => (EdgeCurve)new PolylineEdge(line));

    /// <summary>Maps that turn, shift, scale two directions differently and may mirror.</summary>
    public static Gen<Affine> Map { get; } = Gen.Select(Point, Gen.Double[-3, 3], Gen.Double[0.5, 1.6], Gen.Double[0.5, 1.6], Gen.Bool, (about, angle, along, across, mirrored) =>
        (mirrored ? Affine.MirrorLeftRight : Affine.Identity).Then(Affine.Stretch(about, angle, along, across)).Then(Affine.Shift(new(31, -17))));

    public static Gen<EdgeCurve> Any { get; } = Gen.Select(Gen.OneOf(Straight, Arc, Spline, Polyline), Map, Gen.Bool, Gen.Bool, (curve, map, mapped, reversed) =>
    {
        var placed = mapped ? curve.Mapped(map) : curve;
        return reversed ? placed.Reversed() : placed;
    });
}
