using System.Diagnostics;
using UglyToad.PdfPig;

namespace BlockingTemplates.Cli.Tests;

[Collection(CurrentFolder.Name)]
public sealed class DemoTests
{
    private static readonly string[] Packet = ["guide-A4.pdf", "overview.png", "overview.svg", "pins.csv", "plan.json"];

    [Fact]
    public async Task The_demo_writes_its_packet_where_it_says_and_tells_what_was_planned()
    {
        using var bench = new Bench();
        using var current = new CurrentFolder(bench.Folder);
        var run = await Bench.RunAsync("demo");
        Assert.Equal((0, ""), (run.Code, run.Error));
        foreach (var name in Packet)
        {
            var path = Path.Combine(Directory.GetCurrentDirectory(), "templates-out", "demo", name);
            Assert.Contains(path, run.OutputLines);
            Assert.True(new FileInfo(path).Length > 1000, path);
        }

        foreach (var what in new[] { "mats", "pins", "sheets of A4", "top edge", "stretched by", "largest pull", "largest pull in turn", "worst scallop" })
            Assert.Contains(what, run.Output, StringComparison.Ordinal);
        Assert.Matches(@"^0 problems, \d+ notes$", run.OutputLines[^1]);
        Assert.All(bench.Files().Keys, k => Assert.StartsWith("templates-out/demo/", k, StringComparison.Ordinal));
        var guide = await File.ReadAllBytesAsync(bench.At("templates-out", "demo", "guide-A4.pdf"));
        Assert.True(guide.Length < 1_000_000);
        using var pdf = PdfDocument.Open(guide);
        Assert.True(pdf.NumberOfPages > 15);
    }

    [Fact]
    public async Task Without_the_processor_s_vectors_the_packet_has_the_same_bytes()
    {
        using var bench = new Bench();
        var file = bench.Write("small.jsonc", Pieces.Small(more: """, "sheets": { "paper": "A3" }"""));
        Assert.Equal(0, (await Bench.RunAsync("plan", file, "--out", bench.At("with"))).Code);
        var start = new ProcessStartInfo("dotnet", [Path.Combine(AppContext.BaseDirectory, "blocking-templates.dll"), "plan", file, "--out", bench.At("without")]) { RedirectStandardOutput = true };
        start.Environment["DOTNET_EnableHWIntrinsic"] = "0";
        using var process = Process.Start(start)!;
        await process.StandardOutput.ReadToEndAsync();
        await process.WaitForExitAsync();
        Assert.Equal(0, process.ExitCode);
        var files = bench.Files();
        var with = files.Where(f => f.Key.StartsWith("with/", StringComparison.Ordinal)).ToList();
        Assert.True(with.Count > Packet.Length);
        Assert.All(with, f => Assert.True(f.Value.AsSpan().SequenceEqual(files[f.Key.Replace("with/", "without/", StringComparison.Ordinal)]), f.Key));
        Assert.Contains("\"residual\"", System.Text.Encoding.UTF8.GetString(files["with/plan.json"]), StringComparison.Ordinal); // with the cloth
    }

    [Fact]
    public async Task A_second_run_gives_the_same_bytes()
    {
        using var bench = new Bench();
        Assert.Equal(0, (await Bench.RunAsync("demo", "--out", bench.At("a"))).Code);
        var first = bench.Files();
        Assert.Equal(0, (await Bench.RunAsync("demo", "--out", bench.At("a"))).Code);
        var second = bench.Files();
        Assert.Equal(first.Keys.Order(), second.Keys.Order());
        Assert.All(first, f => Assert.True(f.Value.AsSpan().SequenceEqual(second[f.Key]), f.Key));
    }

    [Fact]
    public async Task Several_files_get_a_folder_each_and_the_worst_exit_code_is_answered()
    {
        using var bench = new Bench();
        using var current = new CurrentFolder(bench.Folder);
        string good = bench.Write("good one.json", Pieces.Small()), bad = bench.Write("bad.json", Pieces.Broken), more = bench.Write("=more&.jsonc", Pieces.Small("More"));
        var run = await Bench.RunAsync("plan", good, bad, more);
        Assert.Equal(1, run.Code);
        Assert.True(File.Exists(bench.At("templates-out", "good-one", "plan.json")));
        Assert.True(File.Exists(bench.At("templates-out", "more", "plan.json")));
        Assert.False(Directory.Exists(bench.At("templates-out", "bad")));
        Assert.NotEmpty(run.Problems);

        var missing = await Bench.RunAsync("plan", bad, bench.At("missing.json"), good);
        Assert.Equal(3, missing.Code);
        Assert.Single(missing.ErrorLines);
        Assert.Contains("missing.json", missing.Error, StringComparison.Ordinal);
        Assert.NotEmpty(missing.Problems);
    }

    [Fact]
    public async Task New_writes_into_the_current_folder_unless_told_otherwise()
    {
        using var bench = new Bench();
        using var current = new CurrentFolder(bench.Folder);
        Assert.Equal(0, (await Bench.RunAsync("new", "rectangle", "--units", "in")).Code);
        Assert.Equal(["rectangle-measuring-form.pdf", "rectangle.jsonc"], bench.Files().Keys.Order(StringComparer.Ordinal));
        Assert.Contains("\"units\": \"in\"", await File.ReadAllTextAsync(bench.At("rectangle.jsonc")), StringComparison.Ordinal);
    }
}
