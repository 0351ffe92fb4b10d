using NetTopologySuite.Geometries;

namespace BlockingTemplates.Engine.Shapes;

/// <summary>A ring of named edges between corners, counter-clockwise; millimetres. Immutable.</summary>
/// <remarks>Edge i runs from corner i to corner i+1 (the last one to corner 0).</remarks>
public sealed class Outline
{
    /// <summary>How finely rings are flattened for files and for cover searches, in millimetres.</summary>
    public const double FlatteningMm = 0.05;

    private const double ClosingMm = 1e-6;

    /// <summary>An outline of edges that join end to end (within 1e-6 mm) and as many corners.</summary>
    public Outline(IReadOnlyList<Edge> edges, IReadOnlyList<Corner> corners)
    {
        ArgumentNullException.ThrowIfNull(edges);
        ArgumentNullException.ThrowIfNull(corners);
        if (edges.Count == 0 || edges.Count != corners.Count)
            throw new ArgumentException("An outline has as many corners as edges, at least one.", nameof(edges));
        for (var i = 0; i < edges.Count; i++)
        {
            if (edges[i].Curve.End.DistanceTo(edges[(i + 1) % edges.Count].Curve.Start) > ClosingMm)
                throw new ArgumentException($"Edge {i} does not end where the next one starts.", nameof(edges));
        }

        Edges = edges;
        Corners = corners;
    }

    /// <summary>The edges in order.</summary>
    public IReadOnlyList<Edge> Edges { get; }

    /// <summary>The corners in order, corner i at the start of edge i.</summary>
    public IReadOnlyList<Corner> Corners { get; }

    /// <summary>Length all round, in millimetres.</summary>
    public double Length => Edges.Sum(e => e.Curve.Length);

    /// <summary>Where corner i stands.</summary>
    public Point CornerAt(int index) => Edges[index].Curve.Start;

    /// <summary>The ring as points, the first not repeated; lines between them stay within a distance of the outline.</summary>
    /// <param name="toleranceMm">That distance, in millimetres, above 0.</param>
    public IReadOnlyList<Point> Ring(double toleranceMm = FlatteningMm) =>
        [.. Edges.SelectMany(e => e.Curve.Flatten(toleranceMm).SkipLast(1))];

    /// <summary>Area inside the flattened ring, in square millimetres; negative for a clockwise ring.</summary>
    public double SignedArea(double toleranceMm = FlatteningMm)
    {
        var ring = Ring(toleranceMm);
        var twice = 0.0;
        for (var i = 0; i < ring.Count; i++)
            twice += (ring[i] - Point.Origin).Cross(ring[(i + 1) % ring.Count] - Point.Origin);
        return twice / 2;
    }

    /// <summary>Area of the flattened ring's convex hull, in square millimetres: 0 for a ring all on one line.</summary>
    public double HullArea() => new MultiPoint([.. Ring().Select(p => new NetTopologySuite.Geometries.Point(p.X, p.Y))]).ConvexHull().Area;

    /// <summary>The image under a map of the plane; a map that exchanges left and right throws.</summary>
    public Outline Mapped(Affine map)
    {
        if (map.Determinant <= 0)
            throw new ArgumentException("The map must keep left and right.", nameof(map));
        return new([.. Edges.Select(e => e with { Curve = e.Curve.Mapped(map) })], Corners);
    }

    /// <summary>The outline seen from the other side: left and right exchanged, still counter-clockwise.</summary>
    /// <remarks>Edges come in reverse order: edge i becomes edge n-1-i, travelled the other way.</remarks>
    public Outline SeenFromBehind()
    {
        var n = Edges.Count;
        return new(
            [.. Enumerable.Range(0, n).Select(i => Edges[n - 1 - i]).Select(e => e with { Curve = e.Curve.Mapped(Affine.MirrorLeftRight).Reversed() })],
            [.. Enumerable.Range(0, n).Select(i => Corners[(n - i) % n])]);
    }

    /// <summary>The polygon of the flattened ring; a ring of fewer than three points throws.</summary>
    public Polygon ToPolygon(double toleranceMm = FlatteningMm)
    {
        var ring = Ring(toleranceMm).Select(p => new Coordinate(p.X, p.Y)).ToList();
        ring.Add(ring[0].Copy());
        return new Polygon(new LinearRing([.. ring]));
    }
}
