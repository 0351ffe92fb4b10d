using BlockingTemplates.Engine.Pieces;

namespace BlockingTemplates.Engine.Tests.Projects;

public class ReadingProblemsTests
{
    [Theory]
    [InlineData(", \"pinz\": {}", "pinz", "\"pinz\" is no name in a project file.", "Did you mean \"pins\"?")]
    [InlineData(", \"colour\": 1", "colour", "\"colour\" is no name in a project file.", "known are")]
    [InlineData(", \"mats\": { \"sise\": 30 }", "mats.sise", "is no name in the mats", "\"size\"")]
    [InlineData(", \"pins\": { \"minSpacin\": 3 }", "pins.minSpacin", "is no name in the pins", "\"minSpacing\"")]
    [InlineData(", \"sheets\": { \"Paper\": \"A4\" }", "sheets.Paper", "is no name in the sheets", "\"paper\"")]
    [InlineData(", \"fabric\": { \"fiber\": \"wool\" }", "fabric.fiber", "is no name in the fabric", "\"fibre\"")]
    [InlineData(", \"fabric\": { \"springBack\": { \"along\": 0.1, \"acros\": 0.1 } }", "fabric.springBack.acros", "is no name in the spring-back", "\"across\"")]
    [InlineData(", \"set\": { \"methode\": \"wet\" }", "set.methode", "is no name in how the shape is set", "\"method\"")]
    public void An_unknown_name_is_a_problem_with_the_nearest_known_one(string more, string path, string what, string @do) =>
        Reading.IsSingle(Reading.Triangle(more), path, what, @do);

    [Theory]
    [InlineData(", \"faceup\": \"right side\"", "piece.faceup", "is no name in the piece", "\"faceUp\"")]
    [InlineData(", \"unblocked\": { \"side\": {} }", "piece.unblocked.side", "is no name in the unblocked size of a triangle", "\"sides\"")]
    [InlineData(", \"unblocked\": { \"corners\": [] }", "piece.unblocked.corners", "is no name in the unblocked size of a triangle", "known are")]
    [InlineData(", \"unblocked\": { \"sides\": { \"lfet\": 90 } }", "piece.unblocked.sides.lfet", "is no name in the edges of a triangle", "\"left\"")]
    [InlineData(", \"unblocked\": { \"bows\": { \"lower\": 9 } }", "piece.unblocked.bows.lower", "is no name in the edges of a triangle", "\"right\", \"top\", \"left\"")]
    [InlineData(", \"edges\": { \"topp\": {} }", "piece.edges.topp", "\"topp\" is no edge of this piece.", "Did you mean \"top\"?")]
    [InlineData(", \"edges\": { \"top\": { \"counts\": 3 } }", "piece.edges.top.counts", "is no name in what is said of an edge", "\"count\"")]
    public void An_unknown_name_in_the_piece_is_a_problem_too(string piece, string path, string what, string @do) =>
        Reading.IsSingle(Reading.Triangle(piece: piece), path, what, @do);

    [Theory]
    [InlineData("{ \"title\": \"x\" }", "piece", "\"piece\" is missing in a project file.", "its shape and its finished size")]
    [InlineData("{ \"piece\": { \"finished\": {} } }", "piece.shape", "\"shape\" is missing in the piece.", "\"triangle\", \"crescent\"")]
    [InlineData("{ \"piece\": { \"shape\": \"triangle\" } }", "piece.finished", "\"finished\" is missing in the piece.", "Write the finished size.")]
    [InlineData("{ \"piece\": { \"shape\": \"triangel\", \"finished\": {} } }", "piece.shape", "\"triangel\" is no kind of piece known here.", "Did you mean \"triangle\"?")]
    [InlineData("{ \"piece\": { \"shape\": \"blob\", \"finished\": {} } }", "piece.shape", "\"blob\" is no kind of piece known here.", "\"outline\" takes any shape")]
    [InlineData("{ \"piece\": { \"shape\": \"outline\", \"finished\": {} } }", "piece.finished.corners", "\"corners\" is missing in an outline.", "counter-clockwise")]
    [InlineData("{ \"piece\": null }", "piece", "still blank", "its shape and its finished size")]
    [InlineData("{ \"piece\": { \"shape\": \"triangle\", \"finished\": null } }", "piece.finished", "still blank", "Write the finished size.")]
    public void What_has_to_be_there_is_asked_for(string text, string path, string what, string @do) =>
        Reading.IsSingle(text, path, what, @do);

    [Theory]
    [InlineData("\"title\": 5", "title", "Here stands 5, but expected is text", "double quotes")]
    [InlineData("\"pins\": []", "pins", "Here stands [ ... ], but expected is the pins: names and values in braces", "Write { \"scallop\": ... }.")]
    [InlineData("\"pins\": { \"scallop\": true }", "pins.scallop", "Here stands true, but expected is a length", "148")]
    [InlineData("\"pins\": { \"owned\": \"12\" }", "pins.owned", "Here stands \"12\", but expected is a number", "without quotes")]
    [InlineData("\"pins\": { \"owned\": 1.5 }", "pins.owned", "Here stands 1.5, but expected is a whole number", "without decimals")]
    [InlineData("\"pins\": { \"anchor\": 1 }", "pins.anchor", "expected is text", "double quotes")]
    [InlineData("\"sheets\": { \"half\": \"yes\" }", "sheets.half", "expected is true or false", "without quotes")]
    [InlineData("\"sheets\": { \"all\": 1 }", "sheets.all", "expected is true or false", "without quotes")]
    [InlineData("\"sheets\": { \"measured\": [150] }", "sheets.measured", "expected is two lengths in a list, [short, long]", "[12, 34.5]")]
    [InlineData("\"sheets\": { \"measured\": [15, null] }", "sheets.measured[1]", "Here stands null, but expected is a length", "148")]
    [InlineData("\"sheets\": { \"paper\": 4 }", "sheets.paper", "expected is a paper's name, or a list", "\"A4\"")]
    [InlineData("\"sheets\": { \"paper\": [4] }", "sheets.paper[0]", "expected is text", "double quotes")]
    [InlineData("\"mats\": { \"size\": { } }", "mats.size", "expected is a length", "148")]
    [InlineData("\"mats\": { \"turns\": 0 }", "mats.turns", "expected is a list of turns", "[0, 90]")]
    [InlineData("\"fabric\": { \"kind\": 3 }", "fabric.kind", "expected is one of the words \"lace\"", "such as \"lace\"")]
    [InlineData("\"fabric\": { \"springBack\": \"3 %\" }", "fabric.springBack", "expected is a fraction, or one along and one across", "0.03")]
    [InlineData("\"fabric\": { \"stitch\": 0.5 }", "fabric.stitch", "expected is two lengths in a list, [along, across]", "[12, 34.5]")]
    [InlineData("\"format\": \"1\"", "format", "expected is a number", "without quotes")]
    [InlineData("\"notes\": [\"a\"]", "notes", "expected is text", "double quotes")]
    [InlineData("\"$schema\": 5", "$schema", "expected is text", "double quotes")]
    public void A_value_of_the_wrong_type_says_what_is_expected(string more, string path, string what, string @do) =>
        Reading.IsSingle(Reading.Triangle(", " + more), path, what, @do);

    [Theory]
    [InlineData(", \"evenOut\": 1", "piece.evenOut", "expected is true or false")]
    [InlineData(", \"unblocked\": []", "piece.unblocked", "expected is the unblocked size of a triangle")]
    [InlineData(", \"unblocked\": { \"sides\": [90] }", "piece.unblocked.sides", "expected is the edges of a triangle")]
    [InlineData(", \"unblocked\": { \"sides\": { \"top\": [90] } }", "piece.unblocked.sides.top", "expected is a length")]
    [InlineData(", \"edges\": []", "piece.edges", "expected is edges by name")]
    [InlineData(", \"edges\": { \"top\": 180 }", "piece.edges.top", "expected is what is said of an edge")]
    public void A_value_of_the_wrong_type_in_the_piece_says_what_is_expected(string piece, string path, string what) =>
        Reading.IsSingle(Reading.Triangle(piece: piece), path, what, "Write");

    [Theory]
    [InlineData("\"mats\": { \"size\": 4.9 }", "mats.size", "4.9 cm is less than 5 cm", "from 5 cm to 300 cm")]
    [InlineData("\"mats\": { \"size\": [30, 301] }", "mats.size[1]", "301 cm is more than 300 cm", "from 5 cm to 300 cm")]
    [InlineData("\"mats\": { \"border\": -1 }", "mats.border", "-1 cm is negative", "from 0 cm to 50 cm")]
    [InlineData("\"mats\": { \"seamClearance\": \"3 in\" }", "mats.seamClearance", "\"3 in\" is more than 5 cm", "from 0 cm to 5 cm")]
    [InlineData("\"mats\": { \"owned\": -1 }", "mats.owned", "-1 is negative", "from 0 to 100000")]
    [InlineData("\"mats\": { \"turns\": [0, 45] }", "mats.turns[1]", "Here stands 45, but expected is a turn of 0 or 90", "[0, 90]")]
    [InlineData("\"mats\": { \"turns\": [90, 90] }", "mats.turns[1]", "given twice", "[0, 90]")]
    [InlineData("\"mats\": { \"turns\": [] }", "mats.turns", "No turn", "[0, 90]")]
    [InlineData("\"mats\": { \"turns\": [0, 90, 0] }", "mats.turns", "3 entries", "at most 2")]
    [InlineData("\"sheets\": { \"margin\": 5.1 }", "sheets.margin", "5.1 cm is more than 5 cm", "check the unit")]
    [InlineData("\"sheets\": { \"overlap\": -0.1 }", "sheets.overlap", "-0.1 cm is negative", "from 0 cm to 5 cm")]
    [InlineData("\"sheets\": { \"measured\": [150, 240] }", "sheets.measured[1]", "240 cm is more than 100 cm", "check the unit", 2)]
    [InlineData("\"pins\": { \"scallop\": 0 }", "pins.scallop", "0 cm is less than 0.01 cm", "from 0.01 cm to 5 cm")]
    [InlineData("\"pins\": { \"scallop\": -1 }", "pins.scallop", "-1 cm is negative", "from 0.01 cm to 5 cm")]
    [InlineData("\"pins\": { \"spacing\": 101 }", "pins.spacing", "101 cm is more than 100 cm", "from 0.3 cm to 100 cm")]
    [InlineData("\"pins\": { \"minSpacing\": 0.2 }", "pins.minSpacing", "0.2 cm is less than 0.3 cm", "from 0.3 cm to 100 cm")]
    [InlineData("\"pins\": { \"maxSpacing\": 1e999 }", "pins.maxSpacing", "beyond all bounds", "148")]
    [InlineData("\"pins\": { \"maxSpacing\": 1e300 }", "pins.maxSpacing", "beyond all bounds", "148")]
    [InlineData("\"pins\": { \"owned\": 100001 }", "pins.owned", "100001 is too great", "from 0 to 100000")]
    [InlineData("\"fabric\": { \"springBack\": 0.51 }", "fabric.springBack", "0.51 is too great", "from -0.3 to 0.5")]
    [InlineData("\"fabric\": { \"springBack\": { \"across\": -0.31 } }", "fabric.springBack.across", "-0.31 is too small", "from -0.3 to 0.5")]
    [InlineData("\"fabric\": { \"grain\": 361 }", "fabric.grain", "361 is too great", "from -360 to 360")]
    [InlineData("\"fabric\": { \"grain\": 1e999 }", "fabric.grain", "beyond all bounds is too great", "from -360 to 360")]
    [InlineData("\"fabric\": { \"stitch\": [0.71, 0.01] }", "fabric.stitch[1]", "0.01 cm is less than 0.02 cm", "from 0.02 cm to 20 cm")]
    [InlineData("\"format\": 2", "format", "2 is too great", "from 1 to 1")]
    [InlineData("\"pins\": { \"scallop\": \"1,5 mm\" }", "pins.scallop", "a comma, which may mark decimals or thousands", "with a point")]
    [InlineData("\"pins\": { \"scallop\": \"48 3\" }", "pins.scallop", "two numbers side by side", "Write a fraction")]
    public void Negative_and_absurd_values_are_problems_with_the_limits(string more, string path, string what, string @do, int count = 1)
    {
        var problems = Reading.Of(Reading.Triangle(", " + more)).Findings.Problems;
        Assert.Equal(count, problems.Count);
        Assert.All(problems, Reading.AssertSaysAll);
        Assert.Equal(path, problems[^1].Path);
        Assert.Contains(what, problems[^1].What, StringComparison.Ordinal);
        Assert.Contains(@do, problems[^1].Do, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("\"wingspan\": 0.9, \"depth\": 74", "piece.finished.wingspan", "0.9 cm is less than 1 cm")]
    [InlineData("\"wingspan\": 2001, \"depth\": 74", "piece.finished.wingspan", "2001 cm is more than 2000 cm")]
    [InlineData("\"wingspan\": -148, \"depth\": 74", "piece.finished.wingspan", "-148 cm is negative")]
    [InlineData("\"wingspan\": \"148\u00A0mm\", \"depth\": \"0.5 in\", \"bows\": { \"top\": \"-21 m\" }", "piece.finished.bows.top", "is less than -2000 cm")]
    [InlineData("\"wingspan\": 148, \"depth\": [74]", "piece.finished.depth", "expected is a length")]
    public void Absurd_measurements_are_problems_and_count_as_unreadable(string finished, string path, string what)
    {
        var text = Reading.Triangle(finished: finished);
        Reading.IsSingle(text, path, what, "Write");
        Assert.Equal([path], Reading.Of(text).Project!.Finished.Unreadable);
    }

    [Theory]
    [InlineData("{ \"count\": 0 }", "piece.edges.top.count", "0 is too small", "from 1 to 100000")]
    [InlineData("{ \"count\": -5 }", "piece.edges.top.count", "-5 is negative", "from 1 to 100000")]
    [InlineData("{ \"count\": 100001 }", "piece.edges.top.count", "100001 is too great", "from 1 to 100000")]
    [InlineData("{ \"count\": 90, \"of\": \"loops\" }", "piece.edges.top.of", "\"loops\" is none of the words \"stitches\", \"rows\".", "Write one of them.")]
    [InlineData("{ \"hold\": \"pin\" }", "piece.edges.top.hold", "\"pin\" is none of the words \"pins\", \"wire\", \"comb\", \"none\".", "Did you mean \"pins\"?")]
    public void What_is_said_of_an_edge_is_checked(string edge, string path, string what, string @do) =>
        Reading.IsSingle(Reading.Triangle(piece: $", \"edges\": {{ \"top\": {edge} }}"), path, what, @do);

    [Theory]
    [InlineData("\"sheets\": { \"use\": \"pick\" }", "sheets.use", "none of the words \"prick\", \"film\", \"frame\"", "Did you mean \"prick\"?")]
    [InlineData("\"fabric\": { \"kind\": \"woven\" }", "fabric.kind", "none of the words \"lace\", \"mesh\", \"plain\", \"garter\", \"rib\", \"cable\"", "Write one of them.")]
    [InlineData("\"fabric\": { \"measured\": \"wet\" }", "fabric.measured", "none of the words \"dry\", \"damp\"", "Write one of them.")]
    [InlineData("\"set\": { \"method\": \"steem\" }", "set.method", "none of the words \"wet\", \"spray\", \"steam\"", "Did you mean \"steam\"?")]
    [InlineData("\"set\": { \"label\": \"1 dot\" }", "set.label", "none of the words \"no iron\", \"no steam\", \"one dot\", \"two dots\", \"three dots\"", "Write one of them.")]
    [InlineData("\"sheets\": { \"paper\": [\"A44\"] }", "sheets.paper[0]", "\"A44\" is no paper known here.", "Did you mean \"A4\"?")]
    [InlineData("\"sheets\": { \"paper\": \"Foolscap\" }", "sheets.paper", "is no paper known here", "\"A4\", \"A3\", \"Letter\"")]
    [InlineData("\"sheets\": { \"paper\": [\"A4\", \"a4\"] }", "sheets.paper[1]", "named twice", "Name each paper once.")]
    [InlineData("\"sheets\": { \"paper\": [] }", "sheets.paper", "No paper is named", "\"A4\"")]
    [InlineData("\"sheets\": { \"paper\": [null] }", "sheets.paper[0]", "still blank", "Write a paper's name.")]
    [InlineData("\"pins\": { \"anchor\": \"fot\" }", "pins.anchor", "\"fot\" is no corner and no edge of this piece.", "Did you mean \"foot\"?")]
    [InlineData("\"pins\": { \"anchor\": \"middle of the world\" }", "pins.anchor", "is no corner and no edge", "Write a corner or an edge (\"foot\", \"right tip\"")]
    [InlineData("\"pins\": { \"minSpacing\": 5, \"maxSpacing\": 4 }", "pins.minSpacing", "minSpacing, 5.0 cm, is more than maxSpacing, 4.0 cm.", "Lower the one")]
    [InlineData("\"pins\": { \"minSpacing\": 9 }", "pins.minSpacing", "is more than maxSpacing, 8.0 cm", "write null for maxSpacing")]
    [InlineData("\"pins\": { \"maxSpacing\": 1 }", "pins.maxSpacing", "minSpacing, 1.5 cm, is more than maxSpacing, 1.0 cm", "raise the other")]
    [InlineData("\"pins\": { \"spacing\": 1 }", "pins.spacing", "spacing, 1.0 cm, is less than minSpacing, 1.5 cm.", "lies between")]
    [InlineData("\"pins\": { \"spacing\": 10 }", "pins.spacing", "spacing, 10.0 cm, is more than maxSpacing, 8.0 cm.", "lies between")]
    public void Wrong_words_and_names_are_problems_with_the_allowed_ones(string more, string path, string what, string @do) =>
        Reading.IsSingle(Reading.Triangle(", " + more), path, what, @do);

    [Theory]
    [InlineData("inches", "none of the words \"mm\", \"cm\", \"in\"")]
    [InlineData("m", "none of the words \"mm\", \"cm\", \"in\"")]
    public void Where_the_units_cannot_be_read_no_bare_number_is_too_great_or_small(string units, string what) =>
        Reading.IsSingle(Reading.Triangle(", \"pins\": { \"scallop\": 400 }").Replace("\"cm\"", $"\"{units}\"", StringComparison.Ordinal), "units", what, "Write");

    [Fact]
    public void Texts_too_long_or_not_printable_are_problems()
    {
        Reading.IsSingle(Reading.Triangle($", \"title\": \"{new string('x', 201)}\""), "title", "201 characters", "200 or fewer");
        Reading.IsSingle(Reading.Triangle($", \"notes\": \"{new string('x', 10_001)}\""), "notes", "10001 characters", "10000 or fewer");
        Reading.IsSingle(Reading.Triangle(", \"title\": \"two\\nlines\""), "title", "cannot be printed", "spaces");
        Reading.IsSingle(Reading.Triangle(", \"notes\": \"bell \\u0007\""), "notes", "cannot be printed", "spaces");
        Assert.Equal("two\nlines", Reading.Clean(Reading.Triangle(", \"notes\": \"two\\r\\nlines\"")).Notes);
    }

    [Theory]
    [InlineData("\"from\": \"lower left\", \"to\": \"uper right\", \"length\": 150", "piece.unblocked.diagonal.to", "\"uper right\" is no corner of a rectangle.", "\"upper right\"")]
    [InlineData("\"from\": \"lower left\", \"to\": \"upper right\"", "piece.unblocked.diagonal.length", "\"length\" is missing in a diagonal.", "straight tape")]
    [InlineData("\"from\": \"lower left\", \"length\": 150", "piece.unblocked.diagonal.to", "\"to\" is missing in a diagonal.", "corner it ends at")]
    [InlineData("\"from\": \"lower left\", \"to\": \"upper right\", \"length\": null", "piece.unblocked.diagonal.length", "still blank", "straight tape")]
    [InlineData("\"from\": \"lower left\", \"to\": \"upper right\", \"length\": 0", "piece.unblocked.diagonal.length", "0 cm is less than 1 cm", "Write")]
    public void A_diagonal_is_whole_or_a_problem(string diagonal, string path, string what, string @do)
    {
        var text = Reading.Rectangle($"\"diagonal\": {{ {diagonal} }}");
        Reading.IsSingle(text, path, what, @do);
        var unblocked = Reading.Of(text).Project!.Unblocked!;
        Assert.Null(unblocked.Diagonal);
        Assert.Contains("piece.unblocked.diagonal", unblocked.Unreadable);
    }

    [Fact]
    public void A_triangle_takes_no_diagonal() => Reading.IsSingle(
        Reading.Triangle(piece: ", \"unblocked\": { \"diagonal\": { \"from\": \"foot\", \"to\": \"left tip\", \"length\": 90 } }"),
        "piece.unblocked.diagonal",
        "A triangle is measured without a diagonal.",
        "Take it out");

    [Fact]
    public void All_problems_of_a_file_are_found_at_once_each_with_its_line()
    {
        const string Text = """
            {
              "format": 3,
              "units": "cm",
              "piece": {
                "shape": "triangle",
                "faceUp": "left side",
                "finished": { "wingspan": -148, "depth": null, "hight": 3 },
                "unblocked": {
                  "sides": {
                    "top": "1,28 m",
                    "left": 92,
                    "left": 93
                  },
                  "diagonal": 5
                },
                "edges": { "botom": {}, "top": { "count": 1.5 } }
              },
              "pins": { "minSpacing": 9, "scalop": 1 },
              "mats": { "size": "big", "turns": "sideways" },
              "sheets": { "paper": ["A4", "B17"] },
              "matts": 1
            }
            """;
        var reading = Reading.Of(Text);
        Assert.All(reading.Findings.Problems, Reading.AssertSaysAll);
        Assert.Equal(
            [
                (2, "format"), (6, "piece.faceUp"), (7, "piece.finished.wingspan"), (7, "piece.finished.depth"), (7, "piece.finished.hight"),
                (10, "piece.unblocked.sides.top"), (12, "piece.unblocked.sides.left"), (14, "piece.unblocked.diagonal"),
                (16, "piece.edges.botom"), (16, "piece.edges.top.count"), (18, "pins.minSpacing"), (18, "pins.scalop"),
                (19, "mats.size"), (19, "mats.turns"), (20, "sheets.paper[1]"), (21, "matts"),
            ],
            reading.Findings.Problems.Select(p => (p.Line!.Value, p.Path)).OrderBy(p => p.Value).ThenBy(p => Text.IndexOf($"\"{p.Path.Split('.')[^1]}\"", StringComparison.Ordinal)));
        Assert.Equal(["piece.finished.wingspan", "piece.finished.depth"], reading.Project!.Finished.Unreadable);
        Assert.Equal(92, reading.Project.Unblocked!.Sides["left"].Centimetres);
        Assert.Equal(["piece.unblocked.sides.top"], reading.Project.Unblocked.Unreadable);
    }

    [Fact]
    public void A_section_that_cannot_be_read_makes_all_in_it_unreadable()
    {
        var sides = Reading.Of(Reading.Triangle(piece: ", \"unblocked\": { \"sides\": 5 }")).Project!.Unblocked!;
        Assert.Equal(["piece.unblocked.sides", "piece.unblocked.sides.right", "piece.unblocked.sides.top", "piece.unblocked.sides.left"], sides.Unreadable);
        var finished = Reading.Of("{ \"piece\": { \"shape\": \"triangle\" } }").Project!.Finished;
        Assert.Equal(["piece.finished", "piece.finished.wingspan", "piece.finished.depth", "piece.finished.offset", "piece.finished.rightSide", "piece.finished.leftSide"], finished.Unreadable);
    }

    [Fact]
    public void An_edge_held_by_nothing_is_read_as_such() => Assert.Equal(
        new EdgeTreatment(90, CountedIn.Rows, Holding.None),
        Reading.Clean(Reading.Triangle(piece: ", \"edges\": { \"top\": { \"count\": 90, \"of\": \"rows\", \"hold\": \"none\" } }")).Treatment("top"));
}
