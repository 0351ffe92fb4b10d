using BlockingTemplates.Engine.Fabrics;
using BlockingTemplates.Engine.Shapes;
using CsCheck;

namespace BlockingTemplates.Engine.Tests.Fabrics;

public class TriangleMesherTests
{
    public static TheoryData<string> Names => Outlines.Names;

    [Theory]
    [MemberData(nameof(Names))]
    public void Fills_the_polygon_through_its_rim_nodes_exactly(string name)
    {
        var mesh = Pinned(Outlines.Named(name));
        var ring = mesh.Nodes.Take(mesh.Rim.Count).ToList();
        var twice = ring.Select((p, i) => (p - Point.Origin).Cross(ring[(i + 1) % ring.Count] - Point.Origin)).Sum();
        Assert.Equal(1, mesh.Area() / (twice / 2), 1e-10);
        Assert.Equal(Outlines.Named(name).SignedArea(), mesh.Area(), 0.001 * mesh.Area());
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Joins_triangles_side_to_side_with_the_rim_as_only_border(string name)
    {
        var mesh = Pinned(Outlines.Named(name));
        var sides = mesh.Triangles.SelectMany(t => new[] { (t.A, t.B), (t.B, t.C), (t.C, t.A) }).ToList();
        var directed = sides.ToHashSet();
        Assert.Equal(sides.Count, directed.Count);
        var border = sides.Where(s => !directed.Contains((s.Item2, s.Item1))).Order().ToList();
        Assert.Equal(Enumerable.Range(0, mesh.Rim.Count).Select(i => (i, (i + 1) % mesh.Rim.Count)), border);
    }

    [Theory]
    [InlineData("rectangle")]
    [InlineData("turned rectangle")]
    [InlineData("triangle")]
    [InlineData("crescent")]
    [InlineData("neckline")]
    [InlineData("points")]
    public void Has_no_slivers(string name)
    {
        var mesh = Pinned(Outlines.Named(name));
        var angles = mesh.Triangles.Select(t => TriangleMesh.SmallestAngle(mesh.Nodes[t.A], mesh.Nodes[t.B], mesh.Nodes[t.C])).ToList();
        Assert.Equal(angles.Min(), mesh.SmallestAngleDegrees);
        Assert.True(angles.Min() > 15, $"{angles.Min()}");

        // A corner of the outline may itself be sharper.
        var away = mesh.Triangles.Zip(angles).Where(t => !AtCorner(t.First.A) && !AtCorner(t.First.B) && !AtCorner(t.First.C)).Select(t => t.Second).ToList();
        Assert.True(away.Count(a => a < 20) <= 0.001 * away.Count, $"{away.Count(a => a < 20)} of {away.Count}");
        Assert.True(angles.Average() > 48);

        bool AtCorner(int node) => node < mesh.Rim.Count && mesh.Rim[node].Fraction == 0;
    }

    [Fact]
    public void Is_no_sharper_than_the_tips_of_a_thin_crescent()
    {
        // Half angles of the two arcs at a tip: 2 atan(2 bow / chord).
        var tip = 2 * (Math.Atan(120 / 1400.0) - Math.Atan(80 / 1400.0)) * 180 / Math.PI;
        Assert.True(Pinned(Outlines.ThinCrescent).SmallestAngleDegrees > 0.9 * tip);
    }

    [Theory]
    [InlineData("turned rectangle")]
    [InlineData("crescent")]
    [InlineData("points")]
    public void No_node_stands_in_the_circle_through_a_triangle(string name)
    {
        // Delaunay's condition by trying every node, up to the hair by which points are shifted; border triangles may see
        // nodes of another part of a concave outline, so only nodes are tried that share a triangle's neighbourhood.
        var outline = Outlines.Named(name);
        var mesh = TriangleMesher.Mesh(outline, new() { EdgeMm = 20, InsideMm = 40 });
        foreach (var t in mesh.Triangles)
        {
            var (a, b, c) = (mesh.Nodes[t.A], mesh.Nodes[t.B], mesh.Nodes[t.C]);
            for (var i = 0; i < mesh.Nodes.Count; i++)
            {
                if (i == t.A || i == t.B || i == t.C)
                    continue;
                var (u, v, w) = (a - mesh.Nodes[i], b - mesh.Nodes[i], c - mesh.Nodes[i]);
                var depth = (u.Dot(u) * v.Cross(w)) + (v.Dot(v) * w.Cross(u)) + (w.Dot(w) * u.Cross(v));
                Assert.True(depth < 1e-2 * Math.Pow(Math.Max(u.Length, Math.Max(v.Length, w.Length)), 3), $"{depth}");
            }
        }
    }

    [Fact]
    public void Resolves_a_stitch_and_grows_away_from_it()
    {
        var mesh = TriangleMesher.Mesh(Outlines.Rectangle(300, 200), new() { EdgeMm = 15, InsideMm = 25, NodesPerStitch = 4, FinePlaces = [new(0, 0.5, 6), new(1, 0, 6)] });
        var arcs = mesh.Rim.Select(r => r.ArcMm).ToList();
        foreach (var arc in new[] { 147, 148.5, 150, 151.5, 153, 297, 298.5, 300, 301.5, 303 })
            Assert.Contains(arcs, a => Math.Abs(a - arc) < 1e-9);
        var steps = arcs.Zip(arcs.Skip(1).Append(mesh.RimLengthMm), (a, b) => b - a).ToList();
        Assert.All(steps, s => Assert.InRange(s, 0.5, 15.001));
        for (var i = 0; i < steps.Count; i++)
            Assert.InRange(steps[(i + 1) % steps.Count] / steps[i], 1 / 1.6, 1.6);
    }

    [Fact]
    public void Gives_the_same_mesh_each_time()
    {
        var (a, b) = (Pinned(Outlines.Crescent), Pinned(Outlines.Crescent));
        Assert.Equal(a.Nodes, b.Nodes);
        Assert.Equal(a.Triangles, b.Triangles);
        Assert.Equal(a.Rim, b.Rim);
    }

    [Fact]
    public void Meshes_pieces_drawn_by_chance()
    {
        Gen.Select(Gen.Double[0.5, 1.5].Array[3, 9], Gen.Double[-0.2, 0.2].Array[9], Gen.Double[5, 40]).Sample(
            (radii, bows, fine) =>
            {
                var n = radii.Length;
                (double X, double Y)[] at = [.. radii.Select((r, i) => (300 * r * Math.Cos(2 * Math.PI * i / n), 300 * r * Math.Sin(2 * Math.PI * i / n)))];
                var outline = Outlines.Of([.. at.Select((p, i) => (p.X, p.Y, Math.Round(bows[i] / n * 3 * 150, 1)))]);
                var mesh = TriangleMesher.Mesh(outline, new() { EdgeMm = fine, InsideMm = 2 * fine });
                Assert.Equal(outline.SignedArea(), mesh.Area(), 0.02 * mesh.Area());
                Assert.True(mesh.SmallestAngleDegrees > 8, $"{mesh.SmallestAngleDegrees}");
            },
            iter: 60,
            seed: "0000000000001");
    }

    [Fact]
    public void Refuses_what_is_no_outline()
    {
        var grading = new MeshGrading { EdgeMm = 20, InsideMm = 40 };
        Assert.Throws<ArgumentException>(() => TriangleMesher.Mesh(Outlines.Of((0, 0, 0), (0, 100, 0), (100, 100, 0)), grading));
        Assert.Throws<ArgumentException>(() => TriangleMesher.Mesh(Outlines.Of((0, 0, 0), (300, 0, 0), (0, 200, 0), (300, 250, 0)), grading));
        Assert.Throws<ArgumentException>(() => TriangleMesher.Mesh(Outlines.Triangle, grading with { NodesPerStitch = 3 }));
        Assert.Throws<ArgumentException>(() => TriangleMesher.Mesh(Outlines.Triangle, grading with { EdgeMm = 0 }));
    }

    private static TriangleMesh Pinned(Outline outline) => PinnedPiece.Of(outline, outline, 50, 12, 30).Mesh;
}
