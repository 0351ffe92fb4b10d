using BlockingTemplates.Engine.Fabrics;
using BlockingTemplates.Engine.Shapes;
using CsCheck;
using MathNet.Numerics.LinearAlgebra;

namespace BlockingTemplates.Engine.Tests.Fabrics;

public class FrontalCholeskyTests
{
    [Fact]
    public void Solves_random_networks_as_a_dense_solver_does()
    {
        Gen.Select(Gen.Int[1, 120], Gen.Int[0, 1_000_000]).Sample(
            (nodes, seed) =>
            {
                var (matrix, places) = Network(nodes, seed, 0.01);
                var right = RightSide(nodes, seed);
                var factor = new FrontalCholesky(matrix.Pattern, places);
                Assert.True(factor.Factor(matrix));
                var ours = factor.Solve(right);
                var dense = Dense(matrix).Cholesky().Solve(Vector<double>.Build.Dense(right));
                var off = (dense - Vector<double>.Build.Dense(ours)).InfinityNorm();
                Assert.True(off <= 1e-10 * dense.InfinityNorm(), $"{off} off of {dense.InfinityNorm()}");
            },
            iter: 300,
            seed: "0000000000001");
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(5)]
    public void Leaves_a_residual_under_1e_minus_12_on_a_real_mesh(int threads)
    {
        var mesh = TriangleMesher.Mesh(Outlines.Triangle, new() { EdgeMm = 12, InsideMm = 15 });
        var (matrix, _) = Springs(mesh.Nodes, [.. mesh.Triangles.Select(t => new[] { t.A, t.B, t.C })], 1, 1e-3);
        var right = RightSide(mesh.Nodes.Count, 2);
        var factor = new FrontalCholesky(matrix.Pattern, mesh.Nodes, threads);
        Assert.True(factor.Factor(matrix));
        Assert.True(Residual(matrix, factor.Solve(right), right) < 1e-12);
    }

    [Theory]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(8)]
    [InlineData(1000)]
    public void Gives_the_same_bits_with_one_and_several_threads_and_when_used_again(int threads)
    {
        const int Nodes = 3000;
        var (matrix, places) = Network(Nodes, 5, 0.01);
        var (other, _) = Network(Nodes, 5, 3);
        var right = RightSide(Nodes, 5);
        var one = new FrontalCholesky(matrix.Pattern, places);
        var several = new FrontalCholesky(matrix.Pattern, places, threads);
        one.Factor(matrix);
        several.Factor(matrix);
        var first = one.Solve(right);
        Assert.Equal(first, several.Solve(right));
        Array.Copy(other.Values, matrix.Values, other.Values.Length);
        one.Factor(matrix);
        Assert.NotEqual(first, one.Solve(right));
        Assert.True(Residual(matrix, one.Solve(right), right) < 1e-12);
    }

    [Fact]
    public void Says_so_when_a_matrix_is_not_positive_definite()
    {
        var (matrix, places) = Network(80, 3, 0.5);
        matrix.Add(40, 40, -1e3, 0, 0, 0);
        var factor = new FrontalCholesky(matrix.Pattern, places);
        Assert.False(factor.Factor(matrix));
        Assert.Throws<InvalidOperationException>(() => factor.Solve(new double[160]));
    }

    [Fact]
    public void One_in_the_memory_of_another_that_was_disposed_of_gives_the_same_bits()
    {
        var (matrix, places) = Network(500, 7, 0.01);
        var right = RightSide(500, 7);
        double[]? first = null;
        for (var i = 0; i < 6; i++)
        {
            var factor = new FrontalCholesky(matrix.Pattern, places, 1 + (i % 3));
            Assert.True(factor.Factor(matrix));
            var solution = factor.Solve(right);
            Assert.Equal(first ??= solution, solution);
            factor.Dispose();
            factor.Dispose();
            Assert.Throws<ObjectDisposedException>(() => factor.Factor(matrix));
            Assert.Throws<ObjectDisposedException>(() => factor.Solve(right));
        }
    }

    [Fact]
    public void Refuses_a_matrix_of_another_pattern()
    {
        var (matrix, places) = Network(20, 3, 0.5);
        var (other, _) = Network(20, 3, 0.5);
        Assert.Throws<ArgumentException>(() => new FrontalCholesky(matrix.Pattern, places).Factor(other));
    }

    [Fact]
    public void A_matrix_times_a_vector_is_what_its_dense_copy_gives()
    {
        var (matrix, _) = Network(60, 9, 0.1);
        var x = RightSide(60, 4);
        var expected = Dense(matrix) * Vector<double>.Build.Dense(x);
        var off = (Vector<double>.Build.Dense(matrix.Times(x)) - expected).InfinityNorm();
        Assert.True(off < 1e-11 * expected.InfinityNorm());
    }

    [Fact]
    public void Parts_a_square_net_with_few_fill_entries()
    {
        // George (1973): 31/4 n^2 log2 n + O(n^2) entries for an n x n net of single unknowns; blocks of 2 by 2 have four times as many.
        const int Side = 64;
        Point[] places = [.. Enumerable.Range(0, Side * Side).Select(i => new Point(i % Side, i / Side))];
        List<int[]> groups = [];
        for (var i = 0; i < Side * Side; i++)
        {
            if (i % Side < Side - 1 && i / Side < Side - 1)
                groups.Add([i, i + 1, i + Side, i + Side + 1]);
        }

        var factor = new FrontalCholesky(StiffnessPattern.Of(Side * Side, groups), places);
        Assert.True(factor.FactorEntries < 4 * 31.0 / 4 * Side * Side * Math.Log2(Side));
    }

    private static double Residual(StiffnessMatrix matrix, double[] x, double[] right)
    {
        var product = matrix.Times(x);
        var (off, size) = (0.0, 0.0);
        for (var i = 0; i < x.Length; i++)
        {
            off += (product[i] - right[i]) * (product[i] - right[i]);
            size += right[i] * right[i];
        }

        return Math.Sqrt(off / size);
    }

    private static double[] RightSide(int nodes, int seed)
    {
        var random = new Random(seed);
        return [.. Enumerable.Range(0, 2 * nodes).Select(_ => random.NextDouble() - 0.5)];
    }

    /// <summary>Points by chance, each coupled in groups with some of the nearest.</summary>
    private static (StiffnessMatrix Matrix, Point[] Places) Network(int nodes, int seed, double ground)
    {
        var random = new Random(seed);
        Point[] places = [.. Enumerable.Range(0, nodes).Select(_ => new Point(random.NextDouble() * 100, random.NextDouble() * 60))];
        List<int[]> groups = [.. Enumerable.Range(0, nodes).Select(i =>
            Enumerable.Range(0, nodes).OrderBy(j => places[i].DistanceTo(places[j])).Take(1 + random.Next(4)).ToArray())];
        return Springs(places, groups, seed, ground);
    }

    private static (StiffnessMatrix Matrix, Point[] Places) Springs(IReadOnlyList<Point> places, List<int[]> groups, int seed, double ground)
    {
        var random = new Random(seed);
        var matrix = new StiffnessMatrix(StiffnessPattern.Of(places.Count, groups));
        for (var i = 0; i < places.Count; i++)
            matrix.Add(i, i, ground, 0, 0, ground);
        foreach (var group in groups)
        {
            for (var k = 1; k < group.Length; k++)
            {
                var (a, b) = (group[0], group[k]);
                var d = (places[b] - places[a]).Unit;
                var s = 0.5 + random.NextDouble();
                var (xx, xy, yy) = (s * d.X * d.X, s * d.X * d.Y, s * d.Y * d.Y);
                matrix.Add(a, a, xx, xy, xy, yy);
                matrix.Add(b, b, xx, xy, xy, yy);
                matrix.Add(a, b, -xx, -xy, -xy, -yy);
            }
        }

        return (matrix, [.. places]);
    }

    private static Matrix<double> Dense(StiffnessMatrix matrix)
    {
        var dense = Matrix<double>.Build.Dense(matrix.Unknowns, matrix.Unknowns);
        var pattern = matrix.Pattern;
        for (var i = 0; i < pattern.Nodes; i++)
        {
            for (var k = pattern.RowStart[i]; k < pattern.RowStart[i + 1]; k++)
            {
                for (var e = 0; e < 4; e++)
                {
                    var (row, column) = ((2 * i) + (e >> 1), (2 * pattern.Column[k]) + (e & 1));
                    dense[row, column] = dense[column, row] = matrix.Values[(4 * k) + e];
                }
            }
        }

        return dense;
    }
}
