using System.Globalization;
using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Tests.Projects.Files;

public class DrawnOutlineTests
{
    private static string Svg(string d, string head = "width=\"400mm\" height=\"300mm\" viewBox=\"0 0 400 300\"", string around = "{0}") =>
        $"<svg xmlns=\"http://www.w3.org/2000/svg\" {head}>{around.Replace("{0}", $"<path id=\"a\" d=\"{d}\"/>", StringComparison.Ordinal)}</svg>";

    private static string Project(string finished) =>
        $"{{ \"units\": \"mm\", \"piece\": {{ \"shape\": \"outline\", \"finished\": {{ {finished} }} }} }}";

    private static Outline Read(string drawing, string more = "", string name = "a.svg")
    {
        var reading = Reading.With(Project($"\"file\": \"{name}\"{more}"), (name, drawing));
        Assert.Empty(reading.Findings.Problems);
        var project = reading.Project!;
        var outline = project.Kind.Finished(project.Finished, reading.Findings);
        Assert.Empty(reading.Findings.Problems);
        return outline!;
    }

    private static Problem Refused(string drawing, string more = "", string name = "a.svg")
    {
        var problem = Assert.Single(Reading.With(Project($"\"file\": \"{name}\"{more}"), (name, drawing)).Findings.Problems);
        Reading.AssertSaysAll(problem);
        return problem;
    }

    private static void Near(double expected, double found, double within = 1e-6) => Assert.InRange(found - expected, -within, within);

    // The same rectangle, 100 mm by 50 mm, in the path commands of SVG 1.1, section 8.3.
    [Theory]
    [InlineData("M10 20 L110 20 L110 70 L10 70 Z")]
    [InlineData("m10,20 100,0 0,50 -100,0z")]
    [InlineData("M10 20H110V70H10Z")]
    [InlineData("M1e1.2e2h+100v50h-1e2z")]
    [InlineData("M10 20l100 0 0 50-100 0 0-50")]
    [InlineData("M 10 20 L 110 20 110 70 10 70 L 10 20 Z")]
    [InlineData("M10 70 L10 20 L110 20 L110 70 z")]
    [InlineData("M10 20C40 20 80 20 110 20L110 70Q60 70 10 70z")]
    public void A_rectangle_is_read_alike_in_every_command(string d)
    {
        var outline = Read(Svg(d));
        Assert.Equal(4, outline.Edges.Count);
        Near(300, outline.Length);
        Near(5000, outline.SignedArea());
        var box = Box.Around(outline.Ring());
        Near(10, box.Left);
        Near(230, box.Lower); // y up from the drawing's lower side: 300 - 70
    }

    // Arcs: SVG 1.1, appendix F.6. Circles and ellipses by their areas; the large and the small arc of a chord by the segment formulas
    // (chord 21, height 6: arc 25.308373, area 89.254148; Circular Sections, matheass.eu help text).
    [Theory]
    [InlineData("M100 150A50 50 0 0 1 200 150A50 50 0 0 1 100 150Z", 7853.981634, 314.159265)]
    [InlineData("M100 150a50 50 0 1 0 100 0a50 50 0 1 0-100 0z", 7853.981634, 314.159265)]
    [InlineData("M100 150a50,50 0 01100 0 50,50 0 01-100 0z", 7853.981634, 314.159265)]
    [InlineData("M100 150A1 1 0 0 1 200 150A1 1 0 0 1 100 150Z", 7853.981634, 314.159265)]
    [InlineData("M100 150A121.875 121.875 0 0 1 310 150Z", 8925.4148, 463.08373)]
    [InlineData("M100 150A50 25 0 0 1 200 150A50 25 0 0 1 100 150Z", 3926.990817, 242.211206)]
    [InlineData("M150 100A50 25 90 0 1 150 200A50 25 90 0 1 150 100Z", 3926.990817, 242.211206)]
    public void Arcs_have_the_published_lengths_and_areas(string d, double area, double length)
    {
        var outline = Read(Svg(d));
        Near(length, outline.Length, 2e-5 * length);
        Near(area, outline.SignedArea(0.0001), 2e-5 * area);
    }

    // The large arc of chord 210 in the circle of radius 121.875: the whole circle less the segment.
    [Fact]
    public void The_large_arc_is_the_rest_of_the_circle()
    {
        var outline = Read(Svg("M100 150A121.875 121.875 0 1 1 310 150Z"));
        Near((Math.PI * 121.875 * 121.875) - 8925.4148, outline.SignedArea(0.0001), 1);
    }

    // Control points (0,0) (0,90) (120,90) (120,0): y = 270 t(1-t), dx = 720 t(1-t) dt, so the area is 194400 times the integral of
    // t^2 (1-t)^2 = 1/30, which is 6480. Split in the middle (de Casteljau) it is the same curve.
    [Theory]
    [InlineData("M100 200C100 110 220 110 220 200Z")]
    [InlineData("M100 200c0-90 120-90 120 0z")]
    [InlineData("M100 200C100 155 130 132.5 160 132.5S220 155 220 200Z")]
    public void A_cubic_curve_keeps_its_area_whole_or_split(string d) => Near(6480, Read(Svg(d)).SignedArea(0.0001), 0.1);

    // Archimedes, Quadrature of the Parabola: two thirds of chord times height; a quadratic curve is a parabola of
    // half its control's height: 2/3 x 120 x 45. Split in the middle it is the same curve.
    [Theory]
    [InlineData("M100 200Q160 110 220 200Z", 3600)]
    [InlineData("M100 200Q130 155 160 155T220 200Z", 3600)]
    public void A_quadratic_curve_is_a_parabola(string d, double area)
    {
        var outline = Read(Svg(d));
        Near(area, outline.SignedArea(0.0001), 0.1);
    }

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
    [InlineData("M10 20 L110 20 L110 70", "The path is open: its ends lie 111.8 mm apart")]
    [InlineData("10 20 L110 20", "'1' is no path command, at character 1")]
    [InlineData("L10 20", "does not begin with a move")]
    [InlineData("M10 20 L110", "A number is missing")]
    [InlineData("M10 20 L110 20,,5 5z", "A number is missing")]
    [InlineData("M10 20 X110", "'X' is no path command, at character 8")]
    [InlineData("M10 20 A5 5 0 2 0 9 9z", "An arc's flag is 0 or 1")]
    [InlineData("M10 20 L1e999 20z", "beyond all bounds")]
    [InlineData("M10 20h9v9z M50 50h9v9z", "The path has 2 parts")]
    [InlineData("", "The path has 0 parts")]
    public void Wrong_path_data_is_refused_with_its_place(string d, string what)
    {
        var problem = Refused(Svg(d));
        Assert.Equal("piece.finished.file", problem.Path);
        Assert.Contains(what, problem.What, StringComparison.Ordinal);
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

    [Theory]
    [InlineData("x mm,y mm\n0,0\n100,0\n100,50\n0,50\n")]
    [InlineData("x (cm);y (cm)\r\n0;0\r\n10;0\r\n10;5\r\n0;5\r\n0;0\r\n")]
    [InlineData("\"X cm\"\t\"Y cm\"\n0\t5\n\n10\t5\n10.0\t0\n0\t0\n")]
    public void Points_are_read_from_csv_with_the_unit_in_the_head(string csv)
    {
        var outline = Read(csv, name: "a.csv");
        Near(5000, outline.SignedArea());
        Assert.Equal(4, outline.Edges.Count);
    }

    [Theory]
    [InlineData("", "The file is empty")]
    [InlineData("x,y\n0,0\n", "does not name x and y with one unit")]
    [InlineData("x cm,y mm\n0,0\n", "does not name x and y with one unit")]
    [InlineData("x cm,y cm\n0,0\n1,0,5\n", "Line 3 of the file is no point")]
    [InlineData("x cm;y cm\n0;0\n1,5;0\n", "Line 3 of the file is no point")]
    [InlineData("x cm,y cm\n0,0\n1,NaN\n", "Line 3 of the file is no point")]
    [InlineData("x cm,y cm\n0,0\n1,0\n", "fewer than three points")]
    public void Wrong_points_are_refused(string csv, string what) => Assert.Contains(what, Refused(csv, name: "a.csv").What, StringComparison.Ordinal);

    // The slow way: the same arcs as a chain of 720 points.
    [Fact]
    public void A_drawn_crescent_is_the_crescent_of_its_measurements()
    {
        var named = PieceKinds.Find("crescent")!.Finished(
            new() { Path = "p", Sizes = new Dictionary<string, Length> { ["wingspan"] = Length.FromMillimetres(300), ["depth"] = Length.FromMillimetres(90), ["rise"] = Length.FromMillimetres(30) } },
            new())!;
        double lower = CircularSegment.Radius(300, 120), top = CircularSegment.Radius(300, 30);
        var drawn = Read(Svg(string.Create(CultureInfo.InvariantCulture, $"M50 100A{lower:R} {lower:R} 0 0 0 350 100A{top:R} {top:R} 0 0 1 50 100Z")));
        Assert.Equal(2, drawn.Edges.Count);
        for (var i = 0; i < 2; i++)
        {
            for (var k = 0; k <= 360; k++)
                Near(0, (named.Edges[i].Curve.At(k / 360.0) + new Vector(200, 200)).DistanceTo(drawn.Edges[i].Curve.At(k / 360.0)));
        }
    }
}
