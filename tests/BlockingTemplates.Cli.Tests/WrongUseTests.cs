namespace BlockingTemplates.Cli.Tests;

public class WrongUseTests
{
    public static TheoryData<string[]> Wrong =>
    [
        [], ["fly"], ["plan"], ["check"], ["new"], ["plan", "--out"], ["new", "dodecahedron"], ["new", "triangle", "--units", "furlong"],
        ["check", "a.json", "b.json"], ["plan", "a.json", "b.json", "--out", "x"], ["demo", "extra"], ["plan", "a.json", "--colour"], ["check", "--colour"], ["plan", "a.json", "--measured"], ["new", "triangle", "--out"],
        ["plan", "a.json", "--measured", "149.5"], ["plan", "a.json", "--measured", "wide x long"], ["plan", "a.json", "--measured", "1x2x3"], ["plan", "a.json", "--measured", "149,5x239"],
    ];

    [Theory]
    [MemberData(nameof(Wrong))]
    public async Task Wrong_use_gives_one_line_and_exit_2(string[] arguments)
    {
        var run = await Bench.RunAsync(arguments);
        Assert.Equal((2, ""), (run.Code, run.Output));
        Assert.Single(run.ErrorLines);
    }

    [Theory]
    [InlineData("record", "piece.json")]
    [InlineData("trace", "photo.jpg")]
    [InlineData("studio", "studio.json")]
    public async Task Reserved_verbs_say_that_they_have_not_arrived(params string[] arguments)
    {
        var run = await Bench.RunAsync(arguments);
        Assert.Equal((2, ""), (run.Code, run.Output));
        Assert.Contains("has not arrived yet", Assert.Single(run.ErrorLines), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--help")]
    [InlineData("plan", "--help")]
    [InlineData("--version")]
    public async Task Asking_for_help_is_no_wrong_use(params string[] arguments)
    {
        var run = await Bench.RunAsync(arguments);
        Assert.Equal((0, ""), (run.Code, run.Error));
        Assert.NotEmpty(run.OutputLines);
    }
}
