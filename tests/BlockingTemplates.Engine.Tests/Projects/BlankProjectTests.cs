using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Projects;

namespace BlockingTemplates.Engine.Tests.Projects;

public class BlankProjectTests
{
    private static readonly string[] Both = ["finished", "unblocked"];

    public static TheoryData<string, LengthUnit> All
    {
        get
        {
            var all = new TheoryData<string, LengthUnit>();
            foreach (var kind in PieceKinds.All)
            {
                foreach (var units in Enum.GetValues<LengthUnit>())
                    all.Add(kind.Shape, units);
            }

            return all;
        }
    }

    private static string Text(string shape, LengthUnit units) => BlankProject.For(PieceKinds.All.Single(k => k.Shape == shape), units);

    [Theory]
    [MemberData(nameof(All))]
    public void Reading_a_blank_project_lists_exactly_its_blanks(string shape, LengthUnit units)
    {
        var reading = Reading.Of(Text(shape, units));
        Assert.All(reading.Findings.Problems, p =>
        {
            Assert.Equal("This is still blank.", p.What);
            Assert.StartsWith("Fill it in", p.Do, StringComparison.Ordinal);
            Assert.Contains("null", Text(shape, units).Split('\n')[p.Line!.Value - 1], StringComparison.Ordinal);
        });
        Assert.Empty(reading.Findings.Notes);
        Assert.Equal(Blanks(shape), reading.Findings.Problems.Select(p => p.Path));
        Assert.Equal(units, reading.Project!.Units);
    }

    private static IEnumerable<string> Blanks(string shape)
    {
        var kind = PieceKinds.All.Single(k => k.Shape == shape);
        if (!kind.GivenByCorners)
        {
            return
            [
                .. kind.FinishedSizes.Where(s => s.IsAsked).Select(s => $"piece.finished.{s.Name}"),
                .. kind.UnblockedSizes.Where(s => s.IsAsked).Select(s => $"piece.unblocked.{s.Name}"),
                .. (kind.IsMeasuredBySides ? kind.EdgeNames : []).Select(e => $"piece.unblocked.sides.{e}"),
                .. (kind.IsMeasuredBySides ? kind.EdgeNames : []).Select(e => $"piece.unblocked.bows.{e}"),
                .. (string[])(kind.TakesDiagonal ? ["piece.unblocked.diagonal.length"] : []),
            ];
        }

        return Both.SelectMany(size => (string[])
        [
            .. Enumerable.Range(1, 3).SelectMany(i => Enumerable.Range(0, 2).Select(k => $"piece.{size}.corners[{i}].at[{k}]")),
            .. Enumerable.Range(0, 4).Select(i => $"piece.{size}.edges[{i}].bow"),
        ]);
    }

    [Theory]
    [MemberData(nameof(All))]
    public void With_every_blank_filled_in_it_is_a_project(string shape, LengthUnit units)
    {
        var text = Text(shape, units);
        for (var i = 0; i < 100; i++)
        {
            if (Reading.Of(text).Findings.Problems is not [var first, ..])
                break;
            // One null a blank, in the line that the problem names.
            var lines = text.Split('\n');
            var line = lines[first.Line!.Value - 1];
            var at = line.IndexOf("null", StringComparison.Ordinal);
            lines[first.Line.Value - 1] = line[..at] + "12.5" + line[(at + 4)..];
            text = string.Join('\n', lines);
        }

        var project = Reading.Clean(text);
        Assert.NotNull(project.Unblocked);
        Assert.Empty(project.Finished.Unreadable);
        Assert.Empty(project.Unblocked.Unreadable);
    }

    [Fact]
    public void Every_measurement_says_where_the_tape_goes()
    {
        var text = Text("triangle", LengthUnit.Centimetres);
        Assert.Contains("\"wingspan\": null,", text, StringComparison.Ordinal);
        foreach (var line in text.Split('\n').Where(l => l.Contains("null", StringComparison.Ordinal) && l.StartsWith("      ", StringComparison.Ordinal) && !l.Contains("diagonal", StringComparison.Ordinal)))
            Assert.Contains(" // ", line, StringComparison.Ordinal);
        Assert.Contains("tip to tip along the top edge", text, StringComparison.Ordinal);
        Assert.Contains("straight, right tip to left tip", text, StringComparison.Ordinal);
        Assert.Contains("pat it, do not pull", text, StringComparison.Ordinal);
    }

    [Fact]
    public void The_schema_is_named_where_one_is_given() =>
        Assert.Contains("\"$schema\": \"a/\\\"b.json\",", BlankProject.For(PieceKinds.All[0], LengthUnit.Inches, "a/\"b.json"), StringComparison.Ordinal);
}
