using BlockingTemplates.Engine.Fabrics;
using BlockingTemplates.Engine.Mats;
using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Pins;
using BlockingTemplates.Engine.Sheets;

namespace BlockingTemplates.Engine.Tests.Projects;

public class ReadingTests
{
    [Theory]
    [InlineData("\"mm\"", LengthUnit.Millimetres)]
    [InlineData("\"cm\"", LengthUnit.Centimetres)]
    [InlineData("\"in\"", LengthUnit.Inches)]
    [InlineData("null", LengthUnit.Millimetres)]
    public void Defaults_are_centimetres_whatever_the_units(string units, LengthUnit unit)
    {
        var project = Reading.Clean($"{{ \"units\": {units}, \"piece\": {{ \"shape\": \"triangle\", \"finished\": {{ \"wingspan\": 60, \"depth\": 30 }} }} }}");
        Assert.Equal(unit, project.Units);
        Assert.Equal(60, project.Finished.Sizes["wingspan"].In(unit), 1e-12);
        Assert.Equal(PinSettings.Default, project.Pins);
        Assert.Equal(5, project.Pins.Scallop.Millimetres);
        Assert.Null(project.Pins.Spacing);
        Assert.Equal(15, project.Pins.MinSpacing.Millimetres);
        Assert.Equal(80, project.Pins.MaxSpacing!.Value.Millimetres);
        Assert.Null(project.Pins.Anchor);
        Assert.Equal(MatSettings.Default with { Turns = project.Mats.Turns }, project.Mats);
        Assert.Equal([0, 90], project.Mats.Turns);
        Assert.Equal("A4", Assert.Single(project.Sheets.Papers).Name);
        Assert.Equal(12, project.Sheets.Margin.Millimetres);
        Assert.Equal(15, project.Sheets.Overlap.Millimetres);
        Assert.Equal(GuideUse.Prick, project.Sheets.Use);
        Assert.Null(project.Sheets.Measured);
        Assert.Equal(FabricSettings.Unsaid, project.Fabric);
        Assert.Equal(SetSettings.Unsaid, project.Set);
        Assert.Equal((WorkSide.RightSide, WorkSide.RightSide, false), (project.FaceUp, project.MeasuredFaceUp, project.EvenOut));
        Assert.Equal(("", ""), (project.Title, project.Notes));
        Assert.Null(project.Unblocked);
        Assert.Equal(EdgeTreatment.Unsaid, project.Treatment("top"));
    }

    [Fact]
    public void Units_left_out_are_millimetres() =>
        Assert.Equal(600, Reading.Clean("{ \"piece\": { \"shape\": \"triangle\", \"finished\": { \"wingspan\": 600, \"depth\": 300 } } }").Finished.Sizes["wingspan"].Millimetres);

    [Fact]
    public void The_side_measured_is_the_side_up_unless_said()
    {
        var project = Reading.Clean(Reading.Triangle(piece: ", \"faceUp\": \"wrong side\""));
        Assert.Equal((WorkSide.WrongSide, WorkSide.WrongSide), (project.FaceUp, project.MeasuredFaceUp));
        project = Reading.Clean(Reading.Triangle(piece: ", \"faceUp\": \"wrong side\", \"measuredFaceUp\": \"right side\""));
        Assert.Equal((WorkSide.WrongSide, WorkSide.RightSide), (project.FaceUp, project.MeasuredFaceUp));
    }

    [Fact]
    public void Everything_said_is_read()
    {
        var project = Reading.Clean(Reading.Triangle(
            """
            , "format": 1, "title": " Thing ", "notes": "a\nb",
            "fabric": { "kind": "garter", "fibre": "Silk", "grain": -45, "stitch": [0.7, "6 mm"], "measured": "damp", "springBack": { "along": 0.03, "across": -0.04 } },
            "pins": { "scallop": 0.4, "spacing": 4, "minSpacing": 2, "maxSpacing": null, "anchor": "Middle of TOP", "owned": 0 },
            "mats": { "size": [60, "300 mm"], "border": 6, "seamClearance": 0, "turns": [90], "owned": 7 },
            "sheets": { "paper": ["a3", "LETTER"], "margin": 0, "overlap": 2, "use": "frame", "half": false, "all": false, "measured": ["149.5 mm", "239 mm"] },
            "set": { "method": "spray", "label": "one dot" }
            """,
            ", \"evenOut\": true, \"unblocked\": { \"sides\": { \"top\": 128 }, \"bows\": { \"top\": \"-3 cm\" }, \"along\": { \"left\": 93 } }"));
        Assert.Equal(("Thing", "a\nb", true), (project.Title, project.Notes, project.EvenOut));
        Assert.Equal(
            new FabricSettings(FabricKind.Garter, FibreCatalogue.Find("silk"), -45, (Length.FromCentimetres(0.7), Length.FromMillimetres(6)), Dampness.Damp, new(0.03, -0.04)),
            project.Fabric);
        Assert.Equal(
            new PinSettings(Length.FromCentimetres(0.4), Length.FromCentimetres(4), Length.FromCentimetres(2), null, "middle of top", 0),
            project.Pins);
        Assert.Equal([600, 300, 60, 0], new[] { project.Mats.Width, project.Mats.Height, project.Mats.Border, project.Mats.SeamClearance }.Select(l => l.Millimetres));
        Assert.Equal([90], project.Mats.Turns);
        Assert.Equal(7, project.Mats.Owned);
        Assert.Equal(["A3", "Letter"], project.Sheets.Papers.Select(p => p.Name));
        Assert.Equal((149.5, 239.0), (project.Sheets.Measured!.Value.Short.Millimetres, project.Sheets.Measured.Value.Long.Millimetres));
        Assert.Equal(GuideUse.Frame, project.Sheets.Use);
        Assert.Equal(new SetSettings(SetMethod.Spray, CareLabel.OneDot), project.Set);
        Assert.Equal(1280, project.Unblocked!.Sides["top"].Millimetres);
        Assert.Equal(-30, project.Unblocked.Bows["top"].Millimetres);
        Assert.Equal(930, project.Unblocked.Along["left"].Millimetres);
        Assert.Equal("piece.unblocked", project.Unblocked.Path);
    }

    [Theory]
    [InlineData("foot", "foot")]
    [InlineData("Right Tip", "right tip")]
    [InlineData("top", "top")]
    [InlineData("middle of left", "middle of left")]
    [InlineData("NONE", "none")]
    public void An_anchor_is_a_corner_an_edge_its_middle_or_none(string said, string read) =>
        Assert.Equal(read, Reading.Clean(Reading.Triangle($", \"pins\": {{ \"anchor\": \"{said}\" }}")).Pins.Anchor);

    [Fact]
    public void One_number_of_spring_back_is_for_both_directions() =>
        Assert.Equal(new SpringBack(0.03, 0.03), Reading.Clean(Reading.Triangle(", \"fabric\": { \"springBack\": 0.03 }")).Fabric.SpringBack);

    [Fact]
    public void A_paper_may_be_named_without_a_list() =>
        Assert.Equal("Letter", Assert.Single(Reading.Clean(Reading.Triangle(", \"sheets\": { \"paper\": \"letter\" }")).Sheets.Papers).Name);

    [Fact]
    public void An_unknown_fibre_is_a_note_and_taken_for_the_most_delicate()
    {
        var reading = Reading.Of(Reading.Triangle(",\n\"fabric\": {\n\"fibre\": \"woool\" }"));
        Assert.Empty(reading.Findings.Problems);
        var note = Assert.Single(reading.Findings.Notes);
        Assert.Equal(("fabric.fibre", 3), (note.Place, note.Line));
        Assert.Contains("most delicate", note.What, StringComparison.Ordinal);
        Assert.Equal("Did you mean \"wool\"?", note.Do);
        Assert.False(reading.Project!.Fabric.Fibre!.SteamAllowed);
        Assert.Contains("\"cotton\"", Reading.Of(Reading.Triangle(", \"fabric\": { \"fibre\": \"unobtainium\" }")).Findings.Notes[0].Do, StringComparison.Ordinal);
    }

    [Fact]
    public void Mats_may_turn_freely_and_have_a_floor_to_fit_on()
    {
        var mats = Reading.Clean(Reading.Triangle(", \"mats\": { \"turns\": \"free\", \"floor\": [200, \"3 m\"] }")).Mats;
        Assert.Equal(Enumerable.Range(0, 180), mats.Turns);
        Assert.Equal(new MatFloor(Length.FromMillimetres(2000), Length.FromMillimetres(3000)), mats.Floor);
        Assert.Equal(new MatFloor(Length.FromMillimetres(1500), Length.FromMillimetres(1500)), Reading.Clean(Reading.Triangle(", \"mats\": { \"floor\": 150 }")).Mats.Floor);
        Assert.Null(Reading.Clean(Reading.Triangle(", \"mats\": { \"floor\": null }")).Mats.Floor);
    }

    [Theory]
    [InlineData("\"mats\": { \"floor\": -1 }", "mats.floor", "-1 cm is negative")]
    [InlineData("\"mats\": { \"floor\": [1, 200] }", "mats.floor[0]", "is less than 5 cm")]
    [InlineData("\"mats\": { \"floor\": [200] }", "mats.floor", "expected is two lengths in a list, [width, height]")]
    [InlineData("\"mats\": { \"floor\": true }", "mats.floor", "expected is a length")]
    [InlineData("\"mats\": { \"turns\": \"freely\" }", "mats.turns", "expected is a list of turns")]
    public void A_floor_or_turns_not_as_they_should_be_are_problems(string more, string path, string what) =>
        Reading.IsSingle(Reading.Triangle(", " + more), path, what, "Write");

    [Theory]
    [InlineData("\"fringe\": { \"every\": 4 }", "fringe")]
    public void A_reserved_name_whose_part_has_not_arrived_is_a_note(string more, string place)
    {
        var reading = Reading.Of(Reading.Triangle(", " + more));
        Assert.Empty(reading.Findings.Problems);
        var note = Assert.Single(reading.Findings.Notes);
        Assert.Equal((place, 1), (note.Place, note.Line));
        Assert.Contains("has not arrived yet", note.What, StringComparison.Ordinal);
        Assert.Contains("the plan is made without it", note.What, StringComparison.Ordinal);
        Assert.EndsWith(".", note.Do, StringComparison.Ordinal);
        Assert.Equal([0, 90], reading.Project!.Mats.Turns);
    }

    [Fact]
    public void A_reserved_name_that_says_nothing_is_not_noted() =>
        Assert.Empty(Reading.Of(Reading.Triangle(", \"wires\": null, \"combs\": {}, \"fringe\": {}, \"sheets\": { \"half\": false }, \"fabric\": { \"swatch\": null }")).Findings.Notes);

    [Fact]
    public void Comments_and_trailing_commas_are_allowed() =>
        Reading.Clean("// a\n{ /* b */ \"piece\": { \"shape\": \"triangle\", \"finished\": { \"wingspan\": 600, \"depth\": 300, }, }, } // c");
}
