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

    public static TheoryData<string, string, string, string, string> WrongOnes
    {
        get
        {
            var wrong = new TheoryData<string, string, string, string, string>();
            foreach (var kind in PieceKinds.All.Where(k => !k.GivenByCorners))
            {
                var unblocked = kind.IsMeasuredBySides ? kind.EdgeNames.Select(e => (Name: e, Reach: SizeReach.AboveZero)) : kind.UnblockedSizes.Select(s => (s.Name, s.Reach));
                foreach (var (state, name, reach) in kind.FinishedSizes.Select(s => ("finished", s.Name, s.Reach)).Concat(unblocked.Select(u => ("unblocked", u.Name, u.Reach))))
                {
                    wrong.Add(kind.Shape, state, name, "\"as long as my arm\"", "");
                    wrong.Add(kind.Shape, state, name, "true", "a length");
                    wrong.Add(kind.Shape, state, name, "99999", "is more than 2000 cm");
                    wrong.Add(kind.Shape, state, name, "null", "blank");
                    if (reach != SizeReach.EitherWay)
                        wrong.Add(kind.Shape, state, name, "-7", "is negative");
                    if (reach == SizeReach.AboveZero)
                        wrong.Add(kind.Shape, state, name, "0", "is less than 1 cm");
                }
            }

            return wrong;
        }
    }

    [Theory]
    [MemberData(nameof(WrongOnes))]
    public void Every_measurement_of_every_kind_that_cannot_be_is_one_problem_at_its_place(string shape, string state, string name, string value, string what)
    {
        var kind = PieceKinds.Find(shape)!;
        var sizes = RandomPieces.Sizes(shape, new Random(4)).ToDictionary(s => s.Key, s => $"\"{s.Value.ToString("0.0", System.Globalization.CultureInfo.InvariantCulture)} mm\"");
        Dictionary<string, string> taped = [];
        if (state == "unblocked")
            taped = (kind.IsMeasuredBySides ? kind.EdgeNames : kind.UnblockedSizes.Select(s => s.Name)).ToDictionary(n => n, _ => "30");
        else if (kind.FinishedSizes.Single(s => s.Name == name) is { } asked && (asked.InsteadOf is not null || kind.FinishedSizes.Any(s => s.InsteadOf == name)))
        {
            // One way of giving the size at a time.
            foreach (var other in kind.FinishedSizes.Where(s => (s.InsteadOf ?? s.Name) == (asked.InsteadOf ?? name)))
            {
                sizes.Remove(other.Name);
                if (other.InsteadOf == asked.InsteadOf)
                    sizes[other.Name] = "40";
            }

            sizes.Remove("offset");
        }

        (state == "finished" ? sizes : taped)[name] = value;
        string Listed(Dictionary<string, string> entries) => string.Join(", ", entries.Select(e => $"\"{e.Key}\": {e.Value}"));
        var unblocked = state == "finished" ? null : kind.IsMeasuredBySides ? $"\"sides\": {{ {Listed(taped)} }}" : Listed(taped);
        var (path, said) = Assert.Single(Problems(Project(shape, Listed(sizes), unblocked)));
        Assert.Equal(state == "unblocked" && kind.IsMeasuredBySides ? $"piece.unblocked.sides.{name}" : $"piece.{state}.{name}", path);
        Assert.Contains(what, said, StringComparison.Ordinal);
    }

    public static TheoryData<string, string> MissingUnblocked
    {
        get
        {
            var missing = new TheoryData<string, string>();
            foreach (var kind in PieceKinds.All.Where(k => !k.GivenByCorners))
            {
                foreach (var name in kind.IsMeasuredBySides ? kind.EdgeNames : kind.UnblockedSizes.Select(s => s.Name))
                    missing.Add(kind.Shape, name);
            }

            return missing;
        }
    }

    [Theory]
    [MemberData(nameof(MissingUnblocked))]
    public void A_missing_unblocked_measurement_is_a_problem_in_the_kinds_words(string shape, string missing)
    {
        var kind = PieceKinds.Find(shape)!;
        var sizes = RandomPieces.Sizes(shape, new Random(5)).Select(s => $"\"{s.Key}\": \"{s.Value.ToString("0.0", System.Globalization.CultureInfo.InvariantCulture)} mm\"");
        var taped = string.Join(", ", (kind.IsMeasuredBySides ? kind.EdgeNames : kind.UnblockedSizes.Select(s => s.Name)).Where(n => n != missing).Select(n => $"\"{n}\": 30"));
        var problems = Problems(Project(shape, string.Join(", ", sizes), kind.IsMeasuredBySides ? $"\"sides\": {{ {taped} }}" : taped));
        var words = kind.IsMeasuredBySides ? missing : kind.UnblockedSizes.Single(s => s.Name == missing).Words;
        var (path, what) = Assert.Single(problems);
        Assert.Equal(kind.IsMeasuredBySides ? $"piece.unblocked.sides.{missing}" : $"piece.unblocked.{missing}", path);
        Assert.Contains(words, what, StringComparison.Ordinal);
        Assert.Contains("is missing", what, StringComparison.Ordinal);
    }

    [Fact]
    public void A_finished_size_that_is_missing_as_a_whole_is_one_problem()
    {
        foreach (var kind in PieceKinds.All)
            Assert.Equal("piece.finished", Assert.Single(Problems($"{{ \"piece\": {{ \"shape\": \"{kind.Shape}\" }} }}")).Path);
    }
}
