using BlockingTemplates.Engine.Fabrics;
using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Reference.Tests.Fabrics;

public class PublishedClothTests
{
    private const double LengthMm = 200;
    private const double WidthMm = 50;

    // Linear part of the fit for a knitted acrylic piece in the code published with K. Singal, M. S. Dimitriyev, S. E. Gonzalez,
    // A. P. Cachine, S. Quinn, E. A. Matsumoto, Programming mechanics in knitted materials, stitch by stitch, Nat. Commun. 15
    // (2024) 2622, doi 10.1038/s41467-024-46498-z: N/mm; here in N/m. The stitch is not named; the piece pictured is garter.
    private static readonly OrthotropicCloth Knit = OrthotropicCloth.FromStiffness(240.872, 36.2245, 59.9528, 10);

    [Fact]
    public void Strips_of_the_published_knit_pulled_by_the_solver_give_its_stiffnesses_back()
    {
        // The whole way round: the membrane pulls three meshed strips, a tape reads them to 0.01 mm, the strips tell the cloth.
        const double Pull = 8;
        var (along, across, slanted) = (Pulled(0, Pull), Pulled(90, Pull), Pulled(45, Pull));
        static Length Mm(double mm) => Length.FromMillimetres(mm);
        static Length Read(double mm) => Mm(Math.Round(mm, 2));
        var strips = new StripTest(
            Mm(WidthMm),
            Pull * WidthMm / 1000 / 9.80665e-3,
            new(Mm(LengthMm), Read(along.Length), Read(along.Width)),
            new(Mm(LengthMm), Read(across.Length), Read(across.Width)),
            new(Mm(LengthMm), Read(slanted.Length), null),
            Mm(0.01));
        Assert.Empty(StripProblems.Of(strips, LengthUnit.Millimetres));
        Assert.Empty(StripProblems.Odd(strips, LengthUnit.Millimetres));
        var material = ClothMaterials.Of(FabricSettings.Unsaid with { Strips = strips });
        var unit = material.NewtonsPerMetre!.Value;

        // Derived in the notes on the source: 218.98 and 54.51 N/m, Poisson .604 and .150.
        Assert.Equal(218.98, unit.Likely * material.Likely.EAlong, 0.7);
        Assert.Equal(54.51, unit.Likely * material.Likely.EAcross, 0.1);
        Assert.Equal(0.604, material.Likely.Poisson, 0.005);
        Assert.Equal(0.150, material.Likely.PoissonAcross, 0.002);
        Assert.Equal(10, unit.Likely * material.Likely.Shear, 0.02);
        Assert.True(unit.IsInOrder && unit.Most < 1.01 * unit.Least);
        Assert.Contains("along the rows 219", material.Told, StringComparison.Ordinal);
    }

    [Fact]
    public void The_catalogues_garter_is_the_published_knit()
    {
        var (line, knit) = (ClothCatalogue.Of(FabricKind.Garter), ClothRatios.Of(Knit));
        Assert.True(line.IsMeasured);
        Assert.Equal(knit.AlongOverAcross, line.AlongOverAcross.Likely, 0.05);
        Assert.Equal(knit.Narrowing, line.Narrowing.Likely, 0.01);
        Assert.Equal(knit.ShearShare, line.ShearShare.Likely, 0.01);
    }

    [Fact]
    public void The_catalogues_plain_cloth_covers_the_published_single_jersey()
    {
        // H. Do, Y. Y. Tan, N. Ramos, J. Kiendl, O. Weeger, Nonlinear isogeometric multiscale simulation for design and fabrication
        // of functionally graded knitted textiles, 2020; data published under CC BY 4.0. Lower bounds of the tests of a fabric whose
        // left half has 4.5 mm loops, its right half 6.5 mm (strain, newtons): pulled across the rows the halves lie side by side,
        // pulled along them one behind the other. From the tests of either loop alone, across the rows at 10 % strain 5.11 and
        // 1.455 N, at 20 % 11.51 and 3.74 N: how much softer two halves are behind each other.
        static double Behind(double one, double other) => 4 * one * other / ((one + other) * (one + other));
        var small = 0.59883 / (2.44871 * Behind(5.11, 1.455));
        var large = 1.04003 / (6.29157 * Behind(11.51, 3.74));
        var line = ClothCatalogue.Of(FabricKind.Plain);
        Assert.True(line.IsMeasured);
        Assert.Equal(small, line.AlongOverAcross.Likely, 0.01);
        Assert.InRange(large, line.AlongOverAcross.Least, line.AlongOverAcross.Likely);

        // The same authors' computed cloth (5 mm loops, pulled in both directions at once; Green's strains and their stresses).
        var (e, f) = (0.0744912922407525, 0.00807822108270913);
        var d = (e * e) - (f * f);
        var (c11, c12) = (((0.0384112669303991 * e) - (0.0422276008467467 * f)) / d, ((0.0422276008467467 * e) - (0.0384112669303991 * f)) / d);
        var (c21, c22) = (((0.0675652244248839 * e) - (0.105336112006017 * f)) / d, ((0.105336112006017 * e) - (0.0675652244248839 * f)) / d);
        Assert.Equal(line.AlongOverAcross.Likely, c11 / c22, 0.02);
        Assert.InRange((c12 + c21) / 2 / Math.Sqrt(c11 * c22), line.Narrowing.Likely, line.Narrowing.Most);

        // Textbooks' rule that plain knit stretches about twice as far along the rows as across lies within as well.
        Assert.InRange(0.5, line.AlongOverAcross.Likely, line.AlongOverAcross.Most);
    }

    /// <summary>Length and width of a strip cut at an angle to the rows, pulled by so many newtons a metre.</summary>
    private static (double Length, double Width) Pulled(double grain, double pull)
    {
        const int Columns = 20, Rows = 5;
        static int At(int i, int j) => (j * (Columns + 1)) + i;
        Point[] nodes = [.. Enumerable.Range(0, (Columns + 1) * (Rows + 1)).Select(k => new Point(LengthMm / Columns * (k % (Columns + 1)), WidthMm / Rows * (k / (Columns + 1))))];
        Triangle[] triangles =
        [
            .. from j in Enumerable.Range(0, Rows)
               from i in Enumerable.Range(0, Columns)
               from t in (Triangle[])[new(At(i, j), At(i + 1, j), At(i, j + 1)), new(At(i + 1, j), At(i + 1, j + 1), At(i, j + 1))]
               select t,
        ];
        var mesh = new TriangleMesh(nodes, triangles, [], 0);
        double Share(int j) => pull / 1000 * WidthMm / Rows * (j is 0 or Rows ? 0.5 : 1);
        var support = new MembraneSupport
        {
            Fixed = [new(At(0, 0), 0, 0), new(At(Columns, 0), null, 0)],
            Loads = [.. Enumerable.Range(0, Rows + 1).SelectMany(j => (NodeLoad[])[new(At(Columns, j), new(Share(j), 0)), new(At(0, j), new(-Share(j), 0))])],
        };
        var newtonsAMillimetre = new OrthotropicCloth(Knit.EAlong / 1000, Knit.EAcross / 1000, Knit.Poisson, Knit.Shear / 1000, grain);
        var rest = new MembraneSolver(mesh, newtonsAMillimetre, 0, carriesCompression: true).Solve(
            support, new() { SlackShare = 0 }, [.. nodes.Select(p => new Point(1.05 * p.X, p.Y))]);
        Assert.True(rest.Converged, $"{rest.End} {rest.Residual}");
        return (rest.Places[At(Columns, 0)].X - rest.Places[At(0, 0)].X, rest.Places[At(Columns / 2, Rows)].Y - rest.Places[At(Columns / 2, 0)].Y);
    }
}
