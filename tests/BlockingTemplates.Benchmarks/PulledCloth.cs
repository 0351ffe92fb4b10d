using BlockingTemplates.Engine.Fabrics;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Benchmarks;

/// <summary>One linear system as the equilibrium of a pinned triangle asks for it: the tangent at an uneven pull, some edge nodes held.</summary>
internal sealed class PulledCloth
{
    private const double StitchMm = 7;

    /// <summary>Mesh of so many unknowns, about.</summary>
    public PulledCloth(int unknowns)
    {
        var outline = Triangle();
        var mesh = Mesh(outline, unknowns);
        Nodes = mesh.Nodes;
        var energy = new MembraneEnergy(mesh, new OrthotropicCloth(1, 0.6, 0.4, 0.25), false, RimStitches.Groups(mesh, StitchMm));
        Matrix = new(energy.Pattern);
        double[] places = [.. mesh.Nodes.SelectMany(p => (double[])[(1.15 * p.X) + (1e-4 * p.Y * p.Y), (1.2 * p.Y) + (1e-4 * p.X * p.X)])];
        Right = new double[places.Length];
        energy.Derivatives(places, new SlackStay(1e-5, Affine.Identity), Right, Matrix);
        var held = new bool[places.Length];
        for (var i = 0; i < mesh.Rim.Count; i += 20)
            held[2 * i] = held[(2 * i) + 1] = true;
        Matrix.Fix(held);
        for (var i = 0; i < Right.Length; i++)
            Right[i] = held[i] ? 0 : Right[i] + Math.Sin(i);
        Columns = UpperColumns(Matrix);
    }

    public IReadOnlyList<Point> Nodes { get; }

    public StiffnessMatrix Matrix { get; }

    public double[] Right { get; }

    public int Unknowns => Matrix.Unknowns;

    /// <summary>The upper half by columns: starts, rows ascending, values; as CHOLMOD takes it fastest.</summary>
    public (int[] Start, int[] Row, double[] Value) Columns { get; }

    /// <summary>Greatest residual over the greatest right side.</summary>
    public double Residual(double[] solution)
    {
        var product = Matrix.Times(solution);
        return product.Zip(Right, (a, b) => Math.Abs(a - b)).Max() / Right.Max(Math.Abs);
    }

    private static TriangleMesh Mesh(Outline outline, int unknowns)
    {
        var size = Math.Sqrt(2 * 420_000 / (0.866 * unknowns));
        return TriangleMesher.Mesh(outline, new() { EdgeMm = size, InsideMm = size });
    }

    private static Outline Triangle()
    {
        Point[] corners = [new(0, 0), new(700, 600), new(-700, 600)];
        return new(
            [.. Enumerable.Range(0, 3).Select(i => new Edge($"{i}", new StraightEdge(corners[i], corners[(i + 1) % 3])))],
            [.. Enumerable.Range(0, 3).Select(i => new Corner($"corner {i}"))]);
    }

    private static (int[] Start, int[] Row, double[] Value) UpperColumns(StiffnessMatrix matrix)
    {
        var (pattern, values) = (matrix.Pattern, matrix.Values);
        var start = new int[matrix.Unknowns + 1];
        var row = new List<int>(4 * pattern.Blocks);
        var value = new List<double>(4 * pattern.Blocks);
        for (var unknown = 0; unknown < matrix.Unknowns; unknown++)
        {
            var (node, part) = (unknown / 2, unknown % 2);
            for (var k = pattern.RowStart[node]; k < pattern.RowStart[node + 1]; k++)
            {
                for (var c = 0; c < 2; c++)
                {
                    if ((2 * pattern.Column[k]) + c > unknown)
                        continue;
                    row.Add((2 * pattern.Column[k]) + c);
                    value.Add(values[(4 * k) + (2 * part) + c]);
                }
            }

            start[unknown + 1] = row.Count;
        }

        return (start, [.. row], [.. value]);
    }
}
