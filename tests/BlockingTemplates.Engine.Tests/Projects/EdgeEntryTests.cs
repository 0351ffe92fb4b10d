using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Tests.Projects;

public class EdgeEntryTests
{
    private static string Top(string entry) => Reading.Triangle(piece: $", \"edges\": {{ \"top\": {{ {entry} }} }}");

    [Fact]
    public void Points_every_and_stations_are_read_as_given()
    {
        var said = Reading.Clean(Top("\"count\": 120, \"points\": { \"count\": 12, \"depth\": 2, \"unblockedDepth\": \"12 mm\", \"shape\": \"scallop\", \"valleys\": \"pinned\" }")).Treatment("top");
        Assert.Equal(new EdgePoints(12, Length.FromCentimetres(2), Length.FromMillimetres(12), PointShape.Scallop, Valleys.Pinned), said.Points);
        Assert.Equal(new EdgePoints(5, Length.FromCentimetres(1)), Reading.Clean(Top("\"points\": { \"count\": 5, \"depth\": 1 }")).Treatment("top").Points);
        Assert.Equal(8, Reading.Clean(Top("\"count\": 120, \"every\": 8")).Treatment("top").Every);
        Assert.Equal(
            [new(40, Length.FromCentimetres(22.5), null), new(60, null, Length.FromCentimetres(70)), new(80, Length.FromCentimetres(50), Length.FromCentimetres(90))],
            Reading.Clean(Top("\"count\": 120, \"stations\": [{ \"stitch\": 40, \"at\": 22.5 }, { \"stitch\": 60, \"finished\": 70 }, { \"stitch\": 80, \"at\": 50, \"finished\": 90 }]")).Treatment("top").Stations);
    }

    [Theory]
    [InlineData("\"every\": 8", ".every", "the top edge is not counted", "Add \"count\"")]
    [InlineData("\"count\": 6, \"every\": 8", ".every", "has 6 stitches, fewer than the 8", "smaller number")]
    [InlineData("\"count\": 60, \"of\": \"rows\", \"every\": 8, \"points\": { \"count\": 5, \"depth\": 1 }", ".every", "has points, which have their marks at the tips", "\"every\" or \"points\"")]
    [InlineData("\"count\": 60, \"every\": 8, \"hold\": \"none\"", ".every", "which nothing shall hold", "\"hold\": \"pins\"")]
    [InlineData("\"count\": 60, \"every\": 0", ".every", "0 is too small", "from 1")]
    [InlineData("\"points\": { \"count\": 5, \"depth\": 1 }, \"hold\": \"none\"", ".points", "nothing shall hold it", "\"hold\": \"pins\"")]
    [InlineData("\"points\": { \"depth\": 1 }", ".points.count", "\"count\" is missing in the points of an edge", "how many")]
    [InlineData("\"points\": { \"count\": 5 }", ".points.depth", "\"depth\" is missing in the points of an edge", "valleys")]
    [InlineData("\"points\": { \"count\": 5, \"depth\": null }", ".points.depth", "still blank", "valleys")]
    [InlineData("\"points\": { \"count\": 5, \"depth\": -1 }", ".points.depth", "is negative", "from 0.1 cm")]
    [InlineData("\"points\": { \"count\": 5.5, \"depth\": 1 }", ".points.count", "a whole number", "without decimals")]
    [InlineData("\"points\": { \"count\": 5, \"depth\": 1, \"shape\": \"scalop\" }", ".points.shape", "is none of the words", "Did you mean \"scallop\"?")]
    [InlineData("\"points\": { \"count\": 5, \"depth\": 1, \"valleys\": \"open\" }", ".points.valleys", "is none of the words", "Write one of them")]
    [InlineData("\"points\": { \"count\": 5, \"depth\": 1, \"deep\": 3 }", ".points.deep", "is no name in the points of an edge", "")]
    [InlineData("\"points\": 5", ".points", "the points of an edge", "\"count\"")]
    [InlineData("\"stations\": [{ \"stitch\": 40, \"at\": 22.5 }]", ".stations", "not how many it has", "Add \"count\"")]
    [InlineData("\"count\": 90, \"stations\": [{ \"at\": 22.5 }]", ".stations[0].stitch", "\"stitch\" is missing", "counted from the edge's first corner")]
    [InlineData("\"count\": 90, \"stations\": [{ \"stitch\": 40 }]", ".stations[0]", "Where stitch 40 of the top edge lies is not said", "\"at\"")]
    [InlineData("\"count\": 90, \"stations\": [{ \"stitch\": 90, \"at\": 22.5 }]", ".stations[0].stitch", "Stitch 90 is not inside the top edge, which has 90 stitches", "no station")]
    [InlineData("\"count\": 90, \"of\": \"rows\", \"stations\": [{ \"stitch\": 95, \"at\": 22.5 }]", ".stations[0].stitch", "Row 95 is not inside the top edge, which has 90 rows", "no station")]
    [InlineData("\"count\": 90, \"stations\": [{ \"stitch\": 40, \"at\": 22.5 }, { \"stitch\": 40, \"at\": 25 }]", ".stations[1].stitch", "Stitch 40 comes after stitch 40", "in order")]
    [InlineData("\"count\": 90, \"stations\": [{ \"stitch\": 40, \"at\": 22.5 }, { \"stitch\": 50, \"at\": 22 }]", ".stations[1].at", "no further along the top edge than the stitch before it", "first corner")]
    [InlineData("\"count\": 90, \"stations\": [{ \"stitch\": 40, \"at\": 0 }]", ".stations[0].at", "no further along", "first corner")]
    [InlineData("\"count\": 90, \"stations\": [{ \"stitch\": 40, \"finished\": 22 }, { \"stitch\": 50, \"finished\": 20 }]", ".stations[1].finished", "no further along", "first corner")]
    [InlineData("\"count\": 90, \"stations\": { \"stitch\": 40 }", ".stations", "a list of known stitches", "[ {")]
    public void A_wrong_entry_is_one_problem_at_its_place(string entry, string place, string what, string @do) =>
        Reading.IsSingle(Top(entry), "piece.edges.top" + place, what, @do);

    [Fact]
    public void All_wrong_entries_are_told_at_once()
    {
        var reading = Reading.Of(Reading.Triangle(piece: ", \"edges\": { \"top\": { \"every\": 8 }, \"left\": { \"points\": { \"count\": 0, \"depth\": 0 } }, \"right\": { \"count\": 10, \"stations\": [{ \"stitch\": 12, \"at\": 5 }, { \"stitch\": 5 }] } }"));
        Assert.Equal(
            ["piece.edges.top.every", "piece.edges.left.points.count", "piece.edges.left.points.depth", "piece.edges.right.stations[0].stitch", "piece.edges.right.stations[1]"],
            reading.Findings.Problems.Select(p => p.Path));
    }
}
