using BlockingTemplates.Engine.Fabrics;
using CsCheck;

namespace BlockingTemplates.Engine.Tests.Fabrics;

public class RimStitchesTests
{
    private static readonly TriangleMesh Mesh = TriangleMesher.Mesh(
        Outlines.Triangle,
        new() { EdgeMm = 12, InsideMm = 60, NodesPerStitch = 4, FinePlaces = [new(0, 0, 8), new(0, 0.3, 8), new(1, 0.5, 6), new(2, 0.9, 8)] });

    [Fact]
    public void A_stitch_lies_on_nodes_as_a_fine_sampling_of_it_does()
    {
        Gen.Select(Gen.Int[0, 2], Gen.Double[0, 1], Gen.Double[0.5, 30]).Sample(
            (edge, fraction, width) =>
            {
                var parts = RimStitches.Parts(Mesh, edge, fraction, width);
                Assert.Equal(1, parts.Sum(p => p.Part), 1e-12);

                // Slow and obvious: the mean of 2000 places along the stitch, each between the two nodes beside it.
                var arcs = Mesh.Rim.Select(r => r.ArcMm).Append(Mesh.RimLengthMm).ToList();
                var slow = new double[Mesh.Rim.Count];
                for (var k = 0; k < 2000; k++)
                {
                    var arc = RimStitches.ArcOf(Mesh, edge, fraction) + (width * (((k + 0.5) / 2000) - 0.5));
                    arc = (arc + Mesh.RimLengthMm) % Mesh.RimLengthMm;
                    var i = arcs.FindLastIndex(a => a <= arc);
                    var t = (arc - arcs[i]) / (arcs[i + 1] - arcs[i]);
                    slow[i] += (1 - t) / 2000;
                    slow[(i + 1) % slow.Length] += t / 2000;
                }

                foreach (var (node, part) in parts)
                    slow[node] -= part;
                Assert.All(slow, off => Assert.Equal(0, off, 1e-3));
            },
            iter: 200,
            seed: "0000000000001");
    }

    [Fact]
    public void Half_a_stitch_apart_the_parts_are_a_quarter_a_half_a_quarter()
    {
        var mesh = TriangleMesher.Mesh(Outlines.Rectangle(200, 100), new() { EdgeMm = 20, InsideMm = 40, FinePlaces = [new(0, 0.5, 7), new(1, 0, 7)] });
        foreach (var (edge, fraction) in new[] { (0, 0.5), (0, 1.0), (1, 0.0) })
            Assert.Equal([0.25, 0.5, 0.25], RimStitches.Parts(mesh, edge, fraction, 7).Select(p => Math.Round(p.Part, 9)));
        Assert.Equal(RimStitches.Parts(mesh, 0, 1, 7), RimStitches.Parts(mesh, 1, 0, 7));
    }

    [Fact]
    public void Every_stitch_up_to_the_width_finds_its_nodes_coupled()
    {
        const double Widest = 9;
        var groups = RimStitches.Groups(Mesh, Widest);
        var pattern = StiffnessPattern.Of(Mesh.Nodes.Count, [.. Mesh.Triangles.Select(t => new[] { t.A, t.B, t.C }), .. groups]);
        Gen.Select(Gen.Int[0, 2], Gen.Double[0, 1], Gen.Double[0.1, Widest]).Sample(
            (edge, fraction, width) =>
            {
                var parts = RimStitches.Parts(Mesh, edge, fraction, width);
                foreach (var (a, _) in parts)
                {
                    foreach (var (b, _) in parts)
                        Assert.True(pattern.Place(a, b) >= 0);
                }
            },
            iter: 3000,
            seed: "0000000000002");
    }
}
