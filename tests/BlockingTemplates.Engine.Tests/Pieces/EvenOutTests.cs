using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Tests.Pieces;

public sealed class EvenOutTests
{
    [Fact]
    public void Left_and_right_become_their_mean_and_both_are_shown()
    {
        var findings = new Findings(LengthUnit.Centimetres);
        var piece = Given.Made(Triangle(920, 930, evenOut: true), findings);
        Assert.Equal(925, piece.Unblocked!.Line("left").Length, 1e-9);
        Assert.Equal(925, piece.Unblocked!.Line("right").Length, 1e-9);
        Assert.NotNull(MirrorPairing.Of(piece.Unblocked!));
        var note = Assert.Single(findings.Notes);
        Assert.Equal("piece.unblocked.sides", note.Place);
        Assert.Equal("Left 92.0 cm and right 93.0 cm are evened out: both are taken as 92.5 cm.", note.What);
    }

    [Fact]
    public void Equal_sides_need_no_note()
    {
        var findings = new Findings();
        Given.Made(Triangle(920, 920, evenOut: true), findings);
        Given.Made(Triangle(920, 920, evenOut: false), findings);
        Assert.Empty(findings.Notes);
    }

    [Theory]
    [InlineData(1000, 971, true)]
    [InlineData(1000, 970, false)]
    [InlineData(970.1, 1000, true)]
    public void It_is_offered_under_three_percent(double left, double right, bool offered)
    {
        var findings = new Findings();
        var piece = Given.Made(Triangle(left, right, evenOut: false), findings);
        Assert.Equal(left, piece.Unblocked!.Line("left").Length, 1e-9);
        Assert.Equal(offered, findings.Notes.Any(n => n.Place == "piece.unblocked.sides" && n.Do.Contains("\"evenOut\": true", StringComparison.Ordinal)));
    }

    [Fact]
    public void A_bow_on_one_side_only_is_shared_with_the_straight_one()
    {
        var findings = new Findings(LengthUnit.Centimetres);
        var request = Triangle(920, 920, evenOut: true);
        var piece = Given.Made(request with { Unblocked = request.Unblocked! with { Bows = Given.Mm(("left", 50)) } }, findings);
        Assert.NotNull(MirrorPairing.Of(piece.Unblocked!));
        Assert.Equal(CircularSegment.Arc(920, 25), piece.Unblocked!.Line("right").Length, 1e-9);
        Assert.Equal("piece.unblocked.bows", Assert.Single(findings.Notes).Place);
    }

    [Fact]
    public void Sides_measured_in_different_ways_are_told_not_guessed()
    {
        var findings = new Findings(LengthUnit.Centimetres);
        var request = Triangle(920, 930, evenOut: true);
        Given.Made(request with { Unblocked = request.Unblocked! with { Bows = Given.Mm(("left", 50)), Along = Given.Mm(("right", 940)) } }, findings);
        Assert.Equal(["piece.unblocked.sides", "piece.unblocked.bows", "piece.unblocked.along"], findings.Notes.Select(n => n.Place));
        Assert.Equal(2, findings.Notes.Count(n => n.What.StartsWith("Only one of left and right", StringComparison.Ordinal)));
    }

    [Fact]
    public void A_general_outline_is_not_evened_out_and_a_note_says_so()
    {
        CornerEntry[] corners = [Given.Corner(0, 0), Given.Corner(400, 0), Given.Corner(400, 410), Given.Corner(0, 400)];
        var findings = new Findings();
        Given.Made(Given.Request(new OutlinePiece(), Given.Corners("piece.finished", corners), Given.Corners("piece.unblocked", corners)) with { EvenOut = true }, findings);
        Assert.Equal("piece.evenOut", Assert.Single(findings.Notes).Place);
    }

    [Fact]
    public void A_piece_that_was_not_measured_has_no_unblocked_outline_and_a_note()
    {
        var findings = new Findings();
        var piece = Given.Made(Triangle(1, 1, evenOut: true) with { Unblocked = null }, findings);
        Assert.Null(piece.Unblocked);
        Assert.Equal("piece.unblocked", Assert.Single(findings.Notes).Place);
    }

    private static PieceRequest Triangle(double left, double right, bool evenOut) =>
        Given.Request(new TrianglePiece(), Given.Finished(("wingspan", 1480), ("depth", 740)), Given.Unblocked(("top", 1280), ("left", left), ("right", right))) with { EvenOut = evenOut };
}
