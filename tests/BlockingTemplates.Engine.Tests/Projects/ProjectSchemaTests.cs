using System.Text.Json;
using System.Text.Json.Nodes;
using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Projects;
using Json.Schema;

namespace BlockingTemplates.Engine.Tests.Projects;

public class ProjectSchemaTests
{
    private static readonly JsonDocumentOptions Commented = new() { CommentHandling = JsonCommentHandling.Skip, AllowTrailingCommas = true };

    private static readonly JsonSchema Schema = JsonSchema.FromText(ProjectSchema.Text(PieceKinds.All));

    private static string Shipped => Path.Combine(Reading.Shared, "blocking-project.schema.json");

    private static string Complaints(string text)
    {
        using var document = JsonDocument.Parse(text, Commented);
        var results = Schema.Evaluate(document.RootElement, new() { OutputFormat = OutputFormat.List });
        return results.IsValid ? "" : string.Join("\n", (results.Details ?? []).Where(d => d.Errors is not null).SelectMany(d => d.Errors!.Select(e => $"{d.InstanceLocation} {d.EvaluationPath} {e.Key}: {e.Value}")));
    }

    private static bool Accepts(string text)
    {
        using var document = JsonDocument.Parse(text, Commented);
        return Schema.Evaluate(document.RootElement).IsValid;
    }

    // After a change of the records: BLOCKING_TEMPLATES_WRITE_SCHEMA=1 dotnet test ... writes it anew.
    [Fact]
    public void The_shipped_schema_is_the_one_made_of_the_records()
    {
        var text = ProjectSchema.Text(PieceKinds.All);
        if (Environment.GetEnvironmentVariable("BLOCKING_TEMPLATES_WRITE_SCHEMA") == "1")
            File.WriteAllText(Shipped, text);
        Assert.Equal(File.ReadAllText(Shipped), text);
    }

    [Theory]
    [MemberData(nameof(ExamplesTests.All), MemberType = typeof(ExamplesTests))]
    public void It_accepts_the_examples_and_they_name_it(string example)
    {
        var path = Path.Combine(Reading.Shared, "examples", example);
        var text = File.ReadAllText(path);
        Assert.True(Accepts(text));
        var named = JsonNode.Parse(text, null, Commented)!["$schema"]!.GetValue<string>();
        Assert.Equal(Shipped, Path.GetFullPath(named, Path.GetDirectoryName(path)!));
    }

    [Theory]
    [InlineData("{}")]
    [InlineData("[]")]
    [InlineData("{ \"piece\": { \"shape\": \"triangle\" } }")]
    [InlineData("{ \"piece\": { \"finished\": {} } }")]
    [InlineData("{ \"piece\": { \"shape\": \"triangle\", \"finished\": { \"wingspan\": 148 } } }")]
    [InlineData("{ \"piece\": { \"shape\": \"triangle\", \"finished\": { \"wingspan\": 148, \"depth\": 74, \"hight\": 1 } } }")]
    [InlineData("{ \"units\": \"inches\", \"piece\": { \"shape\": \"triangle\", \"finished\": { \"wingspan\": 148, \"depth\": 74 } } }")]
    [InlineData("{ \"piece\": { \"shape\": \"blob\", \"finished\": {} } }")]
    [InlineData("{ \"piece\": { \"shape\": \"outline\", \"finished\": {} } }")]
    [InlineData("{ \"piece\": { \"shape\": \"outline\", \"finished\": { \"corners\": [[1]] } } }")]
    [InlineData("{ \"piece\": { \"shape\": \"outline\", \"finished\": { \"corners\": [{ \"name\": \"a\" }] } } }")]
    public void It_rejects_a_project_that_is_not_whole(string text) => Assert.False(Accepts(text));

    [Theory]
    [InlineData(", \"pinz\": {}")]
    [InlineData(", \"title\": 5")]
    [InlineData(", \"format\": 2")]
    [InlineData(", \"pins\": { \"scallop\": true }")]
    [InlineData(", \"pins\": { \"scallop\": \"1,5 mm\" }")]
    [InlineData(", \"pins\": { \"owned\": 1.5 }")]
    [InlineData(", \"pins\": { \"owned\": -1 }")]
    [InlineData(", \"mats\": { \"size\": [30] }")]
    [InlineData(", \"mats\": { \"turns\": [45] }")]
    [InlineData(", \"mats\": { \"turns\": [0, 0] }")]
    [InlineData(", \"mats\": { \"turns\": \"any\" }")]
    [InlineData(", \"sheets\": { \"paper\": [] }")]
    [InlineData(", \"sheets\": { \"use\": \"pick\" }")]
    [InlineData(", \"sheets\": { \"half\": \"yes\" }")]
    [InlineData(", \"sheets\": { \"measured\": [1, 2, 3] }")]
    [InlineData(", \"fabric\": { \"kind\": \"woven\" }")]
    [InlineData(", \"fabric\": { \"springBack\": 0.6 }")]
    [InlineData(", \"fabric\": { \"springBack\": { \"acros\": 0.1 } }")]
    [InlineData(", \"fabric\": { \"grain\": 361 }")]
    [InlineData(", \"fabric\": { \"swatch\": { \"before\": 10 } }")]
    [InlineData(", \"fabric\": { \"strips\": { \"weight\": 0 } }")]
    [InlineData(", \"fabric\": { \"strips\": { \"along\": { \"lenght\": [20, 23] } } }")]
    [InlineData(", \"set\": { \"label\": \"1 dot\" }")]
    public void It_rejects_what_the_reader_rejects(string more)
    {
        var text = Reading.Triangle(more);
        Assert.False(Accepts(text));
        Assert.NotEmpty(Reading.Of(text).Findings.Problems);
    }

    [Theory]
    [InlineData(", \"faceUp\": \"left side\"")]
    [InlineData(", \"evenOut\": 1")]
    [InlineData(", \"unblocked\": { \"sides\": { \"lower\": 5 } }")]
    [InlineData(", \"unblocked\": { \"side\": {} }")]
    [InlineData(", \"unblocked\": { \"diagonal\": { \"from\": \"foot\", \"to\": \"left tip\", \"length\": 5 } }")]
    [InlineData(", \"edges\": { \"lower\": {} }")]
    [InlineData(", \"edges\": { \"top\": { \"count\": 0 } }")]
    [InlineData(", \"edges\": { \"top\": { \"hold\": \"glue\" } }")]
    public void It_rejects_in_the_piece_what_the_reader_rejects(string piece)
    {
        var text = Reading.Triangle(piece: piece);
        Assert.False(Accepts(text));
        Assert.NotEmpty(Reading.Of(text).Findings.Problems);
    }

    [Fact]
    public void It_accepts_every_way_of_writing_a_value()
    {
        Assert.Equal("", Complaints(Reading.Triangle(
            """
            , "$schema": "x", "format": null, "title": null, "units": "in", "notes": null, "fringe": { "any": [1] }, "wires": { "kind": "flexible", "diameter": "1 mm", "owned": [{ "length": 90, "count": 4 }, { "length": "2 ft", "kind": "stiff" }], "every": 2 }, "combs": null, "sizes": [], "timeLimit": 2.5,
            "fabric": { "kind": null, "fibre": "anything", "springBack": { "along": 0.1 }, "stitch": ["7 mm", 6], "swatch": { "before": [10, "9 cm"], "after": [11, 10], "pinned": null },
              "strips": { "width": 5, "weight": 50, "along": { "length": [20, 23], "width": 4.6 }, "across": { "length": [20, 24] }, "slanted": { "length": [20, 26], "width": null } }, "wetChange": {} },
            "pins": { "scallop": "5 mm", "maxSpacing": null, "anchor": "none" }, "mats": { "size": ["60 cm", 30], "turns": "free", "floor": 3 },
            "sheets": { "paper": "A4", "half": true, "measured": null }, "set": null
            """.Replace("\"units\": \"in\", ", "", StringComparison.Ordinal),
            ", \"unblocked\": null, \"edges\": { \"left\": { \"count\": null, \"of\": null, \"hold\": \"wire\" } }")));
        Assert.True(Accepts(Reading.Rectangle("\"diagonal\": { \"from\": \"lower left\", \"to\": \"upper right\", \"length\": \"3 ft\" }, \"along\": null")));
    }

    // Every name of the schema has to be read: put to a wrong use, each gives a problem there, or a note if it is reserved.
    [Fact]
    public void Every_name_in_the_schema_is_read()
    {
        var schema = JsonNode.Parse(ProjectSchema.Text(PieceKinds.All))!;
        var names = 0;
        foreach (var (name, value) in schema["properties"]!.AsObject())
        {
            if (name is "piece")
                continue;
            Check(name, $", \"{name}\": [[]]", "");
            foreach (var (inner, _) in value!["properties"]?.AsObject() ?? [])
                Check($"{name}.{inner}", $", \"{name}\": {{ \"{inner}\": [[]] }}", "");
        }

        foreach (var (name, _) in schema["properties"]!["piece"]!["properties"]!.AsObject())
        {
            if (name is not ("shape" or "finished"))
                Check($"piece.{name}", "", $", \"{name}\": [[]]");
        }

        foreach (var (name, _) in schema["$defs"]!["rectangleUnblocked"]!["properties"]!.AsObject())
            CheckText($"piece.unblocked.{name}", Reading.Rectangle($"\"{name}\": [[]]"));
        foreach (var (name, _) in schema["$defs"]!["outlineFinished"]!["properties"]!["edges"]!["items"]!["properties"]!.AsObject())
            CheckText($"piece.finished.edges[0].{name}", Reading.Outline($"\"corners\": [[0, 0]], \"edges\": [{{ \"{name}\": [[]] }}]"));
        foreach (var (name, _) in schema["$defs"]!["corner"]!["anyOf"]![1]!["properties"]!.AsObject())
            CheckText($"piece.finished.corners[0].{name}", Reading.Outline($"\"corners\": [{{ \"at\": [0, 0], \"{name}\": [[]] }}]".Replace("\"at\": [0, 0], \"at\"", "\"at\"", StringComparison.Ordinal)));
        Assert.True(names > 55, $"{names}");

        void Check(string path, string more, string piece) => CheckText(path, Reading.Triangle(more, piece).Replace(path == "units" ? "\"units\": \"cm\", " : "\n", "", StringComparison.Ordinal));

        void CheckText(string path, string text)
        {
            names++;
            var findings = Reading.Of(text).Findings;
            Assert.Contains(findings.Problems.Select(p => p.Path).Concat(findings.Notes.Select(n => n.Place)), p => p.StartsWith(path, StringComparison.Ordinal));
            Assert.DoesNotContain(findings.Problems, p => p.What.Contains("is no name", StringComparison.Ordinal));
        }
    }
}
