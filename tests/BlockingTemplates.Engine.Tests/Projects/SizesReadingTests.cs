using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Projects;

namespace BlockingTemplates.Engine.Tests.Projects;

public class SizesReadingTests
{
    private static ProjectReading Of(string sizes, string piece = "") => Reading.Of(Reading.Triangle(
        piece: $", \"unblocked\": {{ \"sides\": {{ \"top\": 128, \"left\": 92, \"right\": 92 }}, \"bows\": {{ \"top\": -3 }} }}, \"edges\": {{ \"top\": {{ \"count\": 180, \"every\": 9 }} }}{piece}",
        more: $", \"sizes\": [ {sizes} ]"));

    private static IReadOnlyList<Problem> Problems(ProjectReading reading) => PartsPlanner.Plan(reading, (project, _, findings) =>
    {
        BlockingTemplates.Engine.Pieces.PieceMaker.Make(
            new(project.Kind, project.Finished, project.Unblocked, project.Edges, project.FaceUp, project.MeasuredFaceUp, project.EvenOut, project.Fabric), findings);
        return null;
    }).Findings.Problems;

    [Fact]
    public void A_size_has_its_own_measurements_and_the_rest_of_the_pieces()
    {
        var reading = Of("{ \"name\": \"S\" }, { \"name\": \"L\", \"finished\": { \"depth\": 80 }, \"unblocked\": { \"sides\": { \"left\": 97, \"right\": 97 } }, \"edges\": { \"top\": { \"count\": 198 } } }");
        Assert.Empty(reading.Findings.Problems);
        Assert.Equal(["S", "L"], reading.Sizes.Select(s => s.Name));
        Assert.All(reading.Sizes, s => Assert.Empty(s.Findings.Problems));
        var (small, large) = (reading.Sizes[0].Project!, reading.Sizes[1].Project!);
        Assert.Equal((1480.0, 740.0), (small.Finished.Sizes["wingspan"].Millimetres, small.Finished.Sizes["depth"].Millimetres));
        Assert.Equal((1480.0, 800.0), (large.Finished.Sizes["wingspan"].Millimetres, large.Finished.Sizes["depth"].Millimetres));
        Assert.Equal((1280.0, 970.0, 970.0), (large.Unblocked!.Sides["top"].Millimetres, large.Unblocked.Sides["left"].Millimetres, large.Unblocked.Sides["right"].Millimetres));
        Assert.Equal(-30, large.Unblocked.Bows["top"].Millimetres);
        Assert.Equal((198, 9), (large.Treatment("top").Count!.Value, large.Treatment("top").Every!.Value));
        Assert.Equal(("S", "size L"), (small.Size, large.Part));
        Assert.Same(small, reading.Project);
    }

    [Fact]
    public void A_size_may_add_what_the_piece_leaves_out()
    {
        var reading = Reading.Of(Reading.Triangle(finished: "\"wingspan\": 148", more: ", \"sizes\": [ { \"name\": \"M\", \"finished\": { \"depth\": 70 }, \"unblocked\": { \"sides\": { \"top\": 1 } } }, { \"name\": \"L\", \"finished\": { \"depth\": 80 } } ]"));
        Assert.Equal(700, reading.Sizes[0].Project!.Finished.Sizes["depth"].Millimetres);
        Assert.NotNull(reading.Sizes[0].Project!.Unblocked);
        Assert.Null(reading.Sizes[1].Project!.Unblocked);
    }

    [Fact]
    public void What_is_wrong_in_any_size_is_among_all_that_was_found()
    {
        var reading = Of("{ \"name\": \"S\" }, { \"name\": \"L\", \"finished\": { \"depth\": -80 } }, { \"name\": \"s\" }");
        Assert.Equal(["sizes[2].name", "sizes[1].finished.depth"], reading.Findings.Problems.Select(p => p.Path));
        Assert.Equal(["sizes[2].name"], reading.OfTheList.Problems.Select(p => p.Path));
    }

    [Fact]
    public void No_sizes_are_one_plan() => Assert.Empty(Reading.Of(Reading.Triangle(", \"sizes\": []")).Sizes);

    [Theory]
    [InlineData("\"S\"", "sizes[0]", "expected is a size", "name")]
    [InlineData("{ \"finished\": {} }", "sizes[0].name", "\"name\" is missing in a size", "called")]
    [InlineData("{ \"name\": \"\" }", "sizes[0].name", "empty", "called")]
    [InlineData("{ \"name\": \"M\" }, { \"name\": \"m\" }", "sizes[1].name", "Two sizes are called \"m\"", "own name")]
    [InlineData("{ \"name\": \"M\", \"finishd\": {} }", "sizes[0].finishd", "is no name in a size", "\"finished\"")]
    [InlineData("{ \"name\": \"M\", \"finished\": { \"depht\": 80 } }", "sizes[0].finished.depht", "no name in the finished size of a triangle", "\"depth\"")]
    [InlineData("{ \"name\": \"M\", \"finished\": { \"depth\": -80 } }", "sizes[0].finished.depth", "is negative", "")]
    [InlineData("{ \"name\": \"M\", \"finished\": { \"depth\": \"8 hands\" } }", "sizes[0].finished.depth", "", "")]
    [InlineData("{ \"name\": \"M\", \"finished\": 80 }", "sizes[0].finished", "expected is", "")]
    [InlineData("{ \"name\": \"M\", \"unblocked\": { \"sides\": { \"top\": 300 } } }", "sizes[0].unblocked.sides", "The sides cannot close", "")]
    [InlineData("{ \"name\": \"M\", \"edges\": { \"top\": { \"count\": 8 } } }", "sizes[0].edges.top", "", "")]
    [InlineData("{ \"name\": \"M\", \"edges\": { \"botom\": { \"count\": 8 } } }", "sizes[0].edges.botom", "is no edge of this piece", "")]
    public void A_wrong_size_is_a_problem_at_its_own_place(string sizes, string path, string what, string @do)
    {
        var problem = Assert.Single(Problems(Of(sizes)));
        // Where only a part of an object is a size's own, what concerns the whole object stays with the piece.
        Assert.Contains(problem.Path, new[] { path, path + ".every", "piece.edges.top.every", "piece.unblocked.sides" });
        Assert.Contains(what, problem.What, StringComparison.Ordinal);
        Assert.Contains(@do, problem.Do, StringComparison.Ordinal);
        Assert.NotNull(problem.Line);
        Reading.AssertSaysAll(problem);
    }

    [Fact]
    public void A_problem_of_every_size_is_told_once_and_one_of_a_single_size_with_its_name()
    {
        var all = Problems(Reading.Of(Reading.Triangle(finished: "\"wingspan\": 148", more: ", \"sizes\": [ { \"name\": \"M\" }, { \"name\": \"L\" } ]")));
        Assert.Equal("piece.finished.depth", Assert.Single(all).Path);
        Assert.StartsWith("The finished depth is missing", all[0].What, StringComparison.Ordinal);
        var one = Problems(Reading.Of(Reading.Triangle(finished: "\"wingspan\": 148", more: ", \"sizes\": [ { \"name\": \"M\", \"finished\": { \"depth\": 70 } }, { \"name\": \"L\" } ]")));
        Assert.StartsWith("Size L: The finished depth is missing", Assert.Single(one).What, StringComparison.Ordinal);
    }

    [Fact]
    public void More_sizes_than_twenty_are_a_problem() =>
        Assert.Contains(Of(string.Join(", ", Enumerable.Range(1, 21).Select(i => $"{{ \"name\": \"{i}\" }}"))).Findings.Problems, p => p.Path == "sizes" && p.What.Contains("21", StringComparison.Ordinal));
}
