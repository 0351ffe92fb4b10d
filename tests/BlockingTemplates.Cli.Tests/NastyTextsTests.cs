using System.Text;
using System.Text.Json;
using System.Xml.Linq;
using UglyToad.PdfPig;

namespace BlockingTemplates.Cli.Tests;

// Whatever a maker writes stays text in every file.
public class NastyTextsTests
{
    public static TheoryData<string> Titles =>
    [
        "\"Quoted\" & 'single' \\ back",
        "<script>alert('x')</script> ]]> <!-- --> &amp; %3Cb%3E",
        "=cmd|' /C calc'!A0",
        "+1+1", "-2", "@SUM(A1)",
        "../../etc/passwd", "CON", "a:b*c?d|e",
        "[bold]markup[/] [red]",
        "{0} %s ${HOME} $(id)",
        "(paren \\( ) endstream endobj",
        "\u202Eright to left \u05E9\u05DC\u05D5\u05DD \u0645\u0631\u062D\u0628\u0627\u202C",
        "\U0001F9F6 yarn \U0001F468\u200D\U0001F469\u200D\U0001F467",
        "\uFFFE\uFFFF\uFDD0 noncharacters",
        "Ångström Łódź 日本語 e\u0301",
        new('W', 200),
        string.Concat(Enumerable.Repeat("\U0001F9F6", 100)),
    ];

    [Theory]
    [MemberData(nameof(Titles))]
    public async Task A_title_stays_a_title_in_every_file(string title)
    {
        using var bench = new Bench();
        var file = bench.Write("piece.json", Pieces.Small(title, $$""", "notes": {{JsonSerializer.Serialize(title + "\n" + title)}}"""));
        var run = await Bench.RunAsync("plan", file, "--out", bench.At("packet"));
        Assert.True(run.Code == 0, run.Output + run.Error);
        Assert.Equal(["packet/guide-A4.pdf", "packet/overview.png", "packet/overview.svg", "packet/packet.txt", "packet/pins.csv", "packet/plan.json"], bench.Files().Keys.Where(k => k.StartsWith("packet/", StringComparison.Ordinal) && k is not ("packet/mats.pdf" or "packet/plot.pdf")).Order(StringComparer.Ordinal));
        using var json = JsonDocument.Parse(await File.ReadAllBytesAsync(bench.At("packet", "plan.json")));
        Assert.Equal(title.Trim(), json.RootElement.GetProperty("title").GetString());
        var svg = XDocument.Parse(await File.ReadAllTextAsync(bench.At("packet", "overview.svg")));
        Assert.DoesNotContain(svg.Descendants(), e => e.Name.LocalName is "script" or "b" or "foreignObject" or "a" || e.Attributes().Any(a => a.Name.LocalName.StartsWith("on", StringComparison.Ordinal)));
        Assert.Equal(Kept(title), svg.Root!.Elements().Single(e => e.Name.LocalName == "title").Value);
        using var pdf = PdfDocument.Open(await File.ReadAllBytesAsync(bench.At("packet", "guide-A4.pdf")));
        Assert.Equal(Kept(title), pdf.Information.Title);
        Assert.True(pdf.GetPages().Sum(p => p.Letters.Count) > 1000);
    }

    [Fact]
    public async Task Control_characters_and_500_characters_are_problems_and_nothing_is_written()
    {
        using var bench = new Bench();
        foreach (var title in new[] { "bell \u0007 and escape \u001B[31m", "tab\there", "line\nbreak", new string('x', 500) })
        {
            var run = await Bench.RunAsync("plan", bench.Write("piece.json", Pieces.Small(title)), "--out", bench.At("packet"));
            Assert.Equal((1, ""), (run.Code, run.Error));
            Assert.StartsWith("problem: line 1, title: ", Assert.Single(run.Problems), StringComparison.Ordinal);
            Assert.DoesNotContain('\u001B', run.Output);
            Assert.Equal(["piece.json"], bench.Files().Keys);
        }
    }

    [Theory]
    [InlineData("=1+1")]
    [InlineData("+1")]
    [InlineData("-1")]
    [InlineData("@A1")]
    [InlineData("a,b\"c")]
    [InlineData("<b>&")]
    public async Task A_name_of_an_edge_stays_text_in_the_table(string name)
    {
        using var bench = new Bench();
        var piece = $$"""
            { "title": "named", "units": "cm", "piece": { "shape": "outline", "finished": {
              "corners": [{ "at": [0, 0], "name": {{JsonSerializer.Serialize(name + " corner")}} }, [30, 0], [15, 20]],
              "edges": [{ "name": {{JsonSerializer.Serialize(name)}} }, {}, {}] } } }
            """;
        var run = await Bench.RunAsync("plan", bench.Write("piece.json", piece), "--out", bench.At("packet"));
        Assert.True(run.Code == 0, run.Output + run.Error);
        var edges = Cells(await File.ReadAllTextAsync(bench.At("packet", "pins.csv"))).Skip(1).Select(r => r[3]).ToList();
        // A spreadsheet takes no cell for a formula, and takes the apostrophe away again.
        Assert.DoesNotContain(edges, e => e.Length > 0 && "=+-@".Contains(e[0], StringComparison.Ordinal));
        Assert.Contains(edges, e => e.TrimStart('\'') == name);
        using var json = JsonDocument.Parse(await File.ReadAllBytesAsync(bench.At("packet", "plan.json")));
        Assert.Equal(name, json.RootElement.GetProperty("edges")[0].GetProperty("name").GetString());
        _ = XDocument.Parse(await File.ReadAllTextAsync(bench.At("packet", "overview.svg")));
    }

    // Noncharacters may stand in no XML; all else is kept.
    private static string Kept(string title) => string.Concat(title.Trim().EnumerateRunes().Where(r => r.Value is not (0xFFFE or 0xFFFF or 0xFDD0)));

    // A reader of RFC 4180 by its own rules.
    private static List<List<string>> Cells(string csv)
    {
        var rows = new List<List<string>> { new() };
        var cell = new StringBuilder();
        var isQuoted = false;
        for (var i = csv.StartsWith('\uFEFF') ? 1 : 0; i < csv.Length; i++)
        {
            var c = csv[i];
            if (isQuoted && c == '"' && i + 1 < csv.Length && csv[i + 1] == '"')
                cell.Append(csv[++i]);
            else if (c == '"')
                isQuoted = !isQuoted;
            else if (!isQuoted && c is ',' or '\n' && !isQuoted)
            {
                rows[^1].Add(cell.ToString().TrimEnd('\r'));
                cell.Clear();
                if (c == '\n')
                    rows.Add([]);
            }
            else
            {
                cell.Append(c);
            }
        }

        return [.. rows.Where(r => r.Count > 0)];
    }
}
