using BlockingTemplates.Engine.Fabrics;
using BlockingTemplates.Engine.Measure;

namespace BlockingTemplates.Engine.Tests.Projects;

public class StripsReadingTests
{
    private const string Along = "\"along\": { \"length\": [20, 22.4], \"width\": 4.7 }";
    private const string Across = "\"across\": { \"length\": [20, 23.2], \"width\": 4.7 }";
    private const string Slanted = "\"slanted\": { \"length\": [20, 25] }";

    [Fact]
    public void Strips_and_swatch_are_read()
    {
        var fabric = Reading.Clean(Reading.Triangle(
            $", \"fabric\": {{ \"swatch\": {{ \"before\": [10, 9.5], \"after\": [12.8, \"114 mm\"], \"pinned\": [13, 11.7] }}, \"strips\": {{ \"width\": \"50 mm\", \"weight\": 40, \"reading\": \"0.5 mm\", {Along}, {Across}, {Slanted} }} }}")).Fabric;
        static Length Mm(double mm) => Length.FromMillimetres(mm);
        Assert.Equal(new Swatch((Mm(100), Mm(95)), (Mm(128), Mm(114)), (Mm(130), Mm(117))), fabric.Swatch);
        Assert.Equal(
            new StripTest(Mm(50), 40, new(Mm(200), Mm(224), Mm(47)), new(Mm(200), Mm(232), Mm(47)), new(Mm(200), Mm(250), null), Mm(0.5)),
            fabric.Strips);
        Assert.Equal(MaterialSource.Strips, ClothMaterials.Of(fabric).Source);
    }

    [Fact]
    public void A_tape_is_read_to_a_millimetre_unless_said() =>
        Assert.Equal(1, Reading.Clean(Strips($"{Along}, {Across}, {Slanted}")).Fabric.Strips!.Reading.Millimetres);

    [Theory]
    [InlineData("\"along\": { \"length\": [20, 19], \"width\": 4.7 }", "along.length", "The along strip got 1.0 cm shorter", "without the weight first")]
    [InlineData("\"along\": { \"length\": [20, 20], \"width\": 4.7 }", "along.length", "is no longer with the weight", "without the weight first")]
    [InlineData("\"along\": { \"length\": [20, 20.2], \"width\": 4.7 }", "along.length", "got only 0.2 cm longer", "heavier weight")]
    [InlineData("\"along\": { \"length\": [20, 22.4], \"width\": 1.7 }", "along.width", "narrow by more than any cloth", "half-way")]
    [InlineData("\"along\": { \"length\": [20, 22.4], \"width\": 8.7 }", "along.width", "get wider by more than any cloth", "half-way")]
    [InlineData("\"along\": { \"length\": [20, 22.4] }", "along.width", "\"width\" is missing", "half-way")]
    [InlineData("\"along\": { \"length\": [20], \"width\": 4.7 }", "along.length", "[without, with] the weight", "Write")]
    [InlineData("\"along\": { \"length\": [20, 22.4], \"width\": -4.7 }", "along.width", "-4.7 cm is negative", "Write")]
    [InlineData("\"along\": 5", "along", "expected is the along strip", "Write")]
    public void An_impossible_strip_along_is_a_problem_in_the_makers_words(string along, string path, string what, string @do) =>
        Reading.IsSingle(Strips($"{along}, {Across}, {Slanted}"), "fabric.strips." + path, what, @do);

    [Theory]
    [InlineData("\"slanted\": { \"length\": [20, 20.5] }", "slanted.length", "stretches less than any cloth", "45 degrees")]
    [InlineData("\"slanted\": { \"length\": [20, 18] }", "slanted.length", "2.0 cm shorter", "same two marks")]
    public void An_impossible_slanted_strip_is_a_problem(string slanted, string path, string what, string @do) =>
        Reading.IsSingle(Strips($"{Along}, {Across}, {slanted}"), "fabric.strips." + path, what, @do);

    [Fact]
    public void Every_strip_that_got_shorter_is_told_at_once()
    {
        var reading = Reading.Of(Strips("\"along\": { \"length\": [20, 19], \"width\": 4.7 },\n\"across\": { \"length\": [20, 19] },\n\"slanted\": { \"length\": [20, 19] }"));
        Assert.Equal([1, 2, 3], reading.Findings.Problems.Select(p => p.Line));
        Assert.All(reading.Findings.Problems, Reading.AssertSaysAll);
    }

    [Fact]
    public void What_is_odd_but_possible_is_a_note()
    {
        var notes = Reading.Of(Strips($"\"along\": {{ \"length\": [20, 20.7], \"width\": 5.2 }}, \"across\": {{ \"length\": [20, 23.2], \"width\": 4.6 }}, {Slanted}")).Findings.Notes;
        Assert.Equal(
            ["fabric.strips.along.length", "fabric.strips.along.width", "fabric.strips.across.width"],
            notes.Select(n => n.Place));
        Assert.Contains("wider", notes[1].What, StringComparison.Ordinal);
        Assert.All(notes, n => Assert.EndsWith(".", n.Do, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("\"before\": [10, 10]", "fabric.swatch.after", "\"after\" is missing")]
    [InlineData("\"after\": [10, 10]", "fabric.swatch.before", "\"before\" is missing")]
    [InlineData("\"before\": [10, 10], \"after\": [45, 12]", "fabric.swatch.after", "4.5 times as long along")]
    [InlineData("\"before\": [10, 10], \"after\": [12, 4]", "fabric.swatch.after", "0.4 times as long across")]
    [InlineData("\"before\": [10, 10], \"after\": [12, 12], \"pinned\": [50, 12]", "fabric.swatch.pinned", "5 times as long along")]
    [InlineData("\"before\": [10], \"after\": [12, 12]", "fabric.swatch.before", "[along, across] the rows")]
    public void A_swatch_not_as_it_should_be_is_a_problem(string swatch, string path, string what)
    {
        var problem = Reading.Single(Reading.Triangle($", \"fabric\": {{ \"swatch\": {{ {swatch} }} }}"));
        Assert.Equal(path, problem.Path);
        Assert.Contains(what, problem.What, StringComparison.Ordinal);
    }

    private static string Strips(string strips) => Reading.Triangle($", \"fabric\": {{ \"strips\": {{ \"width\": 5, \"weight\": 50, {strips} }} }}");
}
