using BlockingTemplates.Engine.Shapes;
using NetTopologySuite.Algorithm.Locate;
using NetTopologySuite.Geometries;
using Location = NetTopologySuite.Geometries.Location;
using Point = BlockingTemplates.Engine.Shapes.Point;

namespace BlockingTemplates.Engine.Fabrics;

/// <summary>Points on hexagonal lattices inside a ring, finer near it: each lattice holds every point of the next coarser one.</summary>
internal sealed class HexagonalPoints
{
    private const double Clearance = 0.62;
    private static readonly double RowHeight = Math.Sqrt(3) / 2;

    private readonly IReadOnlyList<Point> _ring;
    private readonly double[] _spacing;
    private readonly MeshGrading _grading;
    private readonly IndexedPointInAreaLocator _inside;
    private readonly Point _origin;
    private readonly List<Point> _points = [];

    internal HexagonalPoints(IReadOnlyList<Point> ring, MeshGrading grading)
    {
        (_ring, _grading) = (ring, grading);
        var n = ring.Count;
        _spacing = [.. Enumerable.Range(0, n).Select(i => (ring[i].DistanceTo(ring[(i + 1) % n]) + ring[i].DistanceTo(ring[(i + n - 1) % n])) / 2)];
        _inside = new(new Polygon(new LinearRing([.. ring.Append(ring[0]).Select(p => new Coordinate(p.X, p.Y))])));
        _origin = Box.Around(ring).Centre;
    }

    /// <summary>The points, in a fixed order.</summary>
    internal List<Point> Find()
    {
        var box = Box.Around(_ring);
        Split(default, Math.Max(box.Width, box.Height) / 2, [.. Enumerable.Range(0, _ring.Count)]);
        return _points;
    }

    /// <summary>A square about a centre (from the origin of the lattices): quartered until it is no wider than two node distances, then filled.</summary>
    private void Split(Vector middle, double half, int[] near)
    {
        var centre = _origin + middle;
        var radius = half * Math.Sqrt(2);
        var greatest = _grading.InsideMm;
        var least = _grading.InsideMm;
        foreach (var i in near)
        {
            var apart = centre.DistanceTo(_ring[i]);
            greatest = Math.Min(greatest, _spacing[i] + (_grading.Growth * (apart + radius)));
            least = Math.Min(least, _spacing[i] + (_grading.Growth * Math.Max(0, apart - radius)));
        }

        // A ring node matters where it makes the cloth finer, or stands close enough to crowd a point.
        int[] kept = [.. near.Where(i => centre.DistanceTo(_ring[i]) - radius is var apart
            && (_spacing[i] + (_grading.Growth * Math.Max(0, apart)) <= greatest || apart <= 2 * Math.Max(greatest, _spacing[i])))];
        if (half > least)
        {
            var h = half / 2;
            Split(middle + new Vector(-h, -h), h, kept);
            Split(middle + new Vector(h, -h), h, kept);
            Split(middle + new Vector(-h, h), h, kept);
            Split(middle + new Vector(h, h), h, kept);
            return;
        }

        Fill(middle, half, least, kept);
    }

    private void Fill(Vector middle, double half, double least, int[] near)
    {
        var level = Math.Max(0, (int)Math.Ceiling(Math.Log2(_grading.InsideMm / least) - 0.5));
        var pitch = _grading.InsideMm / (1 << level);
        var row = RowHeight * pitch;
        var (left, lower) = (middle.X - half, middle.Y - half);
        for (var r = (long)Math.Ceiling(lower / row); r * row < lower + (2 * half); r++)
        {
            var shift = (r & 1) * 0.5;
            for (var c = (long)Math.Ceiling((left / pitch) - shift); (c + shift) * pitch < left + (2 * half); c++)
                Take(r, c, level, _origin + new Vector((c + shift) * pitch, r * row), near);
        }
    }

    /// <summary>Takes a point of a lattice where none coarser would do and the ring does not crowd it.</summary>
    private void Take(long r, long c, int level, Point p, int[] near)
    {
        // In the lattice's own axes (i, j) the next coarser lattice holds the even pairs.
        var j = r;
        var i = c - (r >> 1);
        var own = level;
        while (own > 0 && (i & 1) == 0 && (j & 1) == 0)
        {
            i >>= 1;
            j >>= 1;
            own--;
        }

        var wanted = _grading.InsideMm;
        foreach (var k in near)
            wanted = Math.Min(wanted, _spacing[k] + (_grading.Growth * p.DistanceTo(_ring[k])));
        if (own > Math.Max(0, Math.Ceiling(Math.Log2(_grading.InsideMm / wanted) - 0.5)))
            return;
        foreach (var k in near)
        {
            var (a, b) = (_ring[k], _ring[(k + 1) % _ring.Count]);
            var side = b - a;
            var along = Math.Clamp((p - a).Dot(side) / side.Dot(side), 0, 1);
            if (p.DistanceTo(a.Toward(b, along)) < Clearance * Math.Max(side.Length, 0.8 * wanted))
                return;
        }

        if (_inside.Locate(new Coordinate(p.X, p.Y)) == Location.Interior)
            _points.Add(p);
    }
}
