using System.Globalization;
using BlockingTemplates.Engine;
using BlockingTemplates.Output.Packets;
using BlockingTemplates.Reference.Tests.Planning;

namespace BlockingTemplates.Reference.Tests.Pipeline;

// Seeded random pieces through the whole pipeline.
public class MadeUpPiecesTests
{
    private static readonly string[] Papers = ["A4", "Letter", "A3"];
    private static readonly string[] Uses = ["prick", "film", "frame"];

    private static readonly string[] Always = ["overview.svg", "overview.png", "pins.csv", "plan.json"];
    private static readonly string[] Units = ["mm", "cm", "in"];

    public static TheoryData<int> Seeds => [.. Enumerable.Range(200, 6)];

    [Theory]
    [MemberData(nameof(Seeds))]
    public void The_same_project_gives_the_same_bytes_twice_and_side_by_side(int seed)
    {
        var text = Text(seed);
        var first = PacketFiles.Of(Planned.Of(text));
        Assert.All(Always, n => Assert.Contains(first, f => f.Name == n));
        Assert.Contains(first, f => f.Name.StartsWith("guide-", StringComparison.Ordinal));
        Assert.All(first, f => Assert.True(f.Bytes.Length > 500));
        var others = Enumerable.Range(0, 2).AsParallel().WithDegreeOfParallelism(2).Select(_ => PacketFiles.Of(Planned.Of(text))).ToList();
        foreach (var other in others)
        {
            foreach (var (a, b) in first.Zip(other))
                Assert.True(a.Name == b.Name && a.Bytes.Span.SequenceEqual(b.Bytes.Span), $"{a.Name} differs.");
        }
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Units_do_not_matter(int seed)
    {
        // The same lengths, each said with its unit, read by makers of three kinds.
        var text = Text(seed);
        var plans = Units.Select(units => Planned.Of(WithUnits(text, units))).ToList();
        foreach (var plan in plans.Skip(1))
        {
            Assert.NotEqual(plans[0].Project.Units, plan.Project.Units);
            Assert.Equal(plans[0].Mats.Mats, plan.Mats.Mats, (a, b) => a.Name == b.Name);
            Assert.Equal(plans[0].Guides[0].Layout.Sheets.Select(s => s.Name), plan.Guides[0].Layout.Sheets.Select(s => s.Name));
            Assert.Equal(plans[0].Pins.Marks.Count, plan.Pins.Marks.Count);
            foreach (var (a, b) in plans[0].Pins.Marks.Zip(plan.Pins.Marks))
            {
                Assert.Equal((a.Number, a.Round, a.Edge, a.Count), (b.Number, b.Round, b.Edge, b.Count));
                Assert.InRange(a.At.DistanceTo(b.At), 0, 1e-6);
                Assert.Equal(a.Rest is null, b.Rest is null);
                Assert.InRange(a.Rest is { } rest ? rest.DistanceTo(b.Rest!.Value) : 0, 0, 1e-6);
            }
        }
    }

    [Fact]
    public void Anything_measured_gives_a_plan_or_problems_with_what_to_do()
    {
        var (plans, refused) = (0, 0);
        for (var seed = 300; seed < 340; seed++)
        {
            var random = new Random(seed);
            var (plan, findings) = Planned.Try(Spoiled(Text(seed, sheets: false), random));
            if (plan is null)
            {
                refused++;
                Assert.NotEmpty(findings.Problems);
                Assert.All(findings.Problems, p => Assert.True(p.What.Length > 0 && p.Do.Length > 0, $"{seed}: {p}"));
            }
            else
            {
                plans++;
                Assert.Empty(findings.Problems);
                AssertHolds(plan, seed);
            }
        }

        // Both happen often enough to mean something.
        Assert.True(plans > 8 && refused > 8, $"{plans} plans, {refused} refused");
    }

    // What every plan keeps, whatever was measured.
    private static void AssertHolds(Plan plan, int seed)
    {
        Assert.True(plan.Pins.Pinned.SignedArea() > 0, $"{seed} runs clockwise.");
        Assert.Equal(Enumerable.Range(1, plan.Pins.Marks.Count), plan.Pins.Marks.Select(m => m.Number));
        Assert.Equal(plan.Pins.Marks.Count, plan.Mats.Seats.Count);
        foreach (var mark in plan.Pins.Marks)
        {
            Assert.True(mark.At.DistanceTo(plan.Pins.Pinned.Edges[mark.Edge].Curve.At(mark.Fraction)) < 1e-6, $"{seed}: mark {mark.Number} is off its edge.");
            var mat = plan.Mats.Mats.Single(m => m.Name == plan.Mats.Seats[mark.Number - 1].Mat);
            Assert.True(mark.At.X >= mat.At.X - 0.01 && mark.At.X <= mat.At.X + plan.Mats.PitchX + 0.01 && mark.At.Y >= mat.At.Y - 0.01 && mark.At.Y <= mat.At.Y + plan.Mats.PitchY + 0.01, $"{seed}: mark {mark.Number} is off its mat.");
            Assert.All(plan.Guides, g => Assert.NotEmpty(g.Layout.SheetsShowing(mark.At)));
        }
    }

    private static string Text(int seed, bool sheets = true) => MadeUpPieces.Text(new Random(seed), sheets ? Papers[seed % 3] : "A4", Uses[seed / 2 % 3]);

    // Every number of the measurements becomes a text with its own unit.
    private static string WithUnits(string text, string units)
    {
        var from = text.IndexOf("\"piece\"", StringComparison.Ordinal);
        var to = text.IndexOf("\"fabric\"", StringComparison.Ordinal);
        var piece = System.Text.RegularExpressions.Regex.Replace(
            text[from..to],
            """(?<!"count": )(?<![\w.\-])-?\d+(?:\.\d+)?(?![\w.])""",
            m => $"\"{m.Value} mm\"");
        var pins = text[to..].Replace("\"scallop\": 5", "\"scallop\": \"5 mm\"", StringComparison.Ordinal);
        pins = System.Text.RegularExpressions.Regex.Replace(pins, """("spacing": )(\d+)""", "$1\"$2 mm\"");
        return text[..from].Replace("\"units\": \"mm\"", $"\"units\": \"{units}\"", StringComparison.Ordinal) + piece + pins;
    }

    // One or two of the numbers are replaced by others: too large, too small, negative, nothing.
    private static string Spoiled(string text, Random random)
    {
        var from = text.IndexOf("\"piece\"", StringComparison.Ordinal);
        var numbers = System.Text.RegularExpressions.Regex.Matches(text[from..], """(?<![\w.\-"])-?\d+(?:\.\d+)?(?![\w."])""");
        var spoiled = numbers[random.Next(numbers.Count)];
        var value = double.Parse(spoiled.Value, CultureInfo.InvariantCulture);
        string[] others =
        [
            "null", "-1", "0", "1e9", "\"abc\"", "true",
            Of(value * 1.2), Of(value * 0.6), Of(value * 2.5), Of(value + 30), Of(value - 40), Of(value * 0.9), Of(value * 1.05), Of(value + 1),
        ];
        return text[..from] + text[from..].Remove(spoiled.Index, spoiled.Length).Insert(spoiled.Index, others[random.Next(others.Length)]);
    }

    private static string Of(double value) => value.ToString("0.###", CultureInfo.InvariantCulture);
}
