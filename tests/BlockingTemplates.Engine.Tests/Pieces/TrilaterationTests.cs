using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Shapes;
using CsCheck;

namespace BlockingTemplates.Engine.Tests.Pieces;

/// <summary>Corners from taped sides, against the coordinates the sides were taken from.</summary>
public sealed class TrilaterationTests
{
    private static readonly string[] RectangleCorners = ["lower left", "lower right", "upper right", "upper left"];

    /// <summary>A triangle foot, right tip, left tip with its top edge somewhere above the foot.</summary>
    private static readonly Gen<Point[]> Triangle = Gen.Select(Gen.Double[-900, 200], Gen.Double[100, 900], Gen.Double[300, 1500], Gen.Double[-0.4, 0.4], (left, depth, span, turn) =>
        new Point[] { new(0, 0), new(left + span, depth), new(left, depth) }.Select(Affine.Turn(turn).Map).ToArray());

    /// <summary>A convex quadrilateral, counter-clockwise from its lower left.</summary>
    private static readonly Gen<Point[]> Quadrilateral = Gen.Select(Gen.Double[-150, 150].Array[8], Gen.Double[-0.5, 0.5], (d, turn) =>
        new Point[] { new(d[0], d[1]), new(800 + d[2], d[3]), new(800 + d[4], 600 + d[5]), new(d[6], 600 + d[7]) }.Select(Affine.Turn(turn).Map).ToArray());

    [Fact]
    public void A_triangle_comes_back_from_its_three_sides() => Triangle.Check(300, p =>
    {
        var piece = Given.Made(Given.Request(
            new TrianglePiece(),
            Given.Finished(("wingspan", 1480), ("depth", 740)),
            Given.Unblocked(("right", p[0].DistanceTo(p[1])), ("top", p[1].DistanceTo(p[2])), ("left", p[2].DistanceTo(p[0])))));
        SameUpToMotion(p, piece.Unblocked!, ["foot", "right tip", "left tip"]);
        Assert.Equal(["right", "top", "left"], piece.Unblocked!.Edges.Select(e => e.Name));
    });

    [Fact]
    public void A_quadrilateral_comes_back_from_its_sides_and_either_diagonal_named_either_way() =>
        Gen.Select(Quadrilateral, Gen.Int[0, 3], Gen.Bool).Check(400, x =>
        {
            var (p, from, capital) = x;
            var to = (from + 2) % 4;
            string Name(int corner) => capital ? RectangleCorners[corner].ToUpperInvariant() : RectangleCorners[corner];
            var unblocked = Sides(p) with { Diagonal = new(Name(from), Name(to), Length.FromMillimetres(p[from].DistanceTo(p[to]))) };
            SameUpToMotion(p, Given.Made(Rectangle(unblocked)).Unblocked!, RectangleCorners);
        });

    [Fact]
    public void Equal_opposite_sides_without_a_diagonal_are_square_with_a_note()
    {
        var findings = new Findings(LengthUnit.Centimetres);
        // 48 3/4 in and 4 ft 3/4 in read alike, whatever the last digit of the conversion says.
        var piece = Given.Made(Rectangle(Given.Unblocked(("lower", 1238.25), ("top", 1238.2500000001), ("left", 500), ("right", 500))), findings);
        Assert.Equal(1238.25 * 500, piece.Unblocked!.SignedArea(), 1e-3);
        Assert.Contains(findings.Notes, n => n.Place == "piece.unblocked.diagonal");
    }

    [Fact]
    public void Unequal_opposite_sides_need_a_diagonal() =>
        Assert.Equal("piece.unblocked.diagonal", Assert.Single(Given.Problems(Rectangle(Given.Unblocked(("lower", 800), ("top", 790), ("left", 500), ("right", 500))))).Path);

    [Theory]
    [InlineData("lower left", "lower right")]
    [InlineData("lower left", "lower left")]
    [InlineData("foot", "upper right")]
    public void A_diagonal_runs_between_opposite_corners(string from, string to)
    {
        var unblocked = Given.Unblocked(("lower", 800), ("top", 790), ("left", 500), ("right", 500)) with { Diagonal = new(from, to, Length.FromMillimetres(940)) };
        Assert.Equal("piece.unblocked.diagonal", Assert.Single(Given.Problems(Rectangle(unblocked))).Path);
    }

    [Theory]
    [InlineData("lower left", "upper right", 1301)]
    [InlineData("lower right", "upper left", 299)]
    [InlineData("upper left", "lower right", 5000)]
    public void Sides_and_a_diagonal_that_cannot_close_are_told_with_their_figures(string from, string to, double length)
    {
        var unblocked = Given.Unblocked(("lower", 800), ("top", 790), ("left", 500), ("right", 500)) with { Diagonal = new(from, to, Length.FromMillimetres(length)) };
        var problem = Assert.Single(Given.Problems(Rectangle(unblocked)));
        Assert.Contains("cannot close: lower 80.0 cm, right 50.0 cm, top 79.0 cm, left 50.0 cm", problem.What, StringComparison.Ordinal);
    }

    [Fact]
    public void Three_sides_that_cannot_close_are_told_with_their_figures()
    {
        var problem = Assert.Single(Given.Problems(Given.Request(
            new TrianglePiece(), Given.Finished(("wingspan", 1480), ("depth", 740)), Given.Unblocked(("right", 500), ("top", 1000), ("left", 500)))));
        Assert.Equal("piece.unblocked.sides", problem.Path);
        Assert.StartsWith("The sides cannot close: top 100.0 cm, left 50.0 cm, right 50.0 cm", problem.What, StringComparison.Ordinal);
    }

    [Fact]
    public void Everything_missing_is_told_at_once()
    {
        var problems = Given.Problems(Given.Request(new RectanglePiece(), Given.Finished(), Given.Unblocked(("lower", 500))));
        Assert.Equal(
            ["piece.finished.width", "piece.finished.length", "piece.unblocked.sides.right", "piece.unblocked.sides.top", "piece.unblocked.sides.left"],
            problems.Select(p => p.Path));
    }

    [Fact]
    public void A_finished_bow_past_the_half_circle_is_refused_on_every_edge_at_once()
    {
        var finished = Given.Finished(("width", 400), ("length", 300)) with { Bows = Given.Mm(("lower", 201), ("left", -151)) };
        Assert.Equal(["piece.finished.bows.lower", "piece.finished.bows.left"], Given.Problems(Given.Request(new RectanglePiece(), finished, null)).Select(p => p.Path));
    }

    private static PieceRequest Rectangle(Measurements unblocked) => Given.Request(new RectanglePiece(), Given.Finished(("width", 900), ("length", 600)), unblocked);

    private static Measurements Sides(Point[] p) =>
        Given.Unblocked(("lower", p[0].DistanceTo(p[1])), ("right", p[1].DistanceTo(p[2])), ("top", p[2].DistanceTo(p[3])), ("left", p[3].DistanceTo(p[0])));

    private static void SameUpToMotion(Point[] expected, Outline actual, IReadOnlyList<string> corners)
    {
        Assert.Equal(corners, actual.Corners.Select(c => c.Name));
        Assert.True(actual.SignedArea() > 0);
        for (var i = 0; i < expected.Length; i++)
        {
            for (var j = 0; j < i; j++)
                Assert.Equal(expected[i].DistanceTo(expected[j]), actual.CornerAt(i).DistanceTo(actual.CornerAt(j)), 1e-6);
        }
    }
}
