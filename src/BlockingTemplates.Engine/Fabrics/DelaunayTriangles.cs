using NetTopologySuite.Geometries;
using NetTopologySuite.Triangulate;
using NetTopologySuite.Triangulate.QuadEdge;
using Point = BlockingTemplates.Engine.Shapes.Point;

namespace BlockingTemplates.Engine.Fabrics;

/// <summary>Delaunay triangles of points (NetTopologySuite), sorted into those inside and outside a ring.</summary>
/// <remarks>
/// Points in line (a straight edge, a lattice) make the library's search lose its way, so each point is shifted by a hair,
/// a ten-millionth of the piece, for the triangulation alone; which side of the ring a triangle lies is then told by its
/// sides, not by its corners' places.
/// </remarks>
internal sealed class DelaunayTriangles
{
    private const double Hair = 1e-7;

    private readonly List<Triangle> _all = [];
    private readonly Dictionary<long, int> _ofSide = [];
    private readonly int _points;
    private readonly int _ring;

    /// <summary>Triangulates; the first points are the ring's, counter-clockwise.</summary>
    internal DelaunayTriangles(IReadOnlyList<Point> points, int ring)
    {
        (_points, _ring) = (points.Count, ring);
        var box = new Envelope();
        foreach (var p in points)
            box.ExpandToInclude(p.X, p.Y);
        var division = new QuadEdgeSubdivision(box, 0);
        var triangulator = new IncrementalDelaunayTriangulator(division);
        var hair = Hair * Math.Max(box.Width, box.Height);
        foreach (var i in HilbertOrder(points, box))
            triangulator.InsertSite(new Vertex(points[i].X + (hair * Scatter(2 * i)), points[i].Y + (hair * Scatter((2 * i) + 1)), i));
        foreach (Vertex[] corner in division.GetTriangleVertices(false))
        {
            var (a, b, c) = ((int)corner[0].Z, (int)corner[1].Z, (int)corner[2].Z);
            if (Twice(corner) < 0)
                (b, c) = (c, b);
            _all.Add(new(a, b, c));
            _ofSide[Side(a, b)] = _ofSide[Side(b, c)] = _ofSide[Side(c, a)] = _all.Count - 1;
        }
    }

    /// <summary>Ring sides, by their first node, that are no side of a triangle inside.</summary>
    internal List<int> MissingSides() =>
        [.. Enumerable.Range(0, _ring).Where(i => !_ofSide.ContainsKey(Side(i, (i + 1) % _ring)))];

    /// <summary>The triangles inside the ring, all of whose sides must be there.</summary>
    internal List<Triangle> Inside()
    {
        var inside = new bool[_all.Count];
        var open = new Stack<int>();
        for (var i = _ring - 1; i >= 0; i--)
            open.Push(_ofSide[Side(i, (i + 1) % _ring)]);
        while (open.TryPop(out var t))
        {
            if (inside[t])
                continue;
            inside[t] = true;
            var (a, b, c) = _all[t];
            Cross(a, b);
            Cross(b, c);
            Cross(c, a);
        }

        return [.. _all.Where((_, t) => inside[t])];

        void Cross(int a, int b)
        {
            var onRing = a < _ring && b == (a + 1) % _ring;
            if (!onRing && _ofSide.TryGetValue(Side(b, a), out var other))
                open.Push(other);
        }
    }

    /// <summary>Twice the signed area of a triangle as it was found, hairs included.</summary>
    private static double Twice(Vertex[] t) =>
        ((t[1].X - t[0].X) * (t[2].Y - t[0].Y)) - ((t[1].Y - t[0].Y) * (t[2].X - t[0].X));

    /// <summary>One number for a directed side; such that a dictionary spreads them well.</summary>
    private long Side(int a, int b) => ((long)a * _points) + b;

    /// <summary>A number from -1 to 1 that looks like chance and is the same each time (M. O'Neill's PCG step and hash).</summary>
    private static double Scatter(int i)
    {
        var state = ((uint)i * 747796405u) + 2891336453u;
        var word = ((state >> (int)((state >> 28) + 4)) ^ state) * 277803737u;
        return ((((word >> 22) ^ word) / (double)uint.MaxValue) * 2) - 1;
    }

    /// <summary>Points along Hilbert's curve, so that each is inserted near the one before.</summary>
    private static int[] HilbertOrder(IReadOnlyList<Point> points, Envelope box)
    {
        const int Cells = 1 << 15;
        var scale = (Cells - 1) / Math.Max(box.Width, box.Height);
        var keys = new long[points.Count];
        for (var i = 0; i < keys.Length; i++)
            keys[i] = Place((int)((points[i].X - box.MinX) * scale), (int)((points[i].Y - box.MinY) * scale));
        var order = Enumerable.Range(0, keys.Length).ToArray();
        Array.Sort(keys, order);
        return order;

        static long Place(int x, int y)
        {
            var place = 0L;
            for (var s = Cells / 2; s > 0; s /= 2)
            {
                var (rx, ry) = ((x & s) > 0 ? 1 : 0, (y & s) > 0 ? 1 : 0);
                place += (long)s * s * ((3 * rx) ^ ry);
                if (ry != 0)
                    continue;
                if (rx == 1)
                    (x, y) = (s - 1 - (x & (s - 1)), s - 1 - (y & (s - 1)));
                (x, y) = (y & (s - 1), x & (s - 1));
            }

            return place;
        }
    }
}
