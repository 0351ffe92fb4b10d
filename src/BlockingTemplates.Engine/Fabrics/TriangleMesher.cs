using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Fabrics;

/// <summary>Meshes an outline with triangles, graded, the same way each time.</summary>
/// <remarks>
/// Nodes along the outline, hexagonal points inside, Delaunay's triangulation (NetTopologySuite), points moved to the middle
/// of their neighbours (Laplacian smoothing) and triangulated anew; a side of the outline that is no side of a triangle is
/// halved until all are, near corners at powers of 2 so that halving ends (J. Ruppert, J. Algorithms 18 (1995) 548-585).
/// </remarks>
public static class TriangleMesher
{
    private const int SmoothingSteps = 6;
    private const int MostHalvings = 40;

    /// <summary>The mesh of an outline.</summary>
    /// <param name="outline">A counter-clockwise outline that does not cross itself.</param>
    /// <param name="grading">How fine, and where.</param>
    /// <exception cref="ArgumentException">The outline is clockwise or crosses or touches itself.</exception>
    public static TriangleMesh Mesh(Outline outline, MeshGrading grading)
    {
        ArgumentNullException.ThrowIfNull(outline);
        ArgumentNullException.ThrowIfNull(grading);
        grading.Check();
        if (!(outline.SignedArea() > 0))
            throw new ArgumentException("The outline must run counter-clockwise.", nameof(outline));
        var spacing = new RimSpacing(outline, grading);
        var rim = spacing.Arcs().Select(spacing.NodeAt).ToList();
        var ring = rim.Select(spacing.PointAt).ToList();
        while (rim.Count < 3)
            Halve(spacing, rim, ring, rim.Count - 1);
        Conform(spacing, rim, ring, []);
        var inside = new HexagonalPoints(ring, grading).Find();
        var triangles = Conform(spacing, rim, ring, inside);
        Smooth(ring, inside, triangles);
        triangles = Conform(spacing, rim, ring, inside);
        return Kept(spacing, rim, [.. ring, .. inside], triangles);
    }

    /// <summary>Halves sides of the ring until each is a side of a triangle.</summary>
    private static List<Triangle> Conform(RimSpacing spacing, List<RimNode> rim, List<Point> ring, List<Point> inside)
    {
        for (var round = 0; round < MostHalvings; round++)
        {
            KeepClear(ring, inside);
            var all = new DelaunayTriangles([.. ring, .. inside], ring.Count);
            var missing = all.MissingSides();
            if (missing.Count == 0)
                return all.Inside();
            for (var k = missing.Count - 1; k >= 0; k--)
                Halve(spacing, rim, ring, missing[k]);
        }

        throw new ArgumentException("The outline crosses or touches itself, or nearly: it cannot be meshed.");
    }

    private static void Halve(RimSpacing spacing, List<RimNode> rim, List<Point> ring, int side)
    {
        var from = rim[side].ArcMm;
        var to = side + 1 < rim.Count ? rim[side + 1].ArcMm : spacing.Length;
        var starts = spacing.EdgeStart.Contains(from);
        var ends = spacing.EdgeStart.Contains(to);
        var part = (to - from) / 2;
        if (starts != ends)
        {
            part = Math.Pow(2, Math.Round(Math.Log2(part)));
            part = starts ? part : to - from - part;
        }

        var node = spacing.NodeAt(from + part);
        rim.Insert(side + 1, node);
        ring.Insert(side + 1, spacing.PointAt(node));
    }

    /// <summary>Takes out inner points within the circle over a side of the ring, which would hide that side.</summary>
    private static void KeepClear(List<Point> ring, List<Point> inside)
    {
        if (inside.Count == 0)
            return;
        var longest = Enumerable.Range(0, ring.Count).Max(i => ring[i].DistanceTo(ring[(i + 1) % ring.Count]));
        var grid = new PointGrid(inside, longest);
        var crowding = new HashSet<int>();
        for (var i = 0; i < ring.Count; i++)
        {
            var next = ring[(i + 1) % ring.Count];
            var middle = ring[i].Toward(next, 0.5);
            var radius = ring[i].DistanceTo(next) / 2 * 1.05;
            crowding.UnionWith(grid.Within(middle, radius));
        }

        if (crowding.Count == 0)
            return;
        var kept = inside.Where((_, k) => !crowding.Contains(k)).ToList();
        inside.Clear();
        inside.AddRange(kept);
    }

    /// <summary>Moves each inner point to the mean of its neighbours, several times.</summary>
    private static void Smooth(List<Point> ring, List<Point> inside, List<Triangle> triangles)
    {
        var first = ring.Count;
        var at = new Point[first + inside.Count];
        ring.CopyTo(at);
        inside.CopyTo(at, first);
        for (var step = 0; step < SmoothingSteps; step++)
        {
            var sum = new Vector[at.Length];
            var count = new int[at.Length];
            foreach (var (a, b, c) in triangles)
            {
                Gather(a, b, c);
                Gather(b, c, a);
                Gather(c, a, b);
            }

            for (var i = first; i < at.Length; i++)
            {
                if (count[i] > 0)
                    at[i] += 0.8 / count[i] * sum[i];
            }

            void Gather(int i, int j, int k)
            {
                sum[i] += (at[j] - at[i]) + (at[k] - at[i]);
                count[i] += 2;
            }
        }

        for (var i = first; i < at.Length; i++)
            inside[i - first] = at[i];
    }

    private static TriangleMesh Kept(RimSpacing spacing, List<RimNode> rim, List<Point> nodes, List<Triangle> triangles)
    {
        var number = new int[nodes.Count];
        Array.Fill(number, -1);
        foreach (var (a, b, c) in triangles)
            number[a] = number[b] = number[c] = 0;
        var kept = new List<Point>();
        for (var i = 0; i < nodes.Count; i++)
        {
            if (number[i] < 0)
                continue;
            number[i] = kept.Count;
            kept.Add(nodes[i]);
        }

        return new(kept, [.. triangles.Select(t => new Triangle(number[t.A], number[t.B], number[t.C]))], rim, spacing.Length);
    }
}
