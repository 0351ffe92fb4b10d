using System.Net;
using System.Net.Sockets;
using System.Text.RegularExpressions;

namespace BlockingTemplates.Cli.Tests;

public class PageTests
{
    [Fact]
    public async Task The_page_answers_until_it_is_ended_and_keeps_the_work()
    {
        using var bench = new Bench();
        var file = bench.Write("shawl.jsonc", Pieces.Small());
        using var output = new SharedWriter();
        using var stop = new CancellationTokenSource();
        var running = CommandLine.RunAsync(["page", file, "--no-open", "--port", "0", "--state", bench.At("state")], output, output, stop.Token);
        var told = await output.UntilAsync("Ctrl+C");
        var address = Regex.Match(told, @"http://127\.0\.0\.1:\d+/").Value;
        Assert.Contains($"{address}#/p1/measure", told, StringComparison.Ordinal);
        using (var client = new HttpClient())
            Assert.Equal(Pieces.Small(), await client.GetStringAsync($"{address}api/copies/p1/text"));
        await stop.CancelAsync();
        Assert.Equal(0, await running);
        Assert.Equal(Pieces.Small(), await File.ReadAllTextAsync(bench.At("state", "p1", "project.jsonc")));
    }

    [Fact]
    public async Task Pinning_opens_at_that_part_and_sharing_shows_a_code()
    {
        using var bench = new Bench();
        using var output = new SharedWriter();
        using var stop = new CancellationTokenSource();
        var running = CommandLine.RunAsync(["page", bench.Write("shawl.jsonc", Pieces.Small()), "--no-open", "--port", "0", "--pinning", "--share", "--state", bench.At("state")], output, output, stop.Token);
        var told = await output.UntilAsync("Ctrl+C");
        Assert.Contains("#/p1/pin", told, StringComparison.Ordinal);
        Assert.Matches(@"code [A-Z2-9]{4}-[A-Z2-9]{4} works once|on no network", told);
        await stop.CancelAsync();
        Assert.Equal(0, await running);
    }

    [Fact]
    public async Task A_port_that_is_taken_is_trouble()
    {
        using var bench = new Bench();
        using var taken = new TcpListener(IPAddress.Loopback, 0);
        taken.Start();
        var run = await Bench.RunAsync("page", "--no-open", "--port", $"{((IPEndPoint)taken.LocalEndpoint).Port}", "--state", bench.At("state"));
        Assert.Equal((3, ""), (run.Code, run.Output));
        Assert.Single(run.ErrorLines);
    }

    [Fact]
    public async Task A_file_that_is_not_there_is_trouble()
    {
        using var bench = new Bench();
        var run = await Bench.RunAsync("page", bench.At("nothing.jsonc"), "--no-open", "--state", bench.At("state"));
        Assert.Equal(3, run.Code);
        Assert.Contains("was not found", Assert.Single(run.ErrorLines), StringComparison.Ordinal);
        Assert.Empty(bench.Files());
    }

    [Theory]
    [InlineData("page", "--port", "many")]
    [InlineData("page", "--port", "70000")]
    [InlineData("page", "--loud")]
    [InlineData("page", "one.jsonc", "two.jsonc")]
    public async Task Wrong_use_is_told_in_one_line(params string[] arguments)
    {
        var run = await Bench.RunAsync(arguments);
        Assert.Equal((2, ""), (run.Code, run.Output));
        Assert.Single(run.ErrorLines);
    }

    // Takes words from one thread and gives them to another.
    private sealed class SharedWriter : StringWriter
    {
        private readonly Lock _gate = new();

        public override void Write(char value)
        {
            lock (_gate)
                base.Write(value);
        }

        public override void Write(string? value)
        {
            lock (_gate)
                base.Write(value);
        }

        public override void WriteLine(string? value)
        {
            lock (_gate)
                base.WriteLine(value);
        }

        public async Task<string> UntilAsync(string words)
        {
            for (var i = 0; i < 300; i++)
            {
                lock (_gate)
                {
                    if (ToString().Contains(words, StringComparison.Ordinal))
                        return ToString();
                }

                await Task.Delay(100);
            }

            return ToString();
        }
    }
}
