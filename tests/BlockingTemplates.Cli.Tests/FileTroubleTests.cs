namespace BlockingTemplates.Cli.Tests;

public class FileTroubleTests
{
    [Theory]
    [InlineData("check")]
    [InlineData("plan")]
    public async Task A_missing_file_and_a_folder_are_told_in_one_line_with_exit_3(string verb)
    {
        using var bench = new Bench();
        Directory.CreateDirectory(bench.At("folder"));
        foreach (var name in new[] { "missing.json", "folder", "missing/piece.json" })
        {
            var run = await Bench.RunAsync(verb, bench.At(name));
            Assert.Equal((3, ""), (run.Code, run.Output));
            Assert.Contains(name, Assert.Single(run.ErrorLines), StringComparison.Ordinal);
        }

        Assert.Empty(bench.Files());
    }

    [Fact]
    public async Task A_file_over_5_MB_is_refused_unread()
    {
        using var bench = new Bench();
        foreach (var length in new[] { 5_000_001, 3_000_000_000L })
        {
            // Holes only; three thousand million bytes could not be read into memory at all.
            await using (var large = File.Create(bench.At("large.json")))
                large.SetLength(length);
            foreach (var verb in new[] { "check", "plan" })
            {
                var run = await Bench.RunAsync(verb, bench.At("large.json"));
                Assert.Equal((1, ""), (run.Code, run.Error));
                Assert.Contains("5 MB", Assert.Single(run.Problems), StringComparison.Ordinal);
                Assert.Equal("1 problems, 0 notes", run.OutputLines[^1]);
            }
        }
    }

    [Fact]
    public async Task Files_changed_by_hand_are_not_overwritten()
    {
        using var bench = new Bench();
        var file = bench.Write("piece.json", Pieces.Small());
        Assert.Equal(0, (await Bench.RunAsync("plan", file, "--out", bench.At("packet"))).Code);
        await File.AppendAllTextAsync(bench.At("packet", "pins.csv"), "my own line\r\n");
        var before = bench.Files();
        bench.Write("piece.json", Pieces.Small("Another title"));
        var run = await Bench.RunAsync("plan", file, "--out", bench.At("packet"));
        Assert.Equal(3, run.Code);
        Assert.Contains("pins.csv was changed", Assert.Single(run.ErrorLines), StringComparison.Ordinal);
        Assert.All(before.Where(f => f.Key != "piece.json"), f => Assert.Equal(f.Value, File.ReadAllBytes(bench.At(f.Key))));

        // Once it is out of the way the packet is written.
        File.Move(bench.At("packet", "pins.csv"), bench.At("packet", "my-pins.csv"));
        Assert.Equal(0, (await Bench.RunAsync("plan", file, "--out", bench.At("packet"))).Code);
        Assert.True(File.Exists(bench.At("packet", "my-pins.csv")));
    }

    [Fact]
    public async Task A_file_that_the_tool_did_not_write_is_not_overwritten()
    {
        using var bench = new Bench();
        var file = bench.Write("piece.json", Pieces.Small());
        Directory.CreateDirectory(bench.At("packet"));
        bench.Write(Path.Combine("packet", "plan.json"), "mine");
        var run = await Bench.RunAsync("plan", file, "--out", bench.At("packet"));
        Assert.Equal(3, run.Code);
        Assert.Equal(["packet/plan.json", "piece.json"], bench.Files().Keys.Order(StringComparer.Ordinal));
        Assert.Equal("mine", await File.ReadAllTextAsync(bench.At("packet", "plan.json")));
    }

    [Fact]
    public async Task A_folder_that_cannot_be_made_is_told_with_exit_3()
    {
        using var bench = new Bench();
        var file = bench.Write("piece.json", Pieces.Small());
        var run = await Bench.RunAsync("plan", file, "--out", Path.Combine(file, "packet"));
        Assert.Equal(3, run.Code);
        Assert.Single(run.ErrorLines);
        Assert.Equal(["piece.json"], bench.Files().Keys);
    }

    [Fact]
    public async Task Stopping_leaves_nothing_half_written()
    {
        using var bench = new Bench();
        using var before = new CancellationTokenSource();
        await before.CancelAsync();
        var run = await Bench.RunAsync(before.Token, "demo", "--out", bench.At("packet"));
        Assert.Equal(3, run.Code);
        Assert.Equal("Stopped; nothing was written.", Assert.Single(run.ErrorLines));
        Assert.Empty(Directory.EnumerateFileSystemEntries(bench.Folder));

        // Whenever it is stopped, while the cloth is computed too, either all is there or nothing.
        for (var wait = 1; wait < 3000; wait = (2 * wait) + 7)
        {
            using var soon = new CancellationTokenSource(wait);
            var code = (await Bench.RunAsync(soon.Token, "demo", "--out", bench.At("packet"))).Code;
            if (code == 3)
                Assert.Empty(Directory.EnumerateFileSystemEntries(bench.Folder));
            else
                Assert.True(bench.Files().ContainsKey("packet/plan.json") && Directory.GetDirectories(bench.At("packet")).Length == 0);
            if (code == 0)
                Directory.Delete(bench.At("packet"), recursive: true);
        }
    }
}
