using System.Text.Json.Nodes;
using BlockingTemplates.Engine.Measure;

namespace BlockingTemplates.Engine.Tests.Projects;

public class LinesTests
{
    private static readonly string[] OddNames = ["a", "a.b", "a.b[0]", "a.b[0].count"];
    private static readonly string[] Opaque = ["swatch", "strips", "floor", "fringe"];

    private const string Text = """
        {
          "piece": {
            "shape": "outline",
            "finished": { "corners": [
              [0, 0],
              [800, 0],
              { "at": [800, 400],
                "name": "odd.name [1]" } ],
              "edges": [ { "name": "a" },
                         { "name": "b",
                           "bow": 4 } ] },
            "edges": { "a":
              { "count": 3 } }
          },
          "pins":
            { }
        }
        """;

    [Theory]
    [InlineData("", 1)]
    [InlineData("piece", 2)]
    [InlineData("piece.shape", 3)]
    [InlineData("piece.finished.corners[1]", 6)]
    [InlineData("piece.finished.corners[1][1]", 6)]
    [InlineData("piece.finished.corners[2].at", 7)]
    [InlineData("piece.finished.corners[2].name", 8)]
    [InlineData("piece.finished.edges[1].bow", 11)]
    [InlineData("piece.finished.edges[1].offsets[3][0]", 10)]
    [InlineData("piece.finished.edges[7].bow", 9)]
    [InlineData("piece.unblocked.sides.top", 2)]
    [InlineData("piece.edges.a.count", 13)]
    [InlineData("piece.edges.a", 12)]
    [InlineData("pins.scallop", 15)]
    [InlineData("sheets.paper", 1)]
    [InlineData("edge top", null)]
    [InlineData("B3", null)]
    [InlineData("[0]", null)]
    public void A_path_has_the_line_of_its_nearest_place_in_the_file(string path, int? line) =>
        Assert.Equal(line, Reading.Of(Text).Lines.LineOf(path));

    [Fact]
    public void What_later_stages_find_gets_its_line()
    {
        var later = new Findings();
        later.Problem("piece.finished.edges[1].bow", "What.", "Do.");
        later.Problem("piece.shape", "What.", "Do.", 99);
        later.Note("B3", "What.", "Do.");
        later.Note("pins.owned", "What.", "Do.");
        var located = Reading.Of(Text).Lines.WithLines(later);
        Assert.Equal([11, 99], located.Problems.Select(p => p.Line));
        Assert.Equal([null, 15], located.Notes.Select(n => n.Line));
        Assert.Null(Reading.Of("{").Lines.LineOf("piece"));
    }

    [Fact]
    public void Names_with_points_and_brackets_in_them_are_found()
    {
        var lines = Reading.Of("{ \"piece\": { \"edges\": {\n\"a\": {},\n\"a.b\": {},\n\"a.b[0]\": {\n\"count\": 1 } } } }").Lines;
        Assert.Equal([2, 3, 4, 5], OddNames.Select(n => lines.LineOf("piece.edges." + n)));
    }

    // The slow way: every value stands on a line of its own; each in turn is made wrong, and the problem has to name that line.
    [Theory]
    [InlineData("lace-triangle.jsonc")]
    [InlineData("rectangle-with-short-edge.jsonc")]
    [InlineData("crescent-outline.jsonc")]
    public void A_value_made_wrong_is_reported_in_its_own_line(string example)
    {
        var options = new System.Text.Json.JsonDocumentOptions { CommentHandling = System.Text.Json.JsonCommentHandling.Skip };
        var lines = JsonNode.Parse(File.ReadAllText(Path.Combine(Reading.Shared, "examples", example)), null, options)!
            .ToJsonString(new() { WriteIndented = true, NewLine = "\n" }).Split('\n');
        Assert.Empty(Reading.Of(string.Join('\n', lines)).Findings.Problems);
        var tried = 0;
        for (var i = 0; i < lines.Length; i++)
        {
            var value = lines[i].TrimEnd(',');
            var start = value.IndexOf(": ", StringComparison.Ordinal) is var colon and >= 0 ? colon + 2 : value.Length - value.TrimStart().Length;
            if (value.Length == 0 || value[^1] is '{' or '[' or '}' or ']' || IsOpaque(lines[i]))
                continue;
            var changed = (string[])[.. lines];
            changed[i] = value[..start] + "[[]]" + (lines[i].EndsWith(',') ? "," : "");
            var reading = Reading.Of(string.Join('\n', changed));
            var problems = reading.Findings.Problems;
            Assert.NotEmpty(problems);
            Assert.All(problems, p => Assert.Equal(p.Line, reading.Lines.LineOf(p.Path)));
            Assert.Contains(problems, p => p.Line == i + 1);
            // What else is reported follows from it: an edge no longer named, an anchor no longer known.
            Assert.True(problems.Count == 1 || lines[i].Contains("\"name\"", StringComparison.Ordinal) || lines[i].Contains("shape", StringComparison.Ordinal), lines[i]);
            tried++;
        }

        Assert.True(tried > 25, $"{tried}");

        // Reserved names take anything.
        static bool IsOpaque(string line) => Opaque.Any(n => line.Contains($"\"{n}\"", StringComparison.Ordinal));
    }
}
