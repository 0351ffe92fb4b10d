using System.Text.Json;
using System.Text.RegularExpressions;
using BlockingTemplates.Engine;
using BlockingTemplates.Output.Json;
using BlockingTemplates.Reference.Tests.Planning;

namespace BlockingTemplates.Reference.Tests.Packets;

// plan.json walked name by name as it is documented: numbers n, texts t, yes or no b, places p, lines l, ? may be null.
public partial class PlanJsonTests
{
    private const string Root = "format n, title t, units t, faceUp t, anchor t, finished l, pinned l, unblocked l?, edges, pins, counts, mats, sheets, fabric?, notes, cautions";
    private const string Edge = "name t, finishedMm n, pinnedMm n, unblockedMm n?, stretch n?, pins n, spacingRule t, scallopMm n?, determined b?, pinned l, unblocked l?";
    private const string Pin = "number n, round n, kind t, edge t, fraction n, count n?, of t?, at p, rest p?, pullMm n?, restInTurn p?, pullInTurnMm n?, loadShare n?, mat t, onMat p, seamMm n?, nearSeam b, sheets";
    private const string Mats = "sizeMm p, count n, turnDegrees n, cells";
    private const string Cell = "name t, column n, row n, at p";
    private const string Sheets = "paper t, count n, joining n, landscape b, pages";
    private const string SheetPage = "name t, at p, size p, joining b";

    public static TheoryData<string> Examples => [.. Planned.Examples];

    [Theory]
    [MemberData(nameof(Examples))]
    public void Every_documented_name_is_there_with_its_kind(string example)
    {
        using var json = Read(Planned.Example(example));
        var root = json.RootElement;
        AssertNames(root, Root);
        AssertAll(root.GetProperty("edges"), Edge);
        AssertAll(root.GetProperty("pins"), Pin);
        AssertNames(root.GetProperty("counts"), "pin n, comb n, wire n, spare n");
        AssertNames(root.GetProperty("mats"), Mats);
        AssertAll(root.GetProperty("mats").GetProperty("cells"), Cell);
        AssertAll(root.GetProperty("sheets"), Sheets);
        Assert.All(root.GetProperty("sheets").EnumerateArray(), s => AssertAll(s.GetProperty("pages"), SheetPage));
        AssertAll(root.GetProperty("notes"), "place t, what t, do t");
        Assert.All(root.GetProperty("cautions").EnumerateArray(), c => Assert.Equal(JsonValueKind.String, c.ValueKind));
        Assert.Equal(1, root.GetProperty("format").GetInt32());
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public void Lengths_have_three_decimals_at_most_and_no_number_is_a_minus_zero(string example)
    {
        var text = System.Text.Encoding.UTF8.GetString(PlanJson.Write(Planned.Example(example)));
        using var json = JsonDocument.Parse(text);
        var lengths = Numbers(json.RootElement, "").Where(n => n.Name is not ("fraction" or "stretch" or "count" or "turnDegrees" or "loadShare")).ToList();
        Assert.True(lengths.Count > 1000);
        Assert.All(lengths, n => Assert.Matches(ThreeDecimals(), n.Text));
        Assert.All(Numbers(json.RootElement, ""), n => Assert.NotEqual("-0", n.Text));
        Assert.DoesNotContain('\r', text);
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public void The_file_says_what_was_planned(string example)
    {
        var plan = Planned.Example(example);
        using var json = Read(plan);
        var root = json.RootElement;
        Assert.Equal(plan.Project.Title, root.GetProperty("title").GetString());
        Assert.Equal(plan.Pins.Marks.Count, root.GetProperty("counts").GetProperty("pin").GetInt32());
        Assert.Equal(plan.Mats.Mats.Count, root.GetProperty("mats").GetProperty("count").GetInt32());
        Assert.Equal(plan.Mats.Mats.Count, root.GetProperty("mats").GetProperty("cells").GetArrayLength());
        Assert.Equal(plan.Guides.Select(g => (g.Paper.Name, g.Count, g.Layout.JoiningCount)), root.GetProperty("sheets").EnumerateArray().Select(s => (s.GetProperty("paper").GetString()!, s.GetProperty("count").GetInt32(), s.GetProperty("joining").GetInt32())));
        Assert.All(root.GetProperty("sheets").EnumerateArray(), s => Assert.Equal(s.GetProperty("pages").GetArrayLength(), s.GetProperty("count").GetInt32() + s.GetProperty("joining").GetInt32()));
        var names = root.GetProperty("sheets").EnumerateArray().SelectMany(s => s.GetProperty("pages").EnumerateArray()).Select(p => p.GetProperty("name").GetString()).ToHashSet();
        var cells = root.GetProperty("mats").GetProperty("cells").EnumerateArray().ToDictionary(c => c.GetProperty("name").GetString()!, c => At(c, "at"));
        foreach (var (pin, mark) in root.GetProperty("pins").EnumerateArray().Zip(plan.Pins.Marks))
        {
            Assert.Equal(mark.Number, pin.GetProperty("number").GetInt32());
            var (x, y) = At(pin, "at");
            Assert.Equal(mark.At.X, x, 0.000501);
            // A pin's place on its mat is its place less the mat's, and its pull the distance from its rest.
            var (left, lower) = cells[pin.GetProperty("mat").GetString()!];
            var (onX, onY) = At(pin, "onMat");
            Assert.Equal((x, y), (left + onX, lower + onY), (a, b) => Math.Abs(a.Item1 - b.Item1) < 0.002 && Math.Abs(a.Item2 - b.Item2) < 0.002);
            Assert.Equal(Math.Sqrt(Math.Pow(x - At(pin, "rest").X, 2) + Math.Pow(y - At(pin, "rest").Y, 2)), pin.GetProperty("pullMm").GetDouble(), 0.003);
            Assert.Subset(names!, pin.GetProperty("sheets").EnumerateArray().Select(s => s.GetString()!).ToHashSet());
        }

        // The pins of the edges are all pins: a corner's stands once.
        Assert.Equal(plan.Pins.Marks.Count, root.GetProperty("edges").EnumerateArray().Sum(e => e.GetProperty("pins").GetInt32()));
    }

    [Fact]
    public void What_is_not_known_is_null_and_never_0()
    {
        using var json = Read(Planned.Of("""{ "units": "cm", "piece": { "shape": "triangle", "finished": { "wingspan": 20, "depth": 12 } }, "mats": { "size": 90 } }"""));
        var root = json.RootElement;
        AssertNames(root, Root);
        AssertNull(root, "unblocked", "fabric");
        foreach (var edge in root.GetProperty("edges").EnumerateArray())
        {
            AssertNames(edge, Edge);
            AssertNull(edge, "unblockedMm", "stretch", "scallopMm", "determined", "unblocked");
        }

        foreach (var pin in root.GetProperty("pins").EnumerateArray())
        {
            AssertNames(pin, Pin);
            AssertNull(pin, "count", "of", "rest", "pullMm", "restInTurn", "pullInTurnMm", "loadShare", "seamMm");
        }
    }

    internal static JsonDocument Read(Plan plan) => JsonDocument.Parse(PlanJson.Write(plan));

    internal static void AssertAll(JsonElement list, string names) => Assert.All(list.EnumerateArray(), e => AssertNames(e, names));

    internal static void AssertNames(JsonElement element, string names)
    {
        foreach (var name in names.Split(", "))
        {
            var words = name.TrimEnd('?').Split(' ');
            var value = element.GetProperty(words[0]);
            if (name.EndsWith('?') && value.ValueKind == JsonValueKind.Null)
                continue;
            Assert.True(Is(value, words.ElementAtOrDefault(1) ?? ""), $"{name} is {value.GetRawText()}");
        }
    }

    private static bool Is(JsonElement value, string kind) => kind switch
    {
        "n" => value.ValueKind == JsonValueKind.Number,
        "t" => value.ValueKind == JsonValueKind.String,
        "b" => value.ValueKind is JsonValueKind.True or JsonValueKind.False,
        "p" => value.ValueKind == JsonValueKind.Array && value.GetArrayLength() == 2 && value.EnumerateArray().All(v => v.ValueKind == JsonValueKind.Number),
        "l" => value.ValueKind == JsonValueKind.Array && value.GetArrayLength() >= 2 && value.EnumerateArray().All(v => Is(v, "p")),
        _ => value.ValueKind is JsonValueKind.Array or JsonValueKind.Object,
    };

    private static void AssertNull(JsonElement element, params string[] names) =>
        Assert.All(names, n => Assert.Equal(JsonValueKind.Null, element.GetProperty(n).ValueKind));

    private static IEnumerable<(string Name, string Text)> Numbers(JsonElement element, string name) => element.ValueKind switch
    {
        JsonValueKind.Number => [(name, element.GetRawText())],
        JsonValueKind.Array => element.EnumerateArray().SelectMany(e => Numbers(e, name)),
        JsonValueKind.Object => element.EnumerateObject().SelectMany(p => Numbers(p.Value, p.Name)),
        _ => [],
    };

    private static (double X, double Y) At(JsonElement element, string name) => (element.GetProperty(name)[0].GetDouble(), element.GetProperty(name)[1].GetDouble());

    [GeneratedRegex(@"^-?\d+(\.\d{1,3})?$")]
    private static partial Regex ThreeDecimals();
}
