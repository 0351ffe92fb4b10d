using System.Text.RegularExpressions;

namespace BlockingTemplates.Cli.Tests;

public class CheckTests
{
    [Fact]
    public async Task Every_problem_is_listed_at_once_with_its_line_its_path_and_what_to_do()
    {
        using var bench = new Bench();
        var run = await Bench.RunAsync("check", bench.Write("broken.json", Pieces.Broken));
        Assert.Equal((1, ""), (run.Code, run.Error));
        Assert.All(run.Problems, p => Assert.Matches(@"^problem: line \d+, [\w.\[\]]+: .+\.( .+[.?])$", p));
        Assert.Contains(run.Problems, p => p.StartsWith("problem: line 3, piece.finished.wingspan: ", StringComparison.Ordinal));
        Assert.Contains(run.Problems, p => p.StartsWith("problem: line 3, piece.finished.depht: ", StringComparison.Ordinal) && p.Contains("depth", StringComparison.Ordinal));
        Assert.Contains(run.Problems, p => p.StartsWith("problem: line 4, piece.unblocked.sides", StringComparison.Ordinal));
        Assert.Contains(run.Problems, p => p.StartsWith("problem: line 5, mats.size: ", StringComparison.Ordinal) && p.Contains("comma", StringComparison.Ordinal));
        Assert.Equal($"{run.Problems.Count} problems, {run.Notes.Count} notes", run.OutputLines[^1]);
        Assert.Equal(["broken.json"], bench.Files().Keys);
    }

    [Theory]
    [InlineData("lace-triangle")]
    [InlineData("crescent-outline")]
    [InlineData("rectangle-with-short-edge")]
    public async Task Checking_an_example_writes_nothing_and_lists_its_notes(string example)
    {
        using var bench = new Bench();
        var file = bench.At("example.jsonc");
        File.Copy(Path.Combine(Bench.Examples, $"{example}.jsonc"), file);
        var run = await Bench.RunAsync("check", file);
        Assert.Equal((0, ""), (run.Code, run.Error));
        Assert.Empty(run.Problems);
        Assert.NotEmpty(run.Notes);
        Assert.All(run.Notes, n => Assert.True(Regex.IsMatch(n, @"^note: (line \d+, [\w. \[\]]+|edge [\w ]+|guide on \w+): .+\. .+\.$"), n));
        Assert.Equal($"0 problems, {run.Notes.Count} notes", run.OutputLines[^1]);
        Assert.Equal(["example.jsonc"], bench.Files().Keys);
    }

    [Fact]
    public async Task Plan_and_check_list_the_same_and_plan_writes_nothing_on_problems()
    {
        using var bench = new Bench();
        var file = bench.Write("broken.json", Pieces.Broken);
        var (check, plan) = (await Bench.RunAsync("check", file), await Bench.RunAsync("plan", file, "--out", bench.At("packet")));
        Assert.Equal(check, plan);
        Assert.False(Directory.Exists(bench.At("packet")));
    }

    [Fact]
    public async Task A_packet_that_is_there_stays_when_the_project_has_problems()
    {
        using var bench = new Bench();
        Assert.Equal(0, (await Bench.RunAsync("plan", bench.Write("piece.json", Pieces.Small()), "--out", bench.At("packet"))).Code);
        var before = bench.Files();
        Assert.Equal(1, (await Bench.RunAsync("plan", bench.Write("piece.json", Pieces.Broken), "--out", bench.At("packet"))).Code);
        Assert.All(before.Where(f => f.Key != "piece.json"), f => Assert.Equal(f.Value, File.ReadAllBytes(bench.At(f.Key))));
    }
}
