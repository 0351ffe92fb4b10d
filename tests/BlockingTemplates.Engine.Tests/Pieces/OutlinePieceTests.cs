using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Tests.Pieces;

public sealed class OutlinePieceTests
{
    private static readonly CornerEntry[] Square = [Given.Corner(0, 0), Given.Corner(400, 0), Given.Corner(400, 400), Given.Corner(0, 400)];

    [Fact]
    public void Every_way_of_giving_an_edge_is_understood()
    {
        var finished = Given.Made(Finished(Square,
        [
            Given.Bowed("lower", 40),
            new("right", Offsets: [Given.Pair(100, 10), Given.Pair(200, 20), Given.Pair(300, 10)]),
            new("top", Points: [Given.Pair(250, 450)]),
            new(),
        ])).Finished;
        Assert.IsType<CircularArc>(finished.Edges[0].Curve);
        Assert.InRange(finished.Edges[0].Curve.At(0.5).DistanceTo(new(200, -40)), 0, 1e-9);
        Assert.IsType<SplineEdge>(finished.Edges[1].Curve);
        Assert.InRange(finished.Edges[1].Curve.At(0.5).DistanceTo(new(420, 200)), 0, 1e-9);
        Assert.IsType<PolylineEdge>(finished.Edges[2].Curve);
        Assert.IsType<StraightEdge>(finished.Edges[3].Curve);
        Assert.Equal(["lower", "right", "top", "edge 4"], finished.Edges.Select(e => e.Name));
        Assert.Equal(["corner 1", "corner 2", "corner 3", "corner 4"], finished.Corners.Select(c => c.Name));
    }

    [Fact]
    public void A_lens_of_two_corners_is_an_outline()
    {
        var lens = Given.Made(Finished([Given.Corner(0, 0), Given.Corner(600, 0)], [Given.Bowed("lower", 90), Given.Bowed("upper", 60)])).Finished;
        Assert.Equal(2, lens.Edges.Count);
        Assert.True(lens.SignedArea() > 0);
    }

    [Fact]
    public void Clockwise_corners_are_told()
    {
        var problem = Assert.Single(Given.Problems(Finished([.. Square.Reverse()], null)));
        Assert.Equal(("piece.finished.corners", "The corners run clockwise."), (problem.Path, problem.What));
    }

    [Fact]
    public void A_bow_tie_is_told_with_the_edges_that_cross()
    {
        var problem = Assert.Single(Given.Problems(Finished([Square[0], Square[1], Square[3], Square[2]], [new("lower"), new("up"), new("top"), new("down")])));
        Assert.Equal("piece.finished", problem.Path);
        Assert.Equal("The outline crosses or touches itself near x 20.0 cm, y 20.0 cm, at edge \"up\" and \"down\".", problem.What);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    public void Too_few_corners_are_told(int count) =>
        Assert.Equal("piece.finished.corners", Assert.Single(Given.Problems(Finished([.. Square.Take(count)], null))).Path);

    [Fact]
    public void No_corners_at_all_are_told() =>
        Assert.Equal("piece.finished.corners", Assert.Single(Given.Problems(Given.Request(new OutlinePiece(), new() { Path = "piece.finished" }, null))).Path);

    [Fact]
    public void Outlines_that_hold_no_area_are_told()
    {
        foreach (var corners in new CornerEntry[][] { [Square[0], Square[1]], [Square[0], Given.Corner(200, 0), Square[1]], [Square[0], Given.Corner(9, 0), Given.Corner(9, 9)] })
            Assert.Equal("The outline holds no area.", Assert.Single(Given.Problems(Finished(corners, null))).What);
    }

    [Fact]
    public void Two_arcs_that_lie_on_each_other_are_told() =>
        Assert.Single(Given.Problems(Finished([Given.Corner(0, 0), Given.Corner(600, 0)], [Given.Bowed("lower", 90), Given.Bowed("upper", -90)])));

    [Fact]
    public void A_wrong_number_of_edges_is_told() =>
        Assert.Equal(("piece.finished.edges", "There are 4 corners but 3 edges."), Assert.Single(Given.Problems(Finished(Square, [new(), new(), new()]))) is var p ? (p.Path, p.What) : default);

    [Fact]
    public void Several_wrong_edges_are_told_at_once_each_with_its_path()
    {
        var problems = Given.Problems(Finished(Square,
        [
            Given.Bowed("lower", 201),
            new("right", Offsets: [Given.Pair(200, 10), Given.Pair(100, 20)]),
            new("top", Points: [Given.Pair(300, 450), Given.Pair(300, 450)]),
            new("left", Bow: Length.FromMillimetres(3), Points: [Given.Pair(-10, 200)]),
        ]));
        Assert.Equal(["piece.finished.edges[0].bow", "piece.finished.edges[1].offsets[1]", "piece.finished.edges[2].points[1]", "piece.finished.edges[3]"], problems.Select(p => p.Path));
        Assert.Equal("Stations of edge \"right\" must come one after the other between its corners, 40.0 cm apart; this one stands at 10.0 cm.", problems[1].What);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(400)]
    [InlineData(-5)]
    public void Stations_lie_inside_the_chord(double along) =>
        Assert.Equal("piece.finished.edges[0].offsets[0]", Assert.Single(Given.Problems(Finished(Square, [new("lower", Offsets: [Given.Pair(along, 5)]), new(), new(), new()]))).Path);

    [Fact]
    public void Corners_on_the_same_place_are_told()
    {
        var problem = Assert.Single(Given.Problems(Finished([Square[0], Square[1], Given.Corner(400, 0.5), Square[2]], null)));
        Assert.Equal("piece.finished.corners[1]", problem.Path);
    }

    [Fact]
    public void A_point_on_a_corner_is_told() =>
        Assert.Equal("piece.finished.edges[0].points[0]", Assert.Single(Given.Problems(Finished(Square, [new("lower", Points: [Given.Pair(0, 0)]), new(), new(), new()]))).Path);

    [Fact]
    public void Finished_and_unblocked_are_judged_at_once()
    {
        var request = Finished([.. Square.Reverse()], null) with { Unblocked = Given.Corners("piece.unblocked", [Square[0], Square[1], Square[3], Square[2]]) };
        Assert.Equal(["piece.finished.corners", "piece.unblocked"], Given.Problems(request).Select(p => p.Path));
    }

    [Fact]
    public void What_could_not_be_read_is_not_reported_twice()
    {
        var findings = new Findings();
        var request = Given.Request(new OutlinePiece(), new() { Path = "piece.finished", Unreadable = new HashSet<string> { "piece.finished.corners" } }, null);
        Assert.Null(PieceMaker.Make(request, findings));
        Assert.Empty(findings.Problems);
    }

    private static PieceRequest Finished(IReadOnlyList<CornerEntry> corners, IReadOnlyList<EdgeEntry>? edges) =>
        Given.Request(new OutlinePiece(), Given.Corners("piece.finished", corners, edges), null);
}
