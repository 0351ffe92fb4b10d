using System.Globalization;
using System.Text.Json;
using BlockingTemplates.Reference.Tests.Planning;

namespace BlockingTemplates.Reference.Tests.Packets;

// What plan.json and pins.csv tell of the cloth, against the plan.
public class FabricJsonTests
{
    private const string Fabric = "material, converged b, residual n, steps n, nodes n, decidedSpacing b, bestSoFar b, worstScallopMm n?, largestLoadNewtons?, anchors, gaps, stretch, slack, beyond, freeEdge l, offLine, soft?, stiff?";

    public static TheoryData<string> Pieces => [.. ClothPieces.All];

    [Theory]
    [MemberData(nameof(Pieces))]
    public void Every_name_of_the_cloth_is_there_with_its_kind(string piece)
    {
        using var json = PlanJsonTests.Read(Planned.InCloth(piece));
        var fabric = json.RootElement.GetProperty("fabric");
        PlanJsonTests.AssertNames(fabric, Fabric);
        PlanJsonTests.AssertNames(fabric.GetProperty("material"), "told t, source t, newtonsPerMetre?");
        PlanJsonTests.AssertAll(fabric.GetProperty("anchors"), "anchor t, forceShare n, taken b");
        PlanJsonTests.AssertAll(fabric.GetProperty("gaps"), "from n, to n, edge t, fraction n, widthMm n, scallopMm n?, determined b?");
        PlanJsonTests.AssertNames(fabric.GetProperty("stretch"), "cellMm n, cells");
        PlanJsonTests.AssertAll(fabric.GetProperty("stretch").GetProperty("cells"), "column n, row n, at p, along n, across n, state t");
        PlanJsonTests.AssertAll(fabric.GetProperty("slack"), "middle p, areaMm2 n, cells");
        Assert.All(fabric.GetProperty("offLine").EnumerateArray(), line => Assert.True(line.GetArrayLength() >= 2));
        Assert.True(fabric.GetProperty("converged").GetBoolean());
    }

    [Theory]
    [MemberData(nameof(Pieces))]
    public void Edges_and_pins_say_what_the_cloth_of_the_plan_says(string piece)
    {
        var plan = Planned.InCloth(piece);
        var cloth = plan.Cloth!;
        using var json = PlanJsonTests.Read(plan);
        var fabric = json.RootElement.GetProperty("fabric");
        var gaps = fabric.GetProperty("gaps").EnumerateArray().ToList();
        Assert.Equal(plan.Pins.Marks.Count, gaps.Count);
        foreach (var (edge, i) in json.RootElement.GetProperty("edges").EnumerateArray().Select((e, i) => (e, i)))
        {
            // Worst of the edge's own gaps whose line is determined, found here a second time from the file alone.
            var own = gaps.Where(g => g.GetProperty("edge").GetString() == edge.GetProperty("name").GetString()).ToList();
            var told = own.Where(g => g.GetProperty("scallopMm").ValueKind == JsonValueKind.Number).Select(g => Math.Abs(g.GetProperty("scallopMm").GetDouble())).ToList();
            if (told.Count > 0)
                Assert.Equal(told.Max(), Math.Abs(edge.GetProperty("scallopMm").GetDouble()), 1e-9);
            else
                Assert.Equal(JsonValueKind.Null, edge.GetProperty("scallopMm").ValueKind);
            if (own.Exists(g => g.GetProperty("determined").ValueKind == JsonValueKind.False))
                Assert.False(edge.GetProperty("determined").GetBoolean());
            Assert.Equal(cloth.Edges[i] is null, own.Count == 0);
        }

        foreach (var (pin, mark) in json.RootElement.GetProperty("pins").EnumerateArray().Zip(plan.Pins.Marks))
        {
            var (x, y) = (pin.GetProperty("at")[0].GetDouble(), pin.GetProperty("at")[1].GetDouble());
            var rest = pin.GetProperty("restInTurn");
            Assert.Equal(double.Hypot(x - rest[0].GetDouble(), y - rest[1].GetDouble()), pin.GetProperty("pullInTurnMm").GetDouble(), 0.003);
            Assert.InRange(pin.GetProperty("loadShare").GetDouble(), 0, 1);
            Assert.Equal(cloth.InTurn[mark.Number - 1].IsApproximate, pin.GetProperty("inTurnApproximate").GetBoolean());
        }

        Assert.Equal(1, json.RootElement.GetProperty("pins").EnumerateArray().Max(p => p.GetProperty("loadShare").GetDouble()), 1e-6);
        // Two pins at the most leave a piece free to turn, unless more stand on one line.
        Assert.True(json.RootElement.GetProperty("pins")[0].GetProperty("inTurnApproximate").GetBoolean());
        Assert.False(json.RootElement.GetProperty("pins").EnumerateArray().Last().GetProperty("inTurnApproximate").GetBoolean());
    }

    [Theory]
    [MemberData(nameof(Pieces))]
    public void Pins_csv_has_the_pull_in_turn_and_the_load_after_the_columns_it_had(string piece)
    {
        var plan = Planned.InCloth(piece);
        var rows = CountsAgreeTests.Rows(plan);
        var (unit, name) = plan.Project.Units == Engine.Measure.LengthUnit.Inches ? (25.4, "in") : (10, "cm");
        Assert.Equal(["sheets", $"pull in turn ({name})", "in turn is", "load (% of the largest)"], rows[0][9..]);
        using var json = PlanJsonTests.Read(plan);
        Assert.Equal(plan.Pins.Marks.Count, rows.Count - 1);
        foreach (var (pin, row) in json.RootElement.GetProperty("pins").EnumerateArray().Zip(rows.Skip(1)))
        {
            Assert.Equal(pin.GetProperty("pullInTurnMm").GetDouble(), unit * double.Parse(row[10], CultureInfo.InvariantCulture), 0.06);
            Assert.Equal(pin.GetProperty("inTurnApproximate").GetBoolean() ? "approximate" : "computed", row[11]);
            Assert.Equal(100 * pin.GetProperty("loadShare").GetDouble(), double.Parse(row[12], CultureInfo.InvariantCulture), 0.051);
        }
    }

    [Fact]
    public void Without_the_cloth_nothing_of_it_is_told()
    {
        var plan = Planned.Example(Planned.Triangle);
        Assert.Null(plan.Cloth);
        Assert.Equal("sheets", CountsAgreeTests.Rows(plan)[0][^1]);
        using var json = PlanJsonTests.Read(plan);
        Assert.Equal(JsonValueKind.Null, json.RootElement.GetProperty("fabric").ValueKind);
        Assert.All(json.RootElement.GetProperty("pins").EnumerateArray(), p => Assert.Equal(JsonValueKind.Null, p.GetProperty("inTurnApproximate").ValueKind));
    }
}
