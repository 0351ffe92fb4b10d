using System.Globalization;
using System.Text.RegularExpressions;
using UglyToad.PdfPig;

namespace BlockingTemplates.Cli.Tests;

public partial class NewTests
{
    // Measurements in centimetres that make a piece; bows and corners where nothing is said: as below.
    private static readonly Dictionary<string, double> Measured = new()
    {
        ["piece.finished.wingspan"] = 60,
        ["piece.finished.depth"] = 30,
        ["piece.finished.width"] = 30,
        ["piece.finished.length"] = 50,
        ["piece.unblocked.sides.top"] = 50,
        ["piece.unblocked.sides.left"] = 38,
        ["piece.unblocked.sides.right"] = 38,
        ["piece.unblocked.sides.lower"] = 26,
        ["piece.unblocked.diagonal.length"] = 51,
        ["piece.finished.corners[1].at[0]"] = 40,
        ["piece.finished.corners[1].at[1]"] = 0,
        ["piece.finished.corners[2].at[0]"] = 42,
        ["piece.finished.corners[2].at[1]"] = 30,
        ["piece.finished.corners[3].at[0]"] = -2,
        ["piece.finished.corners[3].at[1]"] = 31,
        ["piece.unblocked.corners[1].at[0]"] = 34,
        ["piece.unblocked.corners[1].at[1]"] = 0,
        ["piece.unblocked.corners[2].at[0]"] = 35,
        ["piece.unblocked.corners[2].at[1]"] = 26,
        ["piece.unblocked.corners[3].at[0]"] = -1,
        ["piece.unblocked.corners[3].at[1]"] = 27,
    };

    [Theory]
    [InlineData("triangle", 8)]
    [InlineData("rectangle", 11)]
    [InlineData("outline", 20)]
    public async Task A_new_project_lists_exactly_its_blanks_and_filled_in_gives_a_plan(string shape, int blanks)
    {
        using var bench = new Bench();
        var file = bench.At("piece.jsonc");
        var made = await Bench.RunAsync("new", shape, "--out", file);
        Assert.Equal((0, ""), (made.Code, made.Error));
        Assert.Contains(file, made.OutputLines);
        using (var form = PdfDocument.Open(await File.ReadAllBytesAsync(bench.At("piece-measuring-form.pdf"))))
            Assert.Equal(1, form.NumberOfPages);

        var listed = await Bench.RunAsync("plan", file, "--out", bench.At("packet"));
        Assert.Equal(1, listed.Code);
        Assert.Equal(blanks, listed.Problems.Count);
        Assert.Equal($"{blanks} problems, 0 notes", listed.OutputLines[^1]);
        Assert.False(Directory.Exists(bench.At("packet")));

        var lines = await File.ReadAllLinesAsync(file);
        foreach (var problem in listed.Problems)
        {
            var blank = Blank().Match(problem);
            Assert.True(blank.Success, problem);
            var (line, path) = (int.Parse(blank.Groups[1].Value, CultureInfo.InvariantCulture) - 1, blank.Groups[2].Value);
            var at = lines[line].IndexOf("null", StringComparison.Ordinal);
            Assert.True(at >= 0, problem);
            // The rectangle's long sides are its left and right; its short ones the lower and the top.
            var value = path.Contains("bow", StringComparison.Ordinal) ? 0.5
                : shape == "rectangle" && path is "piece.unblocked.sides.top" ? 26
                : shape == "rectangle" && path is "piece.unblocked.sides.left" or "piece.unblocked.sides.right" && shape == "rectangle" ? 44
                : Measured[path];
            lines[line] = lines[line][..at] + value.ToString(CultureInfo.InvariantCulture) + lines[line][(at + 4)..];
        }

        await File.WriteAllLinesAsync(file, lines);
        var planned = await Bench.RunAsync("plan", file, "--out", bench.At("packet"));
        Assert.Equal((0, ""), (planned.Code, planned.Error));
        Assert.Empty(planned.Problems);
        Assert.Contains("largest pull", planned.Output, StringComparison.Ordinal);
        Assert.True(File.Exists(bench.At("packet", "guide-A4.pdf")));
    }

    [Fact]
    public async Task New_never_replaces_a_file()
    {
        using var bench = new Bench();
        var file = bench.At("piece.jsonc");
        bench.Write("piece.jsonc", "mine");
        bench.Write("other-measuring-form.pdf", "mine too");
        foreach (var name in new[] { "piece.jsonc", "other.jsonc" })
        {
            var run = await Bench.RunAsync("new", "triangle", "--out", bench.At(name));
            Assert.Equal((3, ""), (run.Code, run.Output));
            Assert.Contains("not replaced", Assert.Single(run.ErrorLines), StringComparison.Ordinal);
        }

        Assert.Equal(["other-measuring-form.pdf", "piece.jsonc"], bench.Files().Keys.Order(StringComparer.Ordinal));
        Assert.Equal("mine", await File.ReadAllTextAsync(file));
    }

    [GeneratedRegex(@"^problem: line (\d+), ([\w.\[\]]+): This is still blank\. Fill it in.*\.$")]
    private static partial Regex Blank();
}
