using System.Text.Json;
using UglyToad.PdfPig;

namespace BlockingTemplates.Cli.Tests;

public class MeasuredTests
{
    [Theory]
    [InlineData("149x241.5")]
    [InlineData("149X241.5")]
    [InlineData("149 × 241.5")]
    [InlineData("149mmx241.5mm")]
    [InlineData("149 mm x 241.5 mm")]
    [InlineData("14.9 cm x 0.2415 m")]
    public async Task What_the_bars_measured_may_be_said_in_any_unit(string measured)
    {
        using var bench = new Bench();
        var asked = bench.Write("asked.json", Pieces.Small());
        var written = bench.Write("written.json", Pieces.Small(more: """, "sheets": { "measured": ["149 mm", "241.5 mm"] }"""));
        Assert.Equal(0, (await Bench.RunAsync("plan", asked, "--measured", measured, "--out", bench.At("asked"))).Code);
        Assert.Equal(0, (await Bench.RunAsync("plan", written, "--out", bench.At("written"))).Code);
        Assert.Equal(await File.ReadAllBytesAsync(bench.At("written", "plan.json")), await File.ReadAllBytesAsync(bench.At("asked", "plan.json")));
        using var guide = PdfDocument.Open(await File.ReadAllBytesAsync(bench.At("asked", "guide-A4.pdf")));
        Assert.Contains("99.33 %", guide.GetPage(1).Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_printer_set_to_fit_the_page_brings_a_note_and_no_correction()
    {
        using var bench = new Bench();
        var file = bench.Write("piece.json", Pieces.Small());
        var run = await Bench.RunAsync("plan", file, "--measured", "145.5mmx232.8mm", "--out", bench.At("fitted"));
        Assert.Equal(0, run.Code);
        Assert.Contains(run.Notes, n => n.Contains("fit the page", StringComparison.Ordinal));
        Assert.Equal(0, (await Bench.RunAsync("plan", file, "--out", bench.At("true"))).Code);
        Assert.Equal(Sheets(bench.At("true", "plan.json")), Sheets(bench.At("fitted", "plan.json")));
    }

    [Theory]
    [InlineData("140mmx240mm")]
    [InlineData("156mmx249mm")]
    [InlineData("240mmx150mm")]
    [InlineData("14.9mmx24mm")]
    public async Task A_printer_more_than_3_percent_off_is_a_problem(string measured)
    {
        using var bench = new Bench();
        var run = await Bench.RunAsync("plan", bench.Write("piece.json", Pieces.Small()), "--measured", measured, "--out", bench.At("packet"));
        Assert.Equal(1, run.Code);
        Assert.Contains("sheets.measured", Assert.Single(run.Problems), StringComparison.Ordinal);
        Assert.Equal(["piece.json"], bench.Files().Keys);
    }

    [Fact]
    public async Task Only_the_picture_is_written_when_only_that_is_asked_for()
    {
        using var bench = new Bench();
        var file = bench.Write("piece.json", Pieces.Small());
        Assert.Equal(0, (await Bench.RunAsync("plan", file, "--picture-only", "--out", bench.At("packet"))).Code);
        Assert.Equal(["packet/overview.png", "packet/overview.svg", "packet/packet.txt", "piece.json"], bench.Files().Keys.Order(StringComparer.Ordinal));
    }

    private static string Sheets(string planJson)
    {
        using var json = JsonDocument.Parse(File.ReadAllBytes(planJson));
        return json.RootElement.GetProperty("sheets").GetRawText();
    }
}
