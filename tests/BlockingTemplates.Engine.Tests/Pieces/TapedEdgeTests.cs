using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Shapes;
using CsCheck;

namespace BlockingTemplates.Engine.Tests.Pieces;

public sealed class TapedEdgeTests
{
    private static readonly Gen<(double Side, double Bow)> Edge =
        Gen.Select(Gen.Double[50, 2000], Gen.Double[-0.49, 0.49], (side, bow) => (side, bow * side)).Where(e => Math.Abs(e.Item2) > 0.01 * e.Item1);

    [Fact]
    public void Any_two_of_side_bow_and_tape_along_give_the_same_edge() => Edge.Check(300, e =>
    {
        var arc = new CircularArc(new(0, 0), new(e.Side, 0), e.Bow).Length;
        Same(e, Read(e.Side, e.Bow, null));
        Same(e, Read(null, e.Bow, arc));
        Same((e.Side, Math.Abs(e.Bow)), Read(e.Side, null, arc));
        Same(e, Read(e.Side, e.Bow, arc));
        Same(e, Read(e.Side, e.Bow, arc + (0.9 * TapedEdge.Agreement(arc))));
        Disagrees(Read(e.Side, e.Bow, arc + (1.1 * TapedEdge.Agreement(arc)), out var findings), findings);
        Disagrees(Read(e.Side, e.Bow, arc - (1.1 * TapedEdge.Agreement(arc)), out findings), findings);
    });

    [Fact]
    public void Disagreement_is_told_in_the_makers_units()
    {
        var measured = new Measurements { Path = "piece.unblocked", Sides = Given.Mm(("top", 800)), Bows = Given.Mm(("top", 50)), Along = Given.Mm(("top", 900)) };
        var findings = new Findings(LengthUnit.Inches);
        Assert.Null(TapedEdge.Read(measured, "top", findings));
        var problem = Assert.Single(findings.Problems);
        Assert.Equal("piece.unblocked.along.top", problem.Path);
        // 800 mm with a bow of 50 mm: 808.3 mm along = 31 7/8 in; 900 mm = 35 3/8 in (35.43).
        Assert.Equal("On the top edge side, bow and the tape along it disagree: side and bow give 31 7/8 in along, the tape read 35 3/8 in.", problem.What);
    }

    [Fact]
    public void A_bow_of_half_the_side_is_the_half_circle_and_more_is_refused()
    {
        Same((200, 100), Read(200, 100, null));
        Same((200, -100), Read(200, -100, null));
        Assert.Null(Read(200, 100.1, null, out var findings));
        Assert.Equal("piece.unblocked.bows.top", Assert.Single(findings.Problems).Path);
        Assert.Null(Read(null, 100, 300, out findings));
        Assert.Equal("piece.unblocked.bows.top", Assert.Single(findings.Problems).Path);
        Assert.Null(Read(100, null, 160, out findings));
        Assert.Contains("1.60 times", Assert.Single(findings.Problems).What, StringComparison.Ordinal);
        Same((200, 100), Read(null, 100, 100 * Math.PI));
    }

    [Fact]
    public void A_side_alone_is_straight()
    {
        Same((340, 0), Read(340, null, null));
        Same((340, 0), Read(340, null, 340));
    }

    [Fact]
    public void A_tape_along_that_is_a_little_short_is_straight_with_a_note_and_much_too_short_is_refused()
    {
        Same((340, 0), Read(340, null, 337, out var findings));
        Assert.Equal("piece.unblocked.along.top", Assert.Single(findings.Notes).Place);
        Assert.Null(Read(340, null, 330, out findings));
        Assert.Equal("The tape along the top edge reads 33.0 cm, shorter than the straight side of 34.0 cm.", Assert.Single(findings.Problems).What);
    }

    [Fact]
    public void What_is_missing_is_named_once()
    {
        Assert.Null(Read(null, null, null, out var findings));
        Assert.Equal("piece.unblocked.sides.top", Assert.Single(findings.Problems).Path);
        Assert.Null(Read(null, 20, null, out findings));
        Assert.Equal("piece.unblocked.sides.top", Assert.Single(findings.Problems).Path);
        Assert.Null(Read(null, null, 300, out findings));
        Assert.Equal("piece.unblocked.sides.top", Assert.Single(findings.Problems).Path);
    }

    [Fact]
    public void What_stood_in_the_file_but_could_not_be_read_is_not_reported_missing()
    {
        foreach (var path in new[] { "piece.unblocked.sides.top", "piece.unblocked.bows.top", "piece.unblocked.along.top", "piece.unblocked.sides" })
        {
            var findings = new Findings();
            Assert.Null(TapedEdge.Read(new() { Path = "piece.unblocked", Unreadable = new HashSet<string> { path } }, "top", findings));
            Assert.Empty(findings.Problems);
        }
    }

    private static TapedEdge? Read(double? side, double? bow, double? along) => Read(side, bow, along, out _);

    private static TapedEdge? Read(double? side, double? bow, double? along, out Findings findings)
    {
        static IReadOnlyDictionary<string, Length> Of(double? mm) => mm is { } value ? Given.Mm(("top", value)) : Given.Mm();
        findings = new(LengthUnit.Centimetres);
        return TapedEdge.Read(new() { Path = "piece.unblocked", Sides = Of(side), Bows = Of(bow), Along = Of(along) }, "top", findings);
    }

    private static void Same((double Side, double Bow) expected, TapedEdge? actual)
    {
        Assert.NotNull(actual);
        Assert.Equal(expected.Side, actual.Side, 1e-6);
        Assert.Equal(expected.Bow, actual.Bow, 1e-6);
    }

    private static void Disagrees(TapedEdge? edge, Findings findings)
    {
        Assert.Null(edge);
        Assert.Contains("disagree", Assert.Single(findings.Problems).What, StringComparison.Ordinal);
    }
}
