using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Tests.Shapes;

/// <summary>Outlines by hand.</summary>
internal static class Rings
{
    /// <summary>Straight edges "edge 0" ... between corners "corner 0" ...</summary>
    public static Outline Polygon(params Point[] corners) =>
        Of([.. corners.Select((c, i) => (c, (EdgeCurve)new StraightEdge(c, corners[(i + 1) % corners.Length])))]);

    public static Outline Of(params (Point Corner, EdgeCurve Curve)[] edges) =>
        new([.. edges.Select((e, i) => new Edge($"edge {i}", e.Curve))], [.. edges.Select((_, i) => new Corner($"corner {i}"))]);

    /// <summary>A circle of so many equal arcs whose corners are all smooth.</summary>
    public static Outline Circle(Point centre, double radius, int arcs, double startAngle)
    {
        Point At(int i) => centre + (radius * Vector.AtAngle(startAngle + (2 * Math.PI * i / arcs)));
        var bow = radius * (1 - Math.Cos(Math.PI / arcs));
        return new(
            [.. Enumerable.Range(0, arcs).Select(i => new Edge($"edge {i}", new CircularArc(At(i), At((i + 1) % arcs), bow)))],
            [.. Enumerable.Range(0, arcs).Select(i => new Corner($"corner {i}", true))]);
    }
}
