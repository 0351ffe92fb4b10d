using System.IO.Compression;
using System.Text;
using System.Text.RegularExpressions;
using BlockingTemplates.Cli;

namespace BlockingTemplates.Web.Tests;

// The page shows and gives what the command line does.
public partial class SameAsTheCommandLineTests
{
    private static readonly string[] Both = ["finished", "unblocked"];

    [Theory]
    [InlineData("lace-triangle")]
    [InlineData("rectangle-with-short-edge")]
    [InlineData("leaf-shawl")]
    [InlineData("sweater-back-sizes")]
    public async Task Every_file_of_the_packet_is_byte_for_byte_the_command_line_s(string example)
    {
        var folder = RunningPage.NewFolder();
        Directory.CreateDirectory(folder);
        try
        {
            using var told = new StringWriter();
            Assert.Equal(0, await CommandLine.RunAsync(["plan", RunningPage.Example(example), "--out", folder], told, told, CancellationToken.None));
            await using var page = await RunningPage.StartAsync();
            var id = await page.BeginAsync(new { example });
            var names = (await page.AnswerAsync(id)).GetProperty("plan").GetProperty("files").EnumerateArray().Select(f => f.GetString()!).ToList();
            Assert.Contains(names, n => n.Contains("guide-", StringComparison.Ordinal));
            Assert.Equal(names.Append("packet.txt").Order(), Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories).Select(f => Path.GetRelativePath(folder, f).Replace('\\', '/')).Order());
            foreach (var name in names)
                await SameAsync(Path.Combine(folder, name), await page.Client.GetByteArrayAsync($"/api/copies/{id}/files/{name}"));

            using var zip = new ZipArchive(await page.Client.GetStreamAsync($"/api/copies/{id}/packet"));
            Assert.Equal(names, zip.Entries.Select(e => e.FullName));
            foreach (var entry in zip.Entries)
            {
                using var kept = new MemoryStream();
                await entry.Open().CopyToAsync(kept);
                await SameAsync(Path.Combine(folder, entry.FullName), kept.ToArray());
            }
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    [Fact]
    public async Task What_the_printer_check_measured_changes_the_guide_as_on_the_command_line()
    {
        var folder = RunningPage.NewFolder();
        Directory.CreateDirectory(folder);
        try
        {
            var file = Path.Combine(folder, "piece.jsonc");
            await File.WriteAllTextAsync(file, Pieces.Small());
            using var told = new StringWriter();
            Assert.Equal(0, await CommandLine.RunAsync(["plan", file, "--out", Path.Combine(folder, "out"), "--measured", "149.5x239"], told, told, CancellationToken.None));
            await using var page = await RunningPage.StartAsync();
            var id = await page.BeginAsync(Pieces.Small()[..^2] + ", \"sheets\": { \"measured\": [\"149.5 mm\", \"239 mm\"] } }");
            await SameAsync(Path.Combine(folder, "out", "guide-A4.pdf"), await page.Client.GetByteArrayAsync($"/api/copies/{id}/files/guide-A4.pdf"));
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    [Fact]
    public async Task Problems_have_the_command_line_s_places_lines_and_words()
    {
        var file = Path.GetTempFileName();
        try
        {
            await File.WriteAllTextAsync(file, Pieces.Broken);
            using var told = new StringWriter();
            Assert.Equal(1, await CommandLine.RunAsync(["check", file], told, told, CancellationToken.None));
            await using var page = await RunningPage.StartAsync();
            var answer = await page.AnswerAsync(await page.BeginAsync(Pieces.Broken));
            var problems = answer.GetProperty("problems").EnumerateArray()
                .Select(p => $"problem: line {p.GetProperty("line").GetInt32()}, {p.GetProperty("path").GetString()}: {p.GetProperty("what").GetString()} {p.GetProperty("do").GetString()}").ToList();
            Assert.True(problems.Count > 3);
            Assert.Equal(told.ToString().ReplaceLineEndings("\n").Split('\n').Where(l => l.StartsWith("problem", StringComparison.Ordinal)), problems);
            Assert.Equal(System.Text.Json.JsonValueKind.Null, answer.GetProperty("plan").ValueKind);
        }
        finally
        {
            File.Delete(file);
        }
    }

    [Fact]
    public async Task Every_shipped_example_begins_a_project_with_a_plan_and_its_own_text()
    {
        await using var page = await RunningPage.StartAsync();
        var examples = (await page.GetAsync("/api/start")).GetProperty("examples").EnumerateArray().Select(e => e.GetProperty("name").GetString()!).ToList();
        Assert.Equal(Directory.EnumerateFiles(Path.GetDirectoryName(RunningPage.Example("x"))!, "*.jsonc").Select(f => Path.GetFileNameWithoutExtension(f)).Order(StringComparer.Ordinal), examples);
        foreach (var example in examples)
        {
            var id = await page.BeginAsync(new { example });
            var answer = await page.AnswerAsync(id);
            Assert.True(answer.GetProperty("problems").GetArrayLength() == 0, example);
            var plan = answer.GetProperty("plan");
            Assert.True(plan.GetProperty("pins").GetInt32() > 0);
            Assert.Equal(await File.ReadAllTextAsync(RunningPage.Example(example), Encoding.UTF8), (await page.TextAsync(id)).Text);
        }
    }

    [Fact]
    public async Task Every_kind_of_piece_begins_with_blanks_and_each_blank_has_its_place_on_the_drawing()
    {
        await using var page = await RunningPage.StartAsync();
        foreach (var kind in (await page.GetAsync("/api/start")).GetProperty("kinds").EnumerateArray())
        {
            var shape = kind.GetProperty("shape").GetString();
            var answer = await page.AnswerAsync(await page.BeginAsync(new { shape, units = "in" }));
            var blanks = answer.GetProperty("problems").EnumerateArray().Select(p => p.GetProperty("path").GetString()!).ToList();
            Assert.NotEmpty(blanks);
            if (shape == "outline")
                continue;
            var places = Both.SelectMany(w => answer.GetProperty(w).GetProperty("places").EnumerateArray()).ToDictionary(p => p.GetProperty("path").GetString()!);
            Assert.Subset(places.Keys.ToHashSet(), blanks.ToHashSet());
            foreach (var which in Both)
            {
                var picture = answer.GetProperty(which);
                Assert.True(picture.GetProperty("isSketch").GetBoolean());
                foreach (var place in picture.GetProperty("places").EnumerateArray())
                {
                    Assert.InRange(place.GetProperty("x").GetDouble(), 0, picture.GetProperty("width").GetDouble());
                    Assert.InRange(place.GetProperty("y").GetDouble(), 0, picture.GetProperty("height").GetDouble());
                }
            }

            using var sketch = await page.Client.GetAsync($"/api/kinds/{shape}");
            Assert.Equal("image/svg+xml", sketch.Content.Headers.ContentType!.MediaType);
        }
    }

    [Fact]
    public async Task Drawings_for_the_page_carry_no_script_no_style_and_no_address_of_another_host()
    {
        await using var page = await RunningPage.StartAsync();
        var id = await page.BeginAsync(new { example = "lace-triangle" });
        var answer = await page.AnswerAsync(id);
        string[] drawings = [answer.GetProperty("plan").GetProperty("view").GetString()!, answer.GetProperty("finished").GetProperty("svg").GetString()!, answer.GetProperty("unblocked").GetProperty("svg").GetString()!];
        Assert.All(drawings, d => Assert.DoesNotMatch(@"<script|<style|style=|onload|@font-face", d));
        Assert.All(drawings, d => Assert.All(Addresses().Matches(d).Select(m => m.Value), a => Assert.StartsWith("http://www.w3.org/", a, StringComparison.Ordinal)));
    }

    private static async Task SameAsync(string file, byte[] bytes)
    {
        var expected = await File.ReadAllBytesAsync(file);
        Assert.True(expected.AsSpan().SequenceEqual(bytes), file);
    }

    [GeneratedRegex(@"https?://[^\s""']+")]
    private static partial Regex Addresses();
}
