using BlockingTemplates.Engine.Fabrics;
using BlockingTemplates.Engine.Pins.Settling;
using BlockingTemplates.Engine.Shapes;
using BlockingTemplates.Engine.Tests.Fabrics;

namespace BlockingTemplates.Engine.Tests.Pins.Settling;

public class StretchMapTests
{
    private static readonly TriangleMesh Mesh = PinnedPiece.Of(Outlines.Rectangle(400, 200), Outlines.Rectangle(400, 200), 50, 10, 20).Mesh;

    [Fact]
    public void Even_stretch_is_the_same_in_every_cell_and_the_cells_fill_the_cloth()
    {
        var map = StretchMap.Of(Mesh, At((_, _) => new(0.1, 0.25, ClothState.Taut)));
        Assert.All(map.Cells, c => Assert.Equal((0.1, 0.25, ClothState.Taut), (c.Along, c.Across, c.State), (a, b) => Math.Abs(a.Item1 - b.Item1) < 1e-12 && Math.Abs(a.Item2 - b.Item2) < 1e-12 && a.Item3 == b.Item3));
        Assert.Equal(400 * 200, map.Cells.Count * map.CellMm * map.CellMm, 0.1 * 400 * 200);
        Assert.Equal(map.Cells.Count, map.Cells.Select(c => (c.Column, c.Row)).Distinct().Count());
    }

    [Fact]
    public void A_cell_shows_what_most_of_it_does_and_the_mean_of_its_stretch()
    {
        // Stretch rises evenly along x by 0.001 a millimetre, and the left half is slack.
        var map = StretchMap.Of(Mesh, At((x, _) => new(x / 1000, 0, x < 200 ? ClothState.Slack : ClothState.Taut)));
        // A triangle has the value of its middle, at most one side (some 20 mm) from any place of it.
        Assert.All(map.Cells, c => Assert.Equal(c.At.X / 1000, c.Along, 0.012));
        Assert.All(map.Cells.Where(c => Math.Abs(c.At.X - 200) > 25), c => Assert.Equal(c.At.X < 200 ? ClothState.Slack : ClothState.Taut, c.State));
    }

    [Fact]
    public void One_small_triangle_does_not_make_a_cell()
    {
        // The smallest triangle of all stretched a hundredfold: as a share of its cell it is all but lost, wherever it lies.
        var areas = Mesh.Triangles.Select(t => Math.Abs((Mesh.Nodes[t.B] - Mesh.Nodes[t.A]).Cross(Mesh.Nodes[t.C] - Mesh.Nodes[t.A])) / 2).ToList();
        var smallest = areas.IndexOf(areas.Min());
        var even = At((_, _) => new(0.1, 0.1, ClothState.Taut));
        var map = StretchMap.Of(Mesh, even with { Stretches = [.. even.Stretches.Select((s, i) => i == smallest ? s with { Along = 10 } : s)] });
        // Probes stand CellMm / 5 apart: no more of them fall into a triangle than fit its box.
        Assert.True(map.Cells.Count(c => Math.Abs(c.Along - 0.1) > 1e-9) <= 2);
        Assert.All(map.Cells, c => Assert.True(c.Along < 5));
    }

    private static Equilibrium At(Func<double, double, ClothStretch> stretch) => new(
        EquilibriumEnd.Converged, 0, 0, 1, 20, Mesh.Nodes, [.. Mesh.Triangles.Select(t => Middle(t)).Select(p => stretch(p.X, p.Y))], [], null, true);

    private static Point Middle(Triangle t) =>
        new((Mesh.Nodes[t.A].X + Mesh.Nodes[t.B].X + Mesh.Nodes[t.C].X) / 3, (Mesh.Nodes[t.A].Y + Mesh.Nodes[t.B].Y + Mesh.Nodes[t.C].Y) / 3);
}
