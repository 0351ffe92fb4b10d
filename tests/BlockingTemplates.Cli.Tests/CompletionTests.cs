namespace BlockingTemplates.Cli.Tests;

// What a shell is told when it asks for the words that could come next.
public class CompletionTests
{
    [Theory]
    [InlineData("[suggest:3]", "pla", "plan")]
    [InlineData("[suggest:8]", "plan --o", "--out")]
    [InlineData("[suggest:8]", "new rect", "rectangle")]
    [InlineData("[suggest:17]", "new triangle --un", "--units")]
    public async Task A_begun_word_is_completed(string directive, string words, string answer)
    {
        var run = await Bench.RunAsync(directive, words);
        Assert.Equal((0, ""), (run.Code, run.Error));
        Assert.Equal([answer], run.OutputLines.Select(l => l.TrimEnd('\r')));
    }

    [Fact]
    public async Task With_nothing_written_all_verbs_are_offered()
    {
        var run = await Bench.RunAsync("[suggest:0]", "");
        Assert.Equal((0, ""), (run.Code, run.Error));
        Assert.Subset(run.OutputLines.ToHashSet(), new HashSet<string> { "check", "demo", "new", "plan" });
    }

    [Fact]
    public async Task The_units_are_offered_after_their_option()
    {
        var run = await Bench.RunAsync("[suggest:23]", "new rectangle --units ");
        Assert.Equal(["cm", "in", "mm"], run.OutputLines.Order(StringComparer.Ordinal));
    }
}
