using BlockingTemplates.Engine.Fabrics;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Tests.Fabrics;

public class MembraneEnergyTests
{
    private static readonly OrthotropicCloth Cloth = new(1, 0.5, 0.4, 0.2, 25);
    private static readonly SlackStay Stay = new(1e-4, new(1.1, 0.1, 3, -0.05, 0.9, -2));

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void Forces_and_tangent_are_the_derivatives_of_the_energy_in_all_states(int seed)
    {
        var (mesh, energy, x) = Jumbled(seed);
        Assert.Equal(3, energy.Stretches(Points(x)).Select(s => s.State).Distinct().Count());
        var gradient = new double[x.Length];
        var tangent = new StiffnessMatrix(energy.Pattern);
        var (value, _) = energy.Derivatives(x, Stay, gradient, tangent);
        var alone = new double[x.Length];
        Assert.Equal(energy.Energy(x, Stay), value, 1e-12 * value);
        Assert.Equal(value, energy.Gradient(x, Stay, alone), 1e-12 * value);
        Assert.Equal(gradient, alone);

        var random = new Random(seed);
        double[] way = [.. x.Select(_ => random.NextDouble() - 0.5)];
        const double H = 1e-5;
        var (plus, minus) = (Moved(x, way, H), Moved(x, way, -H));
        var slope = gradient.Zip(way, (g, w) => g * w).Sum();
        Assert.Equal(slope, (energy.Energy(plus, Stay) - energy.Energy(minus, Stay)) / (2 * H), 1e-6 * Math.Abs(slope));

        // Second derivative, at the nodes none of whose triangles changes its state on the way.
        var change = tangent.Times(way);
        var (up, down) = (new double[x.Length], new double[x.Length]);
        energy.Gradient(plus, Stay, up);
        energy.Gradient(minus, Stay, down);
        var (before, after) = (energy.Stretches(Points(minus)), energy.Stretches(Points(plus)));
        var changed = new HashSet<int>();
        for (var e = 0; e < mesh.Triangles.Count; e++)
        {
            if (before[e].State != after[e].State)
                changed.UnionWith([mesh.Triangles[e].A, mesh.Triangles[e].B, mesh.Triangles[e].C]);
        }

        var size = change.Max(Math.Abs);
        Assert.True(changed.Count < mesh.Nodes.Count / 10);
        for (var u = 0; u < x.Length; u++)
        {
            if (!changed.Contains(u / 2))
                Assert.Equal(change[u], (up[u] - down[u]) / (2 * H), 2e-5 * size);
        }
    }

    [Fact]
    public void The_tangent_is_positive_definite_even_where_cloth_is_wrinkled_and_slack()
    {
        for (var seed = 1; seed <= 5; seed++)
        {
            var (mesh, energy, x) = Jumbled(seed);
            var tangent = new StiffnessMatrix(energy.Pattern);
            energy.Derivatives(x, Stay, new double[x.Length], tangent);
            var fix = new bool[x.Length];
            fix[0] = fix[1] = true;
            tangent.Fix(fix);
            Assert.True(new FrontalCholesky(energy.Pattern, mesh.Nodes).Factor(tangent));
        }
    }

    [Fact]
    public void Even_strain_has_the_energy_of_the_law_times_the_area()
    {
        var (mesh, energy, _) = Jumbled(1);
        var map = new Affine(1.2, 0.1, 5, -0.1, 1.1, 7);
        double[] x = [.. mesh.Nodes.Select(map.Map).SelectMany(p => (double[])[p.X, p.Y])];
        var turn = Affine.Turn(25 * Math.PI / 180);
        var (a, b) = (map.Map(turn.Map(new Vector(1, 0))), map.Map(turn.Map(new Vector(0, 1))));
        var strain = new PlaneTensor((a.Dot(a) - 1) / 2, (b.Dot(b) - 1) / 2, a.Dot(b) / 2);
        var law = new TensionField(Cloth.Stiffness);
        Assert.Equal(mesh.Area() * law.At(strain).Energy, energy.Unit * energy.Energy(x, new(0, map)), 1e-9 * mesh.Area());
    }

    private static (TriangleMesh Mesh, MembraneEnergy Energy, double[] X) Jumbled(int seed)
    {
        var mesh = TriangleMesher.Mesh(Outlines.Rectangle(100, 80), new() { EdgeMm = 10, InsideMm = 12 });
        var random = new Random(seed);
        var x = mesh.Nodes.SelectMany(p => (double[])[(0.95 * p.X) + (random.NextDouble() * 4), (1.02 * p.Y) + (random.NextDouble() * 4)]);
        return (mesh, new(mesh, Cloth), [.. x]);
    }

    private static double[] Moved(double[] x, double[] way, double by) => [.. x.Zip(way, (a, w) => a + (by * w))];

    private static Point[] Points(double[] x) => [.. Enumerable.Range(0, x.Length / 2).Select(i => new Point(x[2 * i], x[(2 * i) + 1]))];
}
