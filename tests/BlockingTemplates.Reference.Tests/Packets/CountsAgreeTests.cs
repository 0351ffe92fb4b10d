using System.Globalization;
using System.Text;
using BlockingTemplates.Engine;
using BlockingTemplates.Output.Csv;
using BlockingTemplates.Reference.Tests.Guides;
using BlockingTemplates.Reference.Tests.Planning;

namespace BlockingTemplates.Reference.Tests.Packets;

// The same pins in every file of the packet.
public class CountsAgreeTests
{
    public static TheoryData<string> Examples => [.. Planned.Examples];

    [Theory]
    [MemberData(nameof(Examples))]
    public void Plan_json_pins_csv_and_the_printed_pin_table_have_the_same_pins(string example)
    {
        var plan = Planned.Example(example);
        var numbers = Enumerable.Range(1, plan.Pins.Marks.Count).ToList();
        using var json = PlanJsonTests.Read(plan);
        Assert.Equal(numbers, json.RootElement.GetProperty("pins").EnumerateArray().Select(p => p.GetProperty("number").GetInt32()));
        Assert.Equal(numbers, Rows(plan).Skip(1).Select(r => int.Parse(r[0], CultureInfo.InvariantCulture)));
        var table = PaperPage.Read(PrintedGuide.Pdf(plan)).Where(p => p.Label.StartsWith("pins", StringComparison.Ordinal)).ToList();
        Assert.Equal(numbers, table.SelectMany(RowNumbers));
        // A box for set and one for taken out in every row.
        Assert.Equal(2 * numbers.Count, table.Sum(p => p.Squares));
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public void Pins_csv_says_what_plan_json_says_in_the_makers_units(string example)
    {
        var plan = Planned.Example(example);
        var rows = Rows(plan);
        var unit = plan.Project.Units switch { Engine.Measure.LengthUnit.Inches => 25.4, Engine.Measure.LengthUnit.Centimetres => 10, _ => 1.0 };
        var name = unit switch { 25.4 => "in", 10 => "cm", _ => "mm" };
        Assert.Equal(["number", "round", "kind", "edge", "count", "mat", $"from left ({name})", $"from lower side ({name})", $"pull ({name})", "sheets"], rows[0]);
        using var json = PlanJsonTests.Read(plan);
        foreach (var (pin, row) in json.RootElement.GetProperty("pins").EnumerateArray().Zip(rows.Skip(1)))
        {
            Assert.Equal(pin.GetProperty("mat").GetString(), row[5]);
            Assert.Equal(pin.GetProperty("edge").GetString(), row[3]);
            Assert.Equal(pin.GetProperty("onMat")[0].GetDouble(), unit * Number(row[6]), 0.06);
            Assert.Equal(pin.GetProperty("onMat")[1].GetDouble(), unit * Number(row[7]), 0.06);
            Assert.Equal(pin.GetProperty("pullMm").GetDouble(), unit * Number(row[8]), 0.06);
        }
    }

    internal static List<string[]> Rows(Plan plan) =>
        [.. Encoding.UTF8.GetString(PinsCsv.Write(plan)).TrimStart('\uFEFF').Split("\r\n", StringSplitOptions.RemoveEmptyEntries).Select(r => r.Split(',').Select(c => c.Trim('"')).ToArray())];

    private static double Number(string cell) => double.Parse(cell, CultureInfo.InvariantCulture);

    // The first column: bold whole numbers, leftmost in their rows, read from the top.
    private static IEnumerable<int> RowNumbers(PaperPage page) => page.Texts
        .Where(t => t.IsBold && t.Says.All(char.IsAsciiDigit) && !page.Texts.Any(o => o != t && Math.Abs(o.BaselineMm - t.BaselineMm) < 0.1 && o.Box.Left < t.Box.Left))
        .OrderByDescending(t => t.BaselineMm)
        .Select(t => int.Parse(t.Says, CultureInfo.InvariantCulture));
}
