using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Tests.Projects;

namespace BlockingTemplates.Engine.Tests.Pieces;

// Each wrong or contradictory measurement of a kind is one problem, at its place, in the kind's words.
public class KindProblemsTests
{
    public static TheoryData<string, string> MissingOnes
    {
        get
        {
            var missing = new TheoryData<string, string>();
            foreach (var kind in PieceKinds.All)
            {
                foreach (var size in kind.FinishedSizes.Where(s => s.IsAsked))
                    missing.Add(kind.Shape, size.Name);
            }

            return missing;
        }
    }

    private static string Project(string shape, string finished, string? unblocked = null) =>
        $"{{ \"units\": \"cm\", \"piece\": {{ \"shape\": \"{shape}\", \"finished\": {{ {finished} }}{(unblocked is null ? "" : $", \"unblocked\": {{ {unblocked} }}")} }} }}";

    private static IReadOnlyList<(string Path, string What)> Problems(string text)
    {
        var reading = Reading.Of(text);
        var findings = new Findings(reading.Project?.Units ?? LengthUnit.Centimetres);
        findings.AddAll(reading.Findings);
        if (reading.Project is { } project)
        {
            PieceMaker.Make(
                new(project.Kind, project.Finished, project.Unblocked, project.Edges, project.FaceUp, project.MeasuredFaceUp, project.EvenOut, project.Fabric),
                findings);
        }

        Assert.All(findings.Problems, Reading.AssertSaysAll);
        return [.. findings.Problems.Select(p => (p.Path, p.What))];
    }

    [Theory]
    [MemberData(nameof(MissingOnes))]
    public void A_missing_finished_measurement_is_the_one_problem_and_says_where_the_tape_goes(string shape, string missing)
    {
        var sizes = RandomPieces.Sizes(shape, new Random(3));
        var kind = PieceKinds.Find(shape)!;
        if (kind.FinishedSizes.Any(s => s.InsteadOf == missing))
            sizes.Remove("height");
        sizes.Remove(missing);
        var text = Project(shape, string.Join(", ", sizes.Select(s => $"\"{s.Key}\": \"{s.Value.ToString("0.0", System.Globalization.CultureInfo.InvariantCulture)} mm\"")));
        var (path, what) = Assert.Single(Problems(text));
        Assert.Equal($"piece.finished.{missing}", path);
        Assert.Contains("is missing", what, StringComparison.Ordinal);
        Assert.Contains(kind.FinishedSizes.Single(s => s.Name == missing).Words, what, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("triangle", "\"wingspan\": 100, \"rightSide\": 30, \"leftSide\": 60", "piece.finished", "The sides cannot close")]
    [InlineData("triangle", "\"wingspan\": 100, \"rightSide\": 60", "piece.finished.leftSide", "left side is missing beside right side")]
    [InlineData("triangle", "\"wingspan\": 100, \"depth\": 50, \"rightSide\": 70", "piece.finished.rightSide", "given twice: by depth and by right side")]
    [InlineData("triangle", "\"wingspan\": 100, \"rightSide\": 70, \"leftSide\": 70, \"offset\": 5", "piece.finished.offset", "beside three sides")]
    [InlineData("crescent", "\"wingspan\": 100, \"depth\": 45, \"rise\": 10", "piece.finished.depth", "more than half the wingspan of 100.0 cm: the lower edge")]
    [InlineData("crescent", "\"wingspan\": 100, \"depth\": 45, \"rise\": 51", "piece.finished.rise", "the top edge would be an arc past the half circle")]
    [InlineData("semicircle", "\"wingspan\": -5", "piece.finished.wingspan", "is negative")]
    [InlineData("circle", "\"diameter\": 0", "piece.finished.diameter", "is less than 1 cm")]
    [InlineData("circle", "\"diameter\": 40, \"bows\": {}", "piece.finished.bows", "is no name in the finished size of a circle")]
    [InlineData("crescent", "\"wingspan\": 100, \"depth\": 30, \"rise\": 0, \"sides\": {}", "piece.finished.sides", "is no name in the finished size of a crescent")]
    [InlineData("kite", "\"wingspan\": 100, \"depth\": 60, \"peak\": 60", "piece.finished.peak", "the tips would lie at the foot or below it")]
    [InlineData("kite", "\"wingspan\": 100, \"depth\": 60, \"peak\": 20, \"bows\": { \"right\": 2 }", "piece.finished.bows.right", "is no name in the edges of a kite")]
    [InlineData("square", "\"side\": 50, \"bows\": { \"top\": 26 }", "piece.finished.bows.top", "arc past the half circle")]
    [InlineData("octagon", "\"side\": 10, \"height\": 24", "piece.finished.height", "given twice: by side and by height")]
    [InlineData("octagon", "\"side\": 10, \"hight\": 24", "piece.finished.hight", "no name in the finished size of an octagon")]
    [InlineData("collar", "\"innerEdge\": 40, \"outerEdge\": 40, \"depth\": 10", "piece.finished.outerEdge", "not longer than the inner edge of 40.0 cm")]
    [InlineData("collar", "\"innerEdge\": 40, \"outerEdge\": 110, \"depth\": 10", "piece.finished.depth", "turn through 401 degrees: the ends would meet")]
    [InlineData("collar", "\"innerEdge\": 40, \"outerEdge\": 102, \"depth\": 10", "piece.finished.depth", "turn through 355 degrees: the ends would meet")]
    [InlineData("panel", "\"hem\": 50, \"chest\": 50, \"length\": 22, \"armhole\": 20, \"shoulders\": 40, \"shoulderSlope\": 3, \"neckWidth\": 18, \"neckDepth\": 8", "piece.finished.armhole", "nothing is left for the side seam")]
    [InlineData("panel", "\"hem\": 50, \"chest\": 50, \"length\": 60, \"armhole\": 20, \"shoulders\": 40, \"shoulderSlope\": 3, \"neckWidth\": 40, \"neckDepth\": 8", "piece.finished.neckWidth", "no shoulder seam is left")]
    [InlineData("panel", "\"hem\": 50, \"chest\": 50, \"length\": 60, \"armhole\": 20, \"shoulders\": 40, \"shoulderSlope\": 3, \"neckWidth\": 18, \"neckDepth\": 60", "piece.finished.neckDepth", "would cut the piece in two")]
    [InlineData("panel", "\"hem\": 50, \"chest\": 50, \"length\": 60, \"armhole\": 20, \"shoulders\": 40, \"shoulderSlope\": -3, \"neckWidth\": 18, \"neckDepth\": 8", "piece.finished.shoulderSlope", "is negative")]
    [InlineData("sleeve", "\"cuff\": 20, \"upperArm\": 36, \"length\": 44, \"cap\": -1", "piece.finished.cap", "is negative")]
    [InlineData("sleeve", "\"cuff\": 20, \"upperArm\": 36, \"length\": 44, \"cap\": 10, \"bows\": { \"cuff\": 11 }", "piece.finished.bows.cuff", "arc past the half circle")]
    [InlineData("parallelogram", "\"width\": 50, \"height\": 2500, \"offset\": 0", "piece.finished.height", "is more than 2000 cm")]
    [InlineData("trapezoid", "\"lowerWidth\": 50, \"topWidth\": \"wide\", \"height\": 20", "piece.finished.topWidth", "\"wide\"")]
    public void A_wrong_finished_measurement(string shape, string finished, string path, string what)
    {
        var problem = Assert.Single(Problems(Project(shape, finished)));
        Assert.Equal(path, problem.Path);
        Assert.Contains(what, problem.What, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("crescent", "\"wingspan\": 100, \"depth\": 30, \"rise\": 5", "\"wingspan\": 90", "piece.unblocked.depth", "The unblocked depth is missing", 2)]
    [InlineData("crescent", "\"wingspan\": 100, \"depth\": 30, \"rise\": 5", "\"sides\": {}", "piece.unblocked.sides", "no name in the unblocked size of a crescent", 4)]
    [InlineData("circle", "\"diameter\": 50", "\"diameter\": 45", "piece.unblocked.diameter", "no name in the unblocked size of a circle", 3)]
    [InlineData("semicircle", "\"wingspan\": 100", "\"wingspan\": 90, \"depth\": 40, \"bows\": { \"top\": -50 }", "piece.unblocked.bows.top", "arc past the half circle", 1)]
    [InlineData("semicircle", "\"wingspan\": 100", "\"wingspan\": 90, \"depth\": 20, \"bows\": { \"top\": -30 }", "piece.unblocked", "crosses or touches itself", 1)]
    [InlineData("kite", "\"wingspan\": 100, \"depth\": 60, \"peak\": 20", "\"sides\": { \"lower right\": 60, \"upper right\": 50, \"upper left\": 50, \"lower left\": 60 }", "piece.unblocked.diagonal", "The diagonal is missing: the sides lower right 60.0 cm", 1)]
    [InlineData("trapezoid", "\"lowerWidth\": 50, \"topWidth\": 30, \"height\": 20", "\"sides\": { \"lower\": 45, \"right\": 21, \"top\": 28, \"left\": 21 }, \"diagonal\": { \"from\": \"lower left\", \"to\": \"upper right\", \"length\": 80 }", "piece.unblocked.diagonal", "The sides and the diagonal cannot close: lower 45.0 cm", 1)]
    [InlineData("sleeve", "\"cuff\": 20, \"upperArm\": 36, \"length\": 44, \"cap\": 10", "\"cuff\": 20, \"upperArm\": 34, \"length\": 42, \"cap\": 10, \"bows\": { \"cap\": 1 }", "piece.unblocked.bows.cap", "no name in the edges of a sleeve", 1)]
    [InlineData("hexagon", "\"side\": 10", "\"height\": 17", "piece.unblocked.width", "The unblocked width is missing", 1)]
    public void A_wrong_unblocked_measurement(string shape, string finished, string unblocked, string path, string what, int problems)
    {
        var found = Problems(Project(shape, finished, unblocked));
        Assert.Equal(problems, found.Count);
        Assert.Contains(found, p => p.Path == path && p.What.Contains(what, StringComparison.Ordinal));
    }

    [Fact]
    public void A_finished_size_that_is_missing_as_a_whole_is_one_problem()
    {
        foreach (var kind in PieceKinds.All)
            Assert.Equal("piece.finished", Assert.Single(Problems($"{{ \"piece\": {{ \"shape\": \"{kind.Shape}\" }} }}")).Path);
    }
}
