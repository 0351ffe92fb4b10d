using BlockingTemplates.Engine.Fabrics;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Reference.Tests.Fabrics;

public class MembraneReferenceTests
{
    /// <summary>So small a load that the answer is the one of small strains, to about this share.</summary>
    private const double Small = 1e-5;

    private static readonly EquilibriumSettings Elastic = new() { SlackShare = 0, Tolerance = 1e-12, MostSteps = 6 };

    [Fact]
    public void MacNeal_and_Harder_plane_patch_has_their_strains_and_stresses()
    {
        // R. H. MacNeal and R. L. Harder, A proposed standard set of problems to test finite element accuracy, Finite Elem.
        // Anal. Des. 1 (1985) 3-20, table p. 10: E = 1e6, nu = 0.25, u = 1e-3 (x + y/2), v = 1e-3 (y + x/2); strains 1e-3,
        // stresses 1333.3, 1333.3, 400. Corner values as published; inner nodes from memory, any inner node must do.
        Point[] nodes = [new(0, 0), new(0.24, 0), new(0.24, 0.12), new(0, 0.12), new(0.04, 0.02), new(0.18, 0.03), new(0.16, 0.08), new(0.08, 0.08)];
        int[][] quads = [[0, 1, 5, 4], [1, 2, 6, 5], [2, 3, 7, 6], [3, 0, 4, 7], [4, 5, 6, 7]];
        var mesh = new TriangleMesh(nodes, [.. quads.SelectMany(q => new Triangle[] { new(q[0], q[1], q[2]), new(q[0], q[2], q[3]) })], [], 0);
        var cloth = OrthotropicCloth.Isotropic(1e6, 0.25);
        static Vector Shift(Point p) => new(1e-3 * (p.X + (p.Y / 2)), 1e-3 * (p.Y + (p.X / 2)));
        Assert.Equal(0.3e-3, Shift(nodes[2]).X, 1e-15);
        Assert.Equal(0.24e-3, Shift(nodes[2]).Y, 1e-15);

        // The published values are of small strains: a thousandth of them is pulled and the answer enlarged.
        FixedNode[] held = [.. Enumerable.Range(0, 4).Select(i => nodes[i] + (1e-3 * Shift(nodes[i])) is var p ? new FixedNode(i, p.X, p.Y) : default)];
        var rest = new MembraneSolver(mesh, cloth, 0, carriesCompression: true).Solve(new() { Fixed = held }, Elastic);
        Assert.True(rest.Residual < 1e-9);
        for (var i = 4; i < 8; i++)
            Assert.True((1e3 * (rest.Places[i] - nodes[i]) - Shift(nodes[i])).Length < 1e-6 * 1e-3, $"node {i}");
        Assert.All(rest.Stretches, s => Assert.Equal(1e-3, 1e3 * s.Along, 1e-8));
        Assert.All(rest.Stretches, s => Assert.Equal(1e-3, 1e3 * s.Across, 1e-8));
        var stress = new TensionField(cloth.Stiffness, true).At(new(1e-3, 1e-3, 0.5e-3)).Stress;
        Assert.Equal(1333.3, stress.Along, 0.05);
        Assert.Equal(1333.3, stress.Across, 0.05);
        Assert.Equal(400, stress.Shear, 1e-9);
    }

    [Fact]
    public void Cooks_membrane_converges_to_23_96_at_the_middle_of_its_loaded_edge()
    {
        // R. D. Cook 1974 (and Cook, Malkus, Plesha): panel (0,0) (48,44) (48,60) (0,44), E = 1, nu = 1/3, thickness 1,
        // total shear 1 on the right edge, left edge clamped: 23.96 at (48, 52). Not the corner, which moves 25.2.
        double[] answers = [Cook(16, Elastic), Cook(32, Elastic), Cook(64, Elastic), Cook(128, Elastic)];
        for (var i = 1; i < answers.Length; i++)
            Assert.True(answers[i] > answers[i - 1], string.Join(' ', answers));
        Assert.Equal(23.96, answers[^1], 0.03);

        // Aitken's extrapolation from the last three: the limit.
        var (a, b) = (answers[^1] - answers[^2], answers[^2] - answers[^3]);
        Assert.Equal(23.965, answers[^1] + (a * a / (b - a)), 0.015);
    }

    [Fact]
    public void The_stay_of_slack_cloth_hardly_stiffens_Cooks_membrane()
    {
        var free = Cook(32, Elastic);
        Assert.InRange(free - Cook(32, Elastic with { SlackShare = new EquilibriumSettings().SlackShare }), 0, 0.01);
        Assert.InRange(free - Cook(32, Elastic with { SlackShare = 1e-3 }), 0.3, 1);
    }

    [Fact]
    public void The_scallop_of_a_held_stitch_is_that_of_a_row_of_Flamants_loads()
    {
        // Half-plane pulled by sigma, held by stitches of width w at spacing p: surface harmonics 2 q / (E k) of the even load
        // sigma p / w on each stitch (Flamant 1892; K. L. Johnson, Contact Mechanics, 1985, ch. 13, wavy surfaces).
        const double Width = 0.1;
        var exact = 0.0;
        for (var n = 1; n < 2_000_000; n++)
        {
            var s = Math.Sin(Math.PI * n * Width) / (Math.PI * n * Width);
            exact += 2 / Math.PI / n * s * (s - (n % 2 == 0 ? 1 : -1));
        }

        // Closed form with the half-width e^(-3/2) w of an evenly loaded stitch (Johnson ch. 2): 1.6926; the series, which keeps
        // what the closed form leaves out in (w / p)^2, is 0.08 % under it.
        Assert.Equal(1.6926, 2 / Math.PI * Math.Log(1 / Math.Sin(Math.PI * Math.Exp(-1.5) * Width)), 1e-4);
        Assert.Equal(1.6926, exact, 0.001 * 1.6926);
        double[] answers = [Strip(2, Width, 0.05).Scallop, Strip(4, Width, 0.035).Scallop, Strip(8, Width, 0.025).Scallop, Strip(16, Width, 0.0175).Scallop];
        for (var i = 0; i < answers.Length; i++)
        {
            Assert.True(answers[i] < exact && (i == 0 || answers[i] > answers[i - 1]), string.Join(' ', answers));
        }

        // Within 10 % at 2 nodes a stitch, 1 % at 16; the last refinements halve what is missing.
        Assert.InRange(exact - answers[0], 0, 0.1 * exact);
        Assert.InRange(exact - answers[^1], 0, 0.01 * exact);
        Assert.True(exact - answers[2] < (exact - answers[1]) / 2 && exact - answers[3] < (exact - answers[2]) / 2, string.Join(' ', answers));
    }

    [Fact]
    public void The_pull_evens_out_one_spacing_in()
    {
        // Sum of Flamant's stresses: at depth p the pull under a pin is 1.02730, between pins 0.97289 of the mean.
        var (_, under, between) = Strip(8, 0.02, 0.025);
        Assert.Equal(1.0273, under, 0.001);
        Assert.Equal(0.9729, between, 0.001);
    }

    [Fact]
    public void A_strip_of_measured_knit_stretches_and_narrows_by_its_own_constants()
    {
        // C11 .240872, C12 .0362245, C22 .0599528, C66 .01 N/mm: linear part of the fit for a knitted acrylic piece 126.66 mm
        // wide and 40.25 mm tall in the code published with K. Singal, M. S. Dimitriyev, S. E. Gonzalez, A. P. Cachine,
        // S. Quinn, E. A. Matsumoto, Programming mechanics in knitted materials, stitch by stitch, Nat. Commun. 15 (2024) 2622,
        // doi 10.1038/s41467-024-46498-z. Derived: .21898 and .05451 N/mm, Poisson .604 and .150.
        var cloth = OrthotropicCloth.FromStiffness(0.240872, 0.0362245, 0.0599528, 0.01);
        Assert.Equal(0.21898, cloth.EAlong, 5e-6);
        Assert.Equal(0.05451, cloth.EAcross, 1e-5);
        Assert.Equal(0.604, cloth.Poisson, 5e-4);
        Assert.Equal(0.150, cloth.PoissonAcross, 5e-4);

        const double Stretch = 1.15;
        var mesh = TriangleMesher.Mesh(Panel((0, 0), (126.66, 0), (126.66, 40.25), (0, 40.25)), new() { EdgeMm = 5, InsideMm = 8 });
        var pull = Stretch * cloth.EAlong * ((Stretch * Stretch) - 1) / 2;
        var left = Rim(mesh, 3, includeEnd: true);
        var support = new MembraneSupport
        {
            Fixed = [.. left.Select(i => new FixedNode(i, 0, i == 0 ? 0 : null))],
            Loads = EdgeLoad(mesh, 1, new(pull, 0)),
        };
        Point[] start = [.. mesh.Nodes.Select(p => new Point(1.1 * p.X, p.Y))];
        var rest = new MembraneSolver(mesh, cloth, 0).Solve(support, new() { SlackShare = 1e-8 }, start);
        Assert.True(rest.Converged, $"{rest.End}");
        var narrow = Math.Sqrt(1 - (cloth.Poisson * ((Stretch * Stretch) - 1))) - 1;
        Assert.All(rest.Stretches, s => Assert.Equal(Stretch - 1, s.Along, 1e-6));
        Assert.All(rest.Stretches, s => Assert.Equal(narrow, s.Across, 1e-6));
    }

    /// <summary>Rise of (48, 52) with n by n squares of two triangles each, for a unit load.</summary>
    private static double Cook(int n, EquilibriumSettings settings)
    {
        Point At(int i, int j)
        {
            var (s, t) = ((double)i / n, (double)j / n);
            return new(48 * s, (44 * s * (1 - t)) + (t * (44 + (16 * s))));
        }

        Point[] nodes = [.. Enumerable.Range(0, (n + 1) * (n + 1)).Select(k => At(k % (n + 1), k / (n + 1)))];
        var triangles = new List<Triangle>();
        for (var j = 0; j < n; j++)
        {
            for (var i = 0; i < n; i++)
            {
                var a = (j * (n + 1)) + i;
                triangles.Add(new(a, a + 1, a + n + 1));
                triangles.Add(new(a + 1, a + n + 2, a + n + 1));
            }
        }

        var support = new MembraneSupport
        {
            Fixed = [.. Enumerable.Range(0, n + 1).Select(j => new FixedNode(j * (n + 1), nodes[j * (n + 1)].X, nodes[j * (n + 1)].Y))],
            Loads = [.. Enumerable.Range(0, n + 1).Select(j => new NodeLoad((j * (n + 1)) + n, new(0, Small / n * (j is 0 || j == n ? 0.5 : 1))))],
        };
        var mesh = new TriangleMesh(nodes, triangles, [], 0);
        var rest = new MembraneSolver(mesh, OrthotropicCloth.Isotropic(1, 1 / 3.0), 0, carriesCompression: true).Solve(support, settings);
        Assert.True(rest.Residual < 1e-8, $"{rest.Residual}");
        var middle = (n / 2 * (n + 1)) + n;
        return (rest.Places[middle].Y - 52) / Small;
    }

    /// <summary>One spacing of a half-plane (unit spacing, three deep), held by a stitch in the middle of its upper edge.</summary>
    private static (double Scallop, double Under, double Between) Strip(int nodesPerStitch, double width, double inside)
    {
        const double Deep = 3;
        var mesh = TriangleMesher.Mesh(Panel((0, -Deep), (1, -Deep), (1, 0), (0, 0)), new()
        {
            EdgeMm = 0.8 * inside,
            InsideMm = inside,
            Growth = 0.15,
            NodesPerStitch = nodesPerStitch,
            FinePlaces = [new(2, 0.5, width)],
        });
        var support = new MembraneSupport
        {
            Pins = [new(2, 0.5, width, new(0.5, 0))],
            Fixed = [.. Rim(mesh, 1, true).Select(i => new FixedNode(i, 1, null)), .. Rim(mesh, 3, true).Select(i => new FixedNode(i, 0, null))],
            Loads = EdgeLoad(mesh, 0, new(0, -Small)),
        };
        const double Nu = 0.3;
        var rest = new MembraneSolver(mesh, OrthotropicCloth.Isotropic(1, Nu), width, carriesCompression: true).Solve(support, Elastic with { Tolerance = 1e-9 });
        Assert.True(rest.Converged, $"{rest.End} {rest.Residual}");
        var corner = rest.Places[Rim(mesh, 3, false)[0]];
        return (-corner.Y / Small, Pull(0.5), (Pull(0) + Pull(1)) / 2);

        // Mean pull down the strip in a small half circle or circle at depth 1.
        double Pull(double x)
        {
            var near = Enumerable.Range(0, mesh.Triangles.Count).Where(k => Middle(k).DistanceTo(new(x, -1)) < 1.5 * inside).ToList();
            return near.Average(k => (rest.Stretches[k].Across + (Nu * rest.Stretches[k].Along)) / (1 - (Nu * Nu)) / Small);
        }

        Point Middle(int k)
        {
            var (a, b, c) = mesh.Triangles[k];
            return mesh.Nodes[a] + (1 / 3.0 * ((mesh.Nodes[b] - mesh.Nodes[a]) + (mesh.Nodes[c] - mesh.Nodes[a])));
        }
    }

    private static Outline Panel(params (double X, double Y)[] at) => new(
        [.. at.Select((p, i) => at[(i + 1) % at.Length] is var q ? new Edge($"edge {i}", new StraightEdge(new(p.X, p.Y), new(q.X, q.Y))) : null!)],
        [.. at.Select((_, i) => new Corner($"corner {i}"))]);

    /// <summary>Rim nodes of an edge in order, with its end corner if asked for.</summary>
    private static List<int> Rim(TriangleMesh mesh, int edge, bool includeEnd)
    {
        var nodes = Enumerable.Range(0, mesh.Rim.Count).Where(i => mesh.Rim[i].Edge == edge).ToList();
        if (includeEnd)
            nodes.Add((nodes[^1] + 1) % mesh.Rim.Count);
        return nodes;
    }

    /// <summary>A force a length, even along an edge.</summary>
    private static List<NodeLoad> EdgeLoad(TriangleMesh mesh, int edge, Vector perMm)
    {
        var nodes = Rim(mesh, edge, true);
        return [.. nodes.Zip(nodes.Skip(1)).SelectMany(s =>
        {
            var half = mesh.Nodes[s.First].DistanceTo(mesh.Nodes[s.Second]) / 2 * perMm;
            return new NodeLoad[] { new(s.First, half), new(s.Second, half) };
        })];
    }
}
