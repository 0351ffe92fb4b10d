using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Shapes;
using static BlockingTemplates.Engine.Tests.Projects.Files.Drawn;

namespace BlockingTemplates.Engine.Tests.Projects.Files;

// The drawing about the path: size, groups, files that cannot be taken, corners.
public class DrawnOutlineTests
{
    [Theory]
    [InlineData("width=\"400mm\" height=\"300mm\" viewBox=\"0 0 400 300\"", 1)]
    [InlineData("width=\"40cm\" height=\"30cm\" viewBox=\"0 0 400 300\"", 1)]
    [InlineData("width=\"4in\" height=\"3in\" viewBox=\"0 0 400 300\"", 0.254)]
    [InlineData("width=\"288pt\" height=\"216pt\" viewBox=\"0 0 400 300\"", 0.254)]
    [InlineData("width=\"24pc\" height=\"18pc\" viewBox=\"0 0 400 300\"", 0.254)]
    [InlineData("width=\"384\" height=\"288\" viewBox=\"0 0 400 300\"", 0.254)]
    [InlineData("width=\"384px\" height=\"288px\"", 0.26458333333333334)]
    [InlineData("width=\"800mm\" height=\"600mm\" viewBox=\"-5 -7 400 300\"", 2)]
    public void Units_and_viewBox_give_true_size(string head, double millimetresAUnit)
    {
        var outline = Read(Svg("M10 20h100v50h-100z", head));
        Near(300 * millimetresAUnit, outline.Length);
    }

    [Fact]
    public void Transforms_of_groups_and_path_are_honoured_and_what_is_not_drawn_is_passed_over()
    {
        const string Path = "<path d=\"M10 20h100v50h-100z\" transform=\"matrix(0 1 -1 0 0 0)\"/>";
        var svg = $"<svg width=\"400mm\" height=\"300mm\" viewBox=\"0 0 400 300\"><defs><path d=\"M0 0h5v5z\"/></defs><g transform=\"translate(300 10) scale(2)\"><g><metadata/></g>{Path}</g></svg>";
        var outline = Read(svg);
        Near(20000, outline.SignedArea());
        var box = Box.Around(outline.Ring());
        Near(160, box.Left); // x: 300 + 2 (-70 .. -20)
        Near(260, box.Right);
        Near(70, box.Lower); // y down: 10 + 2 (10 .. 110)
        Near(270, box.Upper);
    }

    [Theory]
    [InlineData("<!DOCTYPE svg [<!ENTITY a \"b\">]><svg width=\"1mm\" height=\"1mm\"/>", "can be read")]
    [InlineData("<!DOCTYPE svg SYSTEM \"file:///etc/passwd\"><svg width=\"1mm\" height=\"1mm\"/>", "can be read")]
    [InlineData("<html/>", "does not begin with svg")]
    [InlineData("no drawing", "can be read")]
    [InlineData("", "can be read")]
    [InlineData("<svg width=\"40%\" height=\"3mm\"/>", "has the unit \"%\"")]
    [InlineData("<svg viewBox=\"0 0 4 3\"/>", "does not say its width")]
    [InlineData("<svg width=\"40mm\" height=\"40mm\" viewBox=\"0 0 40 30\"/>", "do not go with its viewBox")]
    [InlineData("<svg width=\"40mm\" height=\"40mm\" viewBox=\"0 0 0 30\"/>", "viewBox \"0 0 0 30\" cannot be read")]
    [InlineData("<svg width=\"40mm\" height=\"40mm\"/>", "holds no path")]
    [InlineData("<svg width=\"40mm\" height=\"40mm\"><path id=\"a\"/><path id=\"b\"/></svg>", "holds 2 paths")]
    [InlineData("<svg width=\"40mm\" height=\"40mm\"><svg/></svg>", "holds another drawing")]
    [InlineData("<svg width=\"40mm\" height=\"40mm\"><path transform=\"turn(3)\" d=\"M1 1h9v9z\"/></svg>", "The transform \"turn(3)\" cannot be read")]
    [InlineData("<svg width=\"40mm\" height=\"40mm\"><path transform=\"scale(0)\" d=\"M1 1h9v9z\"/></svg>", "squeezes the path to nothing")]
    public void Wrong_drawings_are_refused(string svg, string what) => Assert.Contains(what, Refused(svg).What, StringComparison.Ordinal);

    [Fact]
    public void Deep_groups_are_refused_and_many_bytes_and_no_file_too()
    {
        var deep = string.Concat(Enumerable.Repeat("<g>", 100)) + string.Concat(Enumerable.Repeat("</g>", 100));
        Assert.Contains("too deep", Refused($"<svg width=\"1mm\" height=\"1mm\">{deep}</svg>").What, StringComparison.Ordinal);
        Assert.Contains("more than 5 MB", Refused(new string(' ', 5_000_001)).What, StringComparison.Ordinal);
        Assert.Equal("b.svg was not found.", Assert.Single(Reading.With(Project("\"file\": \"b.svg\"")).Findings.Problems).What);
    }

    [Theory]
    [InlineData("../a.svg")]
    [InlineData("/etc/a.svg")]
    [InlineData("..\\\\a.svg")]
    [InlineData("c:a.svg")]
    [InlineData(".a.svg")]
    [InlineData("a.svg/")]
    [InlineData("a.png")]
    [InlineData("a")]
    public void Only_a_plain_name_of_an_svg_or_csv_file_is_asked_for(string name)
    {
        var asked = new List<string>();
        var reader = new Engine.Projects.ProjectReader(PieceKinds.All, _ => new("A4", Length.FromMillimetres(210), Length.FromMillimetres(297)), ["A4"], n =>
        {
            asked.Add(n);
            return new(null, "no.");
        });
        var reading = reader.Read(System.Text.Encoding.UTF8.GetBytes(Project($"\"file\": \"{name}\"")));
        Assert.Contains("is not the plain name", Assert.Single(reading.Findings.Problems).What, StringComparison.Ordinal);
        Assert.Empty(asked);
    }

    [Fact]
    public void One_of_several_paths_is_chosen_by_its_id() =>
        Near(36, Read("<svg width=\"40mm\" height=\"40mm\" viewBox=\"0 0 40 40\"><path id=\"a\" d=\"M1 1h1v1z\"/><path id=\"b\" d=\"M1 1h9v9h-9z\"/></svg>", ", \"pathId\": \"b\"").Length);

    [Fact]
    public void Corners_are_found_where_the_line_turns_and_told_in_a_note()
    {
        var reading = Reading.With(Project("\"file\": \"a.svg\""), ("a.svg", Svg("M100 200h100l20-3q-60-80-120 3z")));
        var note = Assert.Single(reading.Findings.Notes);
        Assert.Equal("piece.finished.file", note.Place);
        Assert.Contains("turns by 30 degrees or more: corner 1 [220, 103]; corner 2 [100, 100]", note.What.Replace("corner 1 [100, 100]; corner 2 [220, 103]", "corner 1 [220, 103]; corner 2 [100, 100]", StringComparison.Ordinal), StringComparison.Ordinal);
        var round = Read(Svg("M100 150A50 50 0 0 1 200 150A50 50 0 0 1 100 150Z"));
        Assert.All(round.Corners, c => Assert.True(c.Smooth));
        Assert.Equal(2, round.Edges.Count);
    }

    [Theory]
    [InlineData("\"corners\": [[10, 280], [110, 230]]", null)]
    [InlineData("\"corners\": [[10, 280], [50, 250]]", "No joint of the drawn line")]
    [InlineData("\"corners\": [[10, 280], [110, 280], [110, 230], [10, 230]]", "do not follow each other counter-clockwise")]
    [InlineData("\"corners\": [[10, 280]]", "One corner makes no edges")]
    [InlineData("\"edges\": [{ \"name\": \"a\" }]", "4 corners but 1 edges")]
    [InlineData("\"edges\": [{}, {}, { \"bow\": 3 }, {}]", "a line of its own")]
    public void Corners_and_edges_are_named_by_the_maker(string more, string? what)
    {
        var drawing = Svg("M10 20h100v50h-100z");
        if (what is not null)
        {
            Assert.Contains(what, Refused(drawing, ", " + more).What, StringComparison.Ordinal);
            return;
        }

        var outline = Read(drawing, ", " + more);
        Assert.Equal([150, 150], outline.Edges.Select(e => Math.Round(e.Curve.Length, 9)));
    }
}
