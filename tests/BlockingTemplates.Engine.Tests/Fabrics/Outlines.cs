using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Tests.Fabrics;

/// <summary>Invented outlines, millimetres.</summary>
internal static class Outlines
{
    internal static Outline Rectangle(double width, double height) => Of((0, 0, 0), (width, 0, 0), (width, height, 0), (0, height, 0));

    internal static Outline TurnedRectangle => Of((0, 0, 0), (800, 600, 0), (500, 1000, 0), (-300, 400, 0));

    internal static Outline Triangle => Of((0, 0, 40), (700, 600, -60), (-700, 600, 40));

    internal static Outline PinnedTriangle => Of((0, -60, 0), (820, 700, 0), (-820, 700, 0));

    internal static Outline Crescent => Of((-600, 0, 300), (600, 0, -180));

    internal static Outline PinnedCrescent => Of((-720, 0, 390), (720, 0, -230));

    internal static Outline Neckline => Of((-250, 0, 0), (250, 0, 0), (250, 600, 0), (90, 620, -85), (-90, 620, 0), (-250, 600, 0));

    internal static Outline ThinCrescent => Of((-700, 0, 60), (700, 0, -40));

    internal static Outline Points
    {
        get
        {
            var points = new PolylineEdge([.. Enumerable.Range(0, 21).Select(i => new Point(40 * i, i % 2 == 0 ? 0 : -30))]);
            return new(
                [new("points", points), new("right", new StraightEdge(new(800, 0), new(400, 500))), new("left", new StraightEdge(new(400, 500), new(0, 0)))],
                [new("a"), new("b"), new("c")]);
        }
    }

    internal static TheoryData<string> Names => ["rectangle", "turned rectangle", "triangle", "crescent", "neckline", "thin crescent", "points"];

    internal static Outline Named(string name) => name switch
    {
        "rectangle" => Rectangle(900, 400),
        "turned rectangle" => TurnedRectangle,
        "triangle" => Triangle,
        "crescent" => Crescent,
        "neckline" => Neckline,
        "thin crescent" => ThinCrescent,
        _ => Points,
    };

    /// <summary>Corners with the bow of the edge that starts there.</summary>
    internal static Outline Of(params (double X, double Y, double Bow)[] corners)
    {
        var n = corners.Length;
        return new(
            [.. corners.Select((c, i) => new Edge($"edge {i}", CircularArc.Between(new(c.X, c.Y), new(corners[(i + 1) % n].X, corners[(i + 1) % n].Y), c.Bow)))],
            [.. corners.Select((_, i) => new Corner($"corner {i}"))]);
    }
}
