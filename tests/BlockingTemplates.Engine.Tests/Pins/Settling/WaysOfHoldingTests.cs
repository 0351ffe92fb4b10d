using System.Globalization;
using BlockingTemplates.Engine.Fabrics;
using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Pins;
using BlockingTemplates.Engine.Pins.Settling;
using BlockingTemplates.Engine.Tests.Projects;

namespace BlockingTemplates.Engine.Tests.Pins.Settling;

// Four shipped pieces, each held all round by pins, by wires, by combs, on the computed cloth; the table stands in shared/examples/holding.md.
public class WaysOfHoldingTests
{
    private static readonly string Told = File.ReadAllText(Path.Combine(Reading.Shared, "examples", "holding.md"));

    [Theory]
    [InlineData("lace-triangle")]
    [InlineData("stole-on-wires")]
    [InlineData("half-circle-on-wires")]
    [InlineData("combed-blanket")]
    public void Wires_and_combs_take_less_setting_than_pins_and_keep_the_scallop(string example)
    {
        var ways = new[] { Holding.Pins, Holding.Wire, Holding.Comb }.Select(w => (Way: w, Held: Held(example, w))).ToList();
        var rows = ways.Select(w => Row(example, w.Way, w.Held)).ToList();
        int Set(Holding way) => Counts(ways.Single(w => w.Way == way).Held.Plan).Set;
        var told = string.Join('\n', rows);
        foreach (var (way, held) in ways)
        {
            var most = held.Gaps.Where(g => g.Determined != false).Max(g => Math.Abs(g.ScallopMm));
            Assert.True(most <= held.Plan.Settings.Scallop.Millimetres * 1.001, $"{way}: {most}\n{told}");
        }

        Assert.True(Set(Holding.Wire) < Set(Holding.Pins) && Set(Holding.Comb) < Set(Holding.Pins), told);
        foreach (var row in rows)
            Assert.True(Told.Contains(row, StringComparison.Ordinal), $"The table in holding.md should say:\n{told}");
        foreach (var (way, held) in ways)
            Assert.Equal(InReadme(way, held.Plan), ReadmeCell(way, example));
    }

    private static (int Pins, int Combs, int Wires, int Set) Counts(PinPlan plan)
    {
        var combs = plan.Marks.Count(m => m.Kind == PinKind.Comb);
        return (plan.Marks.Count - combs, combs, plan.Wires.Count, plan.Marks.Count + plan.Wires.Count);
    }

    private static string InReadme(Holding way, PinPlan plan)
    {
        var (pins, combs, wires, _) = Counts(plan);
        return way switch { Holding.Pins => $"{pins} pins", Holding.Wire => $"{wires} wires, {pins} pins", _ => $"{combs} combs, {pins} pins" };
    }

    // The README's table: a column for each piece, a row for each way.
    private static string ReadmeCell(Holding way, string example)
    {
        var lines = File.ReadAllLines(Path.Combine(Reading.Shared, "..", "README.md"));
        string[] Cells(string line) => [.. line.Split('|', StringSplitOptions.TrimEntries)];
        var head = Array.FindIndex(lines, l => l.StartsWith("| held all round by", StringComparison.Ordinal));
        var row = lines.Skip(head + 2).First(l => l.StartsWith(way switch { Holding.Pins => "| pins", Holding.Wire => "| wires", _ => "| combs" }, StringComparison.Ordinal));
        return Cells(row)[Array.IndexOf(Cells(lines[head]), $"`{example}`")];
    }

    private static string Row(string example, Holding way, SettledPins held)
    {
        var (pins, combs, wires, set) = Counts(held.Plan);
        var worst = held.Gaps.Where(g => g.Determined != false).Max(g => Math.Abs(g.ScallopMm));
        var word = way switch { Holding.Pins => "pins", Holding.Wire => "wires", _ => "combs" };
        return string.Create(CultureInfo.InvariantCulture, $"| `{example}` | {word} | {pins} | {combs} | {wires} | {set} | {worst:0.0} mm |");
    }

    private static SettledPins Held(string example, Holding way)
    {
        var (piece, settings, placed) = HeldExample.Of(example, way);
        var study = ClothStudy.Of(piece, settings, placed, Computation.Whole with { WithEnds = false }, new());
        Assert.NotNull(study);
        return study.Settled;
    }
}
