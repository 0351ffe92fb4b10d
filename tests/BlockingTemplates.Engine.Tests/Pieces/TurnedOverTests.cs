using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Tests.Pieces;

/// <summary>Pieces measured with the other side up than they are pinned with.</summary>
public sealed class TurnedOverTests
{
    private static readonly Measurements LopsidedTriangle = Given.Unblocked(("top", 1280), ("left", 900), ("right", 950)) with
    {
        Bows = Given.Mm(("left", 50), ("top", -30)),
        Along = Given.Mm(("right", 965)),
    };

    private static readonly Measurements MirroredTriangle = Given.Unblocked(("top", 1280), ("left", 950), ("right", 900)) with
    {
        Bows = Given.Mm(("right", 50), ("top", -30)),
        Along = Given.Mm(("left", 965)),
    };

    [Fact]
    public void A_triangle_is_the_mirrored_one()
    {
        var request = Given.Request(new TrianglePiece(), Given.Finished(("wingspan", 1480), ("depth", 740)), LopsidedTriangle);
        Same(Given.Made(request with { Unblocked = MirroredTriangle }), Given.Made(request with { MeasuredFaceUp = WorkSide.WrongSide }));
    }

    [Fact]
    public void A_rectangle_with_a_diagonal_is_the_mirrored_one()
    {
        var measured = Given.Unblocked(("lower", 800), ("top", 760), ("left", 500), ("right", 540)) with
        {
            Bows = Given.Mm(("left", 20), ("lower", -10)),
            Diagonal = new("lower left", "upper right", Length.FromMillimetres(940)),
        };
        var mirrored = Given.Unblocked(("lower", 800), ("top", 760), ("left", 540), ("right", 500)) with
        {
            Bows = Given.Mm(("right", 20), ("lower", -10)),
            Diagonal = new("upper left", "lower right", Length.FromMillimetres(940)),
        };
        var request = Given.Request(new RectanglePiece(), Given.Finished(("width", 900), ("length", 600)), measured);
        Same(Given.Made(request with { Unblocked = mirrored }), Given.Made(request with { MeasuredFaceUp = WorkSide.WrongSide }));
    }

    [Fact]
    public void A_general_outline_is_mirrored_by_the_names_of_its_edges()
    {
        // As pinned, counter-clockwise: lower, side, top, spine. As measured from behind, counter-clockwise too: the reverse order.
        Point[] front = [new(0, 0), new(500, 30), new(420, 380), new(-20, 300)];
        string[] names = ["lower", "side", "top", "spine"];
        var asPinned = Given.Corners("piece.unblocked", [.. front.Select(p => Given.Corner(p.X, p.Y))], [.. names.Select((n, i) => Given.Bowed(n, 5 * i))]);
        int[] order = [1, 0, 3, 2];
        var behind = Given.Corners(
            "piece.unblocked",
            [.. order.Select(i => Given.Corner(1000 - front[i].X, front[i].Y))],
            [.. order.Select(i => (i + 3) % 4).Select(i => Given.Bowed(names[i], 5 * i))]);
        var finished = Given.Corners("piece.finished", [.. front.Select(p => Given.Corner(1.2 * p.X, 1.2 * p.Y))], [.. names.Select(n => new EdgeEntry(n))]);
        var request = Given.Request(new OutlinePiece(), finished, asPinned);
        Same(Given.Made(request), Given.Made(request with { Unblocked = behind, MeasuredFaceUp = WorkSide.WrongSide }));
    }

    [Fact]
    public void A_note_says_so_and_the_grain_is_mirrored()
    {
        var request = Given.Request(new TrianglePiece(), Given.Finished(("wingspan", 1480), ("depth", 740)), LopsidedTriangle);
        request = request with { MeasuredFaceUp = WorkSide.WrongSide, Fabric = request.Fabric with { GrainDegrees = 30 } };
        var findings = new Findings();
        Assert.Equal(-30, Given.Made(request, findings).Fabric.GrainDegrees);
        Assert.Contains(findings.Notes, n => n.Place == "piece.unblocked" && n.What.Contains("other side up", StringComparison.Ordinal));
    }

    [Fact]
    public void Problems_name_the_edge_as_it_stands_in_the_file()
    {
        var request = Given.Request(new TrianglePiece(), Given.Finished(("wingspan", 1480), ("depth", 740)), Given.Unblocked(("top", 1280), ("right", 950)));
        Assert.Equal("piece.unblocked.sides.left", Assert.Single(Given.Problems(request with { MeasuredFaceUp = WorkSide.WrongSide })).Path);
        var unreadable = request.Unblocked! with { Unreadable = new HashSet<string> { "piece.unblocked.sides.left" } };
        var findings = new Findings();
        PieceMaker.Make(request with { Unblocked = unreadable, MeasuredFaceUp = WorkSide.WrongSide }, findings);
        Assert.Empty(findings.Problems);
    }

    [Fact]
    public void Edges_that_do_not_match_are_told_with_both_orders()
    {
        CornerEntry[] square = [Given.Corner(0, 0), Given.Corner(400, 0), Given.Corner(400, 400), Given.Corner(0, 400)];
        EdgeEntry[] Named(params string[] names) => [.. names.Select(n => new EdgeEntry(n))];
        var request = Given.Request(
            new OutlinePiece(), Given.Corners("piece.finished", square, Named("a", "b", "c", "d")), Given.Corners("piece.unblocked", square, Named("a", "c", "b", "d")));
        var problem = Assert.Single(Given.Problems(request));
        Assert.Equal(("piece.unblocked.edges", "The edges do not match: finished a, b, c, d; unblocked a, c, b, d."), (problem.Path, problem.What));
        // Seen from behind the same names come in reverse.
        Given.Made(request with { Unblocked = Given.Corners("piece.unblocked", square, Named("b", "a", "d", "c")), MeasuredFaceUp = WorkSide.WrongSide });
        Given.Problems(request with { Unblocked = Given.Corners("piece.unblocked", square, Named("a", "b", "c", "d")), MeasuredFaceUp = WorkSide.WrongSide });
        // Another start is no other order.
        var piece = Given.Made(request with { Unblocked = Given.Corners("piece.unblocked", square, Named("c", "d", "a", "b")) });
        Assert.Equal(["a", "b", "c", "d"], piece.Unblocked!.Edges.Select(e => e.Name));
        Assert.Equal(new Point(400, 400), piece.Unblocked.CornerAt(0));
    }

    [Fact]
    public void A_different_number_of_edges_is_told()
    {
        CornerEntry[] square = [Given.Corner(0, 0), Given.Corner(400, 0), Given.Corner(400, 400), Given.Corner(0, 400)];
        var problem = Assert.Single(Given.Problems(Given.Request(new OutlinePiece(), Given.Corners("piece.finished", square), Given.Corners("piece.unblocked", square[..3]))));
        Assert.Equal(("piece.unblocked.edges", "The finished outline has 4 edges, the unblocked one 3."), (problem.Path, problem.What));
    }

    /// <summary>The same unblocked outline up to a turn and a shift, with the same names in the same order.</summary>
    private static void Same(Piece expected, Piece actual)
    {
        Outline a = expected.Unblocked!, b = actual.Unblocked!;
        Assert.Equal(a.Edges.Select(e => e.Name), b.Edges.Select(e => e.Name));
        if (a.Corners.All(c => !c.Name.StartsWith("corner", StringComparison.Ordinal)))
            Assert.Equal(a.Corners.Select(c => c.Name), b.Corners.Select(c => c.Name));
        var laid = b.Mapped(RigidFit.Lay(b, a, null));
        for (var i = 0; i < a.Edges.Count; i++)
        {
            for (var f = 0.0; f <= 1; f += 0.1)
                Assert.InRange(laid.Edges[i].Curve.At(f).DistanceTo(a.Edges[i].Curve.At(f)), 0, 1e-6);
        }
    }
}
