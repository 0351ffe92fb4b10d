using BlockingTemplates.Engine.Measure;

namespace BlockingTemplates.Engine.Tests.Projects;

public class OutlineReadingTests
{
    private const string Corners = "\"corners\": [[0, 0], { \"at\": [\"80 cm\", 0], \"name\": \"heel\", \"smooth\": true }, [80, 40], [0, 40]]";

    [Fact]
    public void Corners_and_edges_are_read_with_their_names()
    {
        var project = Reading.Clean(Reading.Outline(
            Corners + ", \"edges\": [{ \"name\": \"lower\", \"bow\": -4 }, {}, { \"offsets\": [[10, 1], [\"20 cm\", -2]] }, { \"name\": \"west\", \"points\": [[-1, 30]] }]",
            ", \"edges\": { \"lower\": { \"count\": 9 }, \"edge 2\": { \"count\": 8 }, \"west\": {} }"));
        var finished = project.Finished;
        Assert.Equal([null, "heel", null, null], finished.Corners!.Select(c => c.Name));
        Assert.Equal([false, true, false, false], finished.Corners!.Select(c => c.Smooth));
        Assert.Equal([0.0, 800, 800, 0], finished.Corners!.Select(c => c.X.Millimetres));
        Assert.Equal(["lower", null, null, "west"], finished.Edges!.Select(e => e.Name));
        Assert.Equal(-40, finished.Edges![0].Bow!.Value.Millimetres);
        Assert.Equal([(Length.FromCentimetres(10), Length.FromCentimetres(1)), (Length.FromCentimetres(20), Length.FromCentimetres(-2))], finished.Edges[2].Offsets!);
        Assert.Equal([(Length.FromCentimetres(-1), Length.FromCentimetres(30))], finished.Edges[3].Points!);
        Assert.Equal(8, project.Treatment("edge 2").Count);
        Assert.Null(project.Treatment("edge 3").Count);
        Assert.Empty(finished.Unreadable);
        Assert.Null(project.Unblocked);
    }

    [Fact]
    public void Edges_without_any_entry_are_numbered_from_1() =>
        Reading.Clean(Reading.Outline(Corners, ", \"edges\": { \"edge 4\": { \"count\": 8 } }"));

    [Theory]
    [InlineData("[[0, 0], [80], [80, 40]]", "piece.finished.corners[1]", "expected is two lengths in a list, [x, y]")]
    [InlineData("[[0, 0], [80, null], [80, 40]]", "piece.finished.corners[1][1]", "still blank")]
    [InlineData("[[0, 0], null, [80, 40]]", "piece.finished.corners[1]", "still blank")]
    [InlineData("[[0, 0], [80, \"x\"], [80, 40]]", "piece.finished.corners[1][1]", "where a length cannot have it")]
    [InlineData("[[0, 0], [80, 2001], [80, 40]]", "piece.finished.corners[1][1]", "2001 cm is more than 2000 cm")]
    [InlineData("[[0, 0], { \"name\": \"x\" }, [80, 40]]", "piece.finished.corners[1].at", "\"at\" is missing in a corner")]
    [InlineData("[[0, 0], { \"at\": [1, null] }, [80, 40]]", "piece.finished.corners[1].at[1]", "still blank")]
    [InlineData("[[0, 0], 5, [80, 40]]", "piece.finished.corners[1]", "expected is two lengths in a list, [x, y]")]
    [InlineData("{}", "piece.finished.corners", "expected is a list of corners")]
    [InlineData("null", "piece.finished.corners", "still blank")]
    public void A_corner_that_cannot_be_read_leaves_no_corners_and_says_so_once(string corners, string path, string what)
    {
        var text = Reading.Outline($"\"corners\": {corners}");
        Reading.IsSingle(text, path, what, "");
        var finished = Reading.Of(text).Project!.Finished;
        Assert.Null(finished.Corners);
        Assert.Contains("piece.finished.corners", finished.Unreadable);
    }

    [Theory]
    [InlineData("[{ \"at\": [0, 0], \"smooth\": \"no\" }]", "piece.finished.corners[0].smooth", "true or false")]
    [InlineData("[{ \"at\": [0, 0], \"nam\": \"x\" }]", "piece.finished.corners[0].nam", "is no name in a corner")]
    [InlineData("[{ \"at\": [0, 0], \"name\": \"none\" }]", "piece.finished.corners[0].name", "\"none\" cannot be a name")]
    [InlineData("[{ \"at\": [0, 0], \"name\": \"middle of it\" }]", "piece.finished.corners[0].name", "cannot be a name")]
    [InlineData("[{ \"at\": [0, 0], \"name\": \" \" }]", "piece.finished.corners[0].name", "cannot be a name")]
    [InlineData("[{ \"at\": [0, 0], \"name\": \"A\" }, { \"at\": [0, 0], \"name\": \"a\" }]", "piece.finished.corners[1].name", "a second time")]
    [InlineData("[{ \"at\": [0, 0], \"name\": \"corner 2\" }, [1, 1]]", "piece.finished.corners[1]", "a second time")]
    public void What_is_said_of_a_corner_is_checked(string corners, string path, string what) =>
        Reading.IsSingle(Reading.Outline($"\"corners\": {corners}"), path, what, "");

    [Theory]
    [InlineData("{}", "piece.finished.edges", "expected is a list of edges")]
    [InlineData("[4]", "piece.finished.edges[0]", "expected is an edge")]
    [InlineData("[{ \"bough\": 4 }]", "piece.finished.edges[0].bough", "is no name in an edge")]
    [InlineData("[{ \"bow\": null }]", "piece.finished.edges[0].bow", "still blank")]
    [InlineData("[{ \"bow\": [] }]", "piece.finished.edges[0].bow", "expected is a length")]
    [InlineData("[{ \"offsets\": 3 }]", "piece.finished.edges[0].offsets", "expected is a list of [along, out]")]
    [InlineData("[{ \"offsets\": [[1, 2], [3]] }]", "piece.finished.edges[0].offsets[1]", "expected is two lengths in a list, [along, out]")]
    [InlineData("[{ \"offsets\": [[-1, 2]] }]", "piece.finished.edges[0].offsets[0][0]", "-1 cm is negative")]
    [InlineData("[{ \"points\": [[1, 2], 3] }]", "piece.finished.edges[0].points[1]", "expected is two lengths in a list, [x, y]")]
    [InlineData("[{ \"name\": \"a\" }, { \"name\": \"b\" }, { \"name\": \"A\" }]", "piece.finished.edges[2].name", "a second time")]
    [InlineData("[{ \"name\": \"heel\" }]", "piece.finished.edges[0].name", "a second time")]
    public void What_is_said_of_an_edge_is_checked(string edges, string path, string what)
    {
        var text = Reading.Outline($"{Corners}, \"edges\": {edges}");
        Reading.IsSingle(text, path, what, "");
        if (!what.Contains("name", StringComparison.Ordinal) && what != "a second time")
            Assert.Contains(path, Reading.Of(text).Project!.Finished.Unreadable);
    }

    [Fact]
    public void Lists_too_long_are_problems()
    {
        Reading.IsSingle(Reading.Outline($"\"corners\": [{Repeated("[0, 0]", 1001)}]"), "piece.finished.corners", "1001 entries", "at most 1000");
        Reading.IsSingle(Reading.Outline($"{Corners}, \"edges\": [{Repeated("{}", 1001)}]"), "piece.finished.edges", "1001 entries", "at most 1000");
        Reading.IsSingle(Reading.Outline($"{Corners}, \"edges\": [{{ \"points\": [{Repeated("[1, 1]", 10_001)}] }}]"), "piece.finished.edges[0].points", "more than 10000 entries", "Give fewer");
        Reading.Clean(Reading.Outline($"{Corners}, \"edges\": [{{ \"points\": [{Repeated("[1, 1]", 10_000)}] }}]"));
        Reading.IsSingle(Reading.Triangle($", \"sheets\": {{ \"paper\": [{Repeated("\"A4\"", 21)}] }}"), "sheets.paper", "21 entries", "at most 20");

        static string Repeated(string item, int times) => string.Join(",", Enumerable.Repeat(item, times));
    }

    [Fact]
    public void The_unblocked_outline_has_its_own_path() => Reading.IsSingle(
        Reading.Outline(Corners, $", \"unblocked\": {{ {Corners}, \"edges\": [{{}}, {{}}, {{ \"bow\": \"x\" }}] }}"),
        "piece.unblocked.edges[2].bow",
        "where a length cannot have it",
        "Write");

    [Fact]
    public void An_edge_that_no_entry_names_is_unknown() => Reading.IsSingle(
        Reading.Outline(Corners + ", \"edges\": [{ \"name\": \"lower\" }]", ", \"edges\": { \"lowr\": {} }"),
        "piece.edges.lowr",
        "is no edge of this piece",
        "Did you mean \"lower\"?");
}
