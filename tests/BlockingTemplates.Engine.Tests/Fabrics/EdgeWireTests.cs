using BlockingTemplates.Engine.Fabrics;
using BlockingTemplates.Engine.Pins.Wires;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Tests.Fabrics;

public class EdgeWireTests
{
    private const double Width = 600;
    private const double StitchMm = 6;
    private static readonly OrthotropicCloth Cloth = new(1, 0.6, 0.4, 0.25);

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void A_wire_under_an_even_load_sags_as_a_continuous_beam(int spans)
    {
        // Cloth so soft that the load is all the wire's, a little longer than it was so that it is not slack all over; the
        // other three sides do not move.
        const double load = 0.01, stiffness = 1e6, longer = 1.02;
        var (mesh, _) = Meshed();
        var solver = new MembraneSolver(mesh, new OrthotropicCloth(1e-4, 1e-4, 0, 0.5e-4), StitchMm, wired: [0]);
        int[] bottom = [.. Enumerable.Range(0, mesh.Rim.Count).Where(i => mesh.Rim[i].Edge == 0), Enumerable.Range(0, mesh.Rim.Count).First(i => mesh.Rim[i].Edge == 1)];
        int[] held = [.. Enumerable.Range(0, spans + 1).Select(k => bottom.MinBy(i => Math.Abs(mesh.Nodes[i].X - (k * Width / spans))))];
        double[] x = [.. bottom.Select(i => longer * mesh.Nodes[i].X)];
        var support = new MembraneSupport
        {
            Fixed =
            [
                .. Enumerable.Range(0, mesh.Rim.Count).Where(i => mesh.Rim[i].Edge > 0 || i == 0).Select(i => new FixedNode(i, longer * mesh.Nodes[i].X, mesh.Nodes[i].Y)),
                .. held[1..^1].Select(i => new FixedNode(i, longer * mesh.Nodes[i].X, 0)),
            ],
            Loads = [.. bottom.Select((node, k) => new NodeLoad(node, new(0, load * (x[Math.Min(k + 1, x.Length - 1)] - x[Math.Max(k - 1, 0)]) / 2)))],
            Wires = [new(0, 0, 1, stiffness, new StraightEdge(new(0, 0), new(longer * Width, 0)))],
        };
        var rest = solver.Solve(support, new() { Tolerance = 1e-7 });
        Assert.True(rest.Converged, $"{rest.End} {rest.Residual}");
        double[] at = [.. held.Select(i => longer * mesh.Nodes[i].X)];
        var beam = new ContinuousBeam(stiffness, [.. at.Zip(at.Skip(1), (p, q) => q - p)], load);
        var most = bottom.Max(i => rest.Places[i].Y);
        Assert.True(most > 0.02);
        for (var k = 0; k < bottom.Length; k++)
        {
            var span = Math.Clamp(Array.FindLastIndex(at, p => p <= x[k]), 0, at.Length - 2);
            Assert.Equal(beam.SagAt(span, x[k] - at[span]), rest.Places[bottom[k]].Y, 0.01 * most);
        }
    }

    [Fact]
    public void Under_a_stretched_cloth_a_wire_sags_as_a_beam_under_the_pull_of_its_pins()
    {
        // Stretched by 20 % across; the wire held every 150 mm. Its own pins tell the pull on it, and it sags a little less
        // than a beam under an even one, since the cloth lets go where the wire gives way.
        const double stiffness = 8e5;
        var (mesh, outline) = Meshed();
        var pinned = Outlines.Rectangle(Width, 300 * 1.2);
        var support = Held(mesh, pinned, [0, 0.25, 0.5, 0.75]) with { Wires = [new(0, 0, 1, stiffness, pinned.Edges[0].Curve)] };
        var rest = new MembraneSolver(mesh, Cloth, StitchMm, wired: [0]).Solve(support);
        Assert.True(rest.Converged, $"{rest.End}");
        // The load of the three inner pins of the wire: that of their half-spans on both sides, but for the end spans' share.
        var wire = support.Pins.Select((p, i) => (p, i)).Where(p => p.p.Edge == 0 && p.p.Fraction > 0).Sum(p => -rest.PinLoads[p.i].Y);
        var beam = new ContinuousBeam(stiffness, [150, 150, 150, 150], 1);
        var share = (4 * 150) - (2 * ((150 / 2.0) - (beam.SupportMoments[1] / 150)));
        var loaded = new ContinuousBeam(stiffness, [150, 150, 150, 150], wire / share);
        var sag = Sag(mesh, rest, 0, 150);
        var expected = Enumerable.Range(1, 99).Max(k => loaded.SagAt(0, 1.5 * k));
        Assert.InRange(sag / expected, 0.8, 1.05);
        Assert.InRange(sag, 0.5, 8);
    }

    [Fact]
    public void A_very_stiff_wire_lies_straight_between_pins_at_its_ends()
    {
        var (mesh, _) = Meshed();
        var pinned = Outlines.Rectangle(Width, 300 * 1.2);
        var solver = new MembraneSolver(mesh, Cloth, StitchMm, wired: [0]);
        var ends = Held(mesh, pinned, [0]);
        var free = solver.Solve(ends);
        var stiff = solver.Solve(ends with { Wires = [new(0, 0, 1, 1e10, pinned.Edges[0].Curve)] });
        Assert.True(free.Converged && stiff.Converged, $"{stiff.End} {stiff.Residual}");
        Assert.True(Sag(mesh, free, 0, Width) > 30);
        Assert.InRange(Sag(mesh, stiff, 0, Width), 0, 0.5);
    }

    [Fact]
    public void A_limp_wire_changes_nothing()
    {
        var (mesh, _) = Meshed();
        var pinned = Outlines.Rectangle(Width, 300 * 1.2);
        var solver = new MembraneSolver(mesh, Cloth, StitchMm, wired: [0]);
        var pins = Held(mesh, pinned, [0, 0.25, 0.5, 0.75]);
        var without = solver.Solve(pins);
        var limp = solver.Solve(pins with { Wires = [new(0, 0, 1, 1e-3, pinned.Edges[0].Curve)] });
        Assert.True(without.Converged && limp.Converged);
        Assert.Equal(1, Sag(mesh, limp, 0, 150) / Sag(mesh, without, 0, 150), 0.005);
        Assert.InRange(without.Places.Zip(limp.Places, (a, b) => a.DistanceTo(b)).Max(), 0, 0.2);
    }

    [Fact]
    public void Forces_and_tangent_of_a_wire_are_the_derivatives_of_its_energy()
    {
        var crescent = Outlines.Crescent;
        var mesh = TriangleMesher.Mesh(crescent, new() { EdgeMm = 20, InsideMm = 60 });
        var wire = new WireBending(mesh, [new(0, 0.1, 0.8, 50, Outlines.PinnedCrescent.Edges[0].Curve)], 2);
        var random = new Random(5);
        double[] x = [.. mesh.Nodes.SelectMany(p => (double[])[p.X + random.NextDouble(), p.Y + random.NextDouble()])];
        double[] way = [.. x.Select(_ => random.NextDouble() - 0.5)];
        var energy = new MembraneEnergy(mesh, Cloth, false, [.. WireBending.Groups(mesh, 0)]);
        var (gradient, tangent) = (new double[x.Length], new StiffnessMatrix(energy.Pattern));
        wire.AddTo(x, gradient, tangent);
        double At(double by) => wire.AddTo([.. x.Zip(way, (a, w) => a + (by * w))], new double[x.Length], null).Energy;
        const double h = 1e-2;
        Assert.Equal((At(h) - At(-h)) / (2 * h), gradient.Zip(way, (g, w) => g * w).Sum(), 1e-6 * Math.Abs(At(1)));
        var second = tangent.Times(way).Zip(way, (t, w) => t * w).Sum();
        Assert.Equal((At(h) - (2 * At(0)) + At(-h)) / (h * h), second, 1e-5 * Math.Abs(second));
        Assert.True(second >= 0);
    }

    [Fact]
    public void Refuses_a_wire_on_an_edge_not_announced()
    {
        var (mesh, outline) = Meshed();
        var support = Held(mesh, outline, [0]) with { Wires = [new(0, 0, 1, 1, outline.Edges[0].Curve)] };
        Assert.Throws<ArgumentException>(() => new MembraneSolver(mesh, Cloth, StitchMm).Solve(support));
    }

    private static (TriangleMesh Mesh, Outline Outline) Meshed()
    {
        var outline = Outlines.Rectangle(Width, 300);
        return (TriangleMesher.Mesh(outline, new() { EdgeMm = StitchMm / 2, InsideMm = 40 }), outline);
    }

    /// <summary>Edge 0 held at some fractions and at both its ends, the others every 30 mm.</summary>
    private static MembraneSupport Held(TriangleMesh mesh, Outline pinned, double[] lower) => new()
    {
        Pins =
        [
            .. new[] { StitchMm / 2 / Width, 1 - (StitchMm / 2 / Width) }.Select(f => new HeldStitch(0, f, StitchMm, pinned.Edges[0].Curve.At(f))),
            .. lower.Select(f => new HeldStitch(0, f, StitchMm, pinned.Edges[0].Curve.At(f))),
            .. Enumerable.Range(1, 3).SelectMany(e => Enumerable.Range(0, (int)(pinned.Edges[e].Curve.Length / 30)).Select(k =>
                k / Math.Floor(pinned.Edges[e].Curve.Length / 30) is var f ? new HeldStitch(e, f, StitchMm, pinned.Edges[e].Curve.At(f)) : default)),
        ],
    };

    private static double Sag(TriangleMesh mesh, Equilibrium rest, double from, double to) =>
        Enumerable.Range(0, mesh.Rim.Count).Where(i => mesh.Rim[i].Edge == 0 && mesh.Nodes[i].X >= from && mesh.Nodes[i].X <= to).Max(i => rest.Places[i].Y);
}
