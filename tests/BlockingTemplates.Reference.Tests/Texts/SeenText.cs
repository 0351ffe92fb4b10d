using BlockingTemplates.Engine.Shapes;
using NetTopologySuite.Geometries;
using Point = BlockingTemplates.Engine.Shapes.Point;

namespace BlockingTemplates.Reference.Tests.Texts;

// A text as it comes to stand on its page: the corners of its ink, the box round them, and what of that the clip lets through.
internal sealed record SeenText(string Text, IReadOnlyList<Point> Corners, Box Ink, Box Seen)
{
    private const double TouchMm = 0.005;

    public bool IsCut => Seen != Ink;

    // Level texts by their boxes; turned ones by the polygons of their ink (NetTopologySuite).
    public bool Overlaps(SeenText other) =>
        Seen.Grown(-TouchMm).Overlaps(other.Seen) && ((IsLevel && other.IsLevel) || Polygon().Buffer(-TouchMm).Intersects(other.Polygon()));

    private bool IsLevel => Corners[0].X == Corners[1].X || Corners[0].Y == Corners[1].Y;

    private Polygon Polygon() => new(new LinearRing([.. Corners.Append(Corners[0]).Select(c => new Coordinate(c.X, c.Y))]));
}
