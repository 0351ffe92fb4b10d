using System.Text.Json;
using BlockingTemplates.Drawing.Cloths;
using BlockingTemplates.Drawing.Guides;
using BlockingTemplates.Drawing.Pages;
using BlockingTemplates.Engine;
using BlockingTemplates.Engine.Fabrics;
using BlockingTemplates.Engine.Pins.Settling;
using BlockingTemplates.Reference.Tests.Packets;
using BlockingTemplates.Reference.Tests.Planning;

namespace BlockingTemplates.Reference.Tests.Cloths;

// Cloths that the examples do not have, made from one of theirs: what is shown of them.
public class ClothCasesTests
{
    private static Plan Demo => Planned.InCloth(Planned.Triangle);

    [Fact]
    public void A_computation_cut_short_is_marked_and_what_it_did_not_find_is_left_blank()
    {
        var plan = Demo with { Cloth = Demo.Cloth! with { IsBestSoFar = true, InTurn = [.. Demo.Cloth.InTurn.Take(5)], Soft = null, Stiff = null } };
        var pages = GuideDocument.Draw(plan, plan.Guides[0]).Pages;
        Assert.Contains("best found so far", Words(pages, "cover"), StringComparison.Ordinal);
        Assert.Contains("best found so far", Words(pages, "cloth"), StringComparison.Ordinal);
        Assert.DoesNotContain("If your cloth is", Words(pages, "cloth"), StringComparison.Ordinal);
        using var json = PlanJsonTests.Read(plan);
        Assert.True(json.RootElement.GetProperty("fabric").GetProperty("bestSoFar").GetBoolean());
        var pins = json.RootElement.GetProperty("pins");
        Assert.Equal(JsonValueKind.Number, pins[4].GetProperty("pullInTurnMm").ValueKind);
        foreach (var name in new[] { "restInTurn", "pullInTurnMm", "inTurnApproximate" })
            Assert.Equal(JsonValueKind.Null, pins[5].GetProperty(name).ValueKind);
        var rows = CountsAgreeTests.Rows(plan);
        Assert.NotEqual("", rows[5][10]);
        Assert.Equal(("", ""), (rows[6][10], rows[6][11]));
        Assert.DoesNotContain("best found so far", Words(GuideDocument.Draw(Demo, Demo.Guides[0]).Pages, "cloth"), StringComparison.Ordinal);
    }

    [Fact]
    public void Loads_are_told_in_newtons_and_grams_where_strips_give_a_stiffness()
    {
        // 2 N over 9.80665 m/s2 (standard gravity, ISO 80000-3) is 204 g, told to 10 g.
        var plan = Demo with { Cloth = Demo.Cloth! with { LargestLoadNewtons = new Spread(1, 2, 3) } };
        Assert.Contains("2.0 N (1.0 to 3.0), the weight of 200 g (100 to 310)", Words(ClothPages.Draw(plan, plan.Guides[0].Paper), "cloth"), StringComparison.Ordinal);
        using var json = PlanJsonTests.Read(plan);
        Assert.Equal(2, json.RootElement.GetProperty("fabric").GetProperty("largestLoadNewtons").GetProperty("likely").GetDouble());
        Assert.DoesNotContain(" N (", Words(ClothPages.Draw(Demo, Demo.Guides[0].Paper), "cloth"), StringComparison.Ordinal);
    }

    [Fact]
    public void An_edge_that_is_not_kept_is_told_on_cover_and_page()
    {
        var cloth = Demo.Cloth!;
        var worst = cloth.Edges[1]!.Worst!.Value with { ScallopMm = 12.4 };
        EdgeStraightness?[] edges = [cloth.Edges[0], cloth.Edges[1]! with { Worst = worst, IsKept = false }, cloth.Edges[2]];
        var plan = Demo with { Cloth = cloth with { Edges = edges } };
        var pages = GuideDocument.Draw(plan, plan.Guides[0]).Pages;
        Assert.Contains(FormattableString.Invariant($"NOT kept, 1.2 cm at marks {worst.From}-{worst.To}"), Words(pages, "cover"), StringComparison.Ordinal);
        Assert.Contains(FormattableString.Invariant($"1.2 cm inside {worst.From} and {worst.To} no"), Words(pages, "cloth"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_gap_just_over_what_was_asked_for_does_not_read_as_kept()
    {
        var gap = Demo.Cloth!.Gaps[0] with { ScallopMm = -5.2 };
        Assert.Equal("a little over 0.5 cm outside", ClothWords.Scallop(Demo, gap));
        Assert.Equal("0.5 cm inside", ClothWords.Scallop(Demo, gap with { ScallopMm = 5 }));
    }

    [Fact]
    public void A_region_beyond_the_swatch_is_hatched_lettered_and_told()
    {
        var cells = Demo.Cloth!.Stretch.Cells.Where(c => c.Across > 0.2).ToList();
        Assert.NotEmpty(cells);
        var region = new ClothRegion(cells, cells[cells.Count / 2].At, cells.Count * Demo.Cloth.Stretch.CellMm * Demo.Cloth.Stretch.CellMm);
        var plan = Demo with { Cloth = Demo.Cloth with { Beyond = [region], Material = Demo.Cloth.Material with { Took = new TakenStretch(0.2, 0.2) } } };
        var words = Words(ClothPages.Draw(plan, plan.Guides[0].Paper), "cloth");
        Assert.Contains("stretched further than your swatch took", words, StringComparison.Ordinal);
        Assert.Contains("beyond your swatch", words, StringComparison.Ordinal);
        using var json = PlanJsonTests.Read(plan);
        Assert.Equal(cells.Count, json.RootElement.GetProperty("fabric").GetProperty("beyond")[0].GetProperty("cells").GetArrayLength());
    }

    // The texts of the pages of a label as one line.
    private static string Words(IEnumerable<Page> pages, string label) =>
        string.Join(' ', pages.Where(p => p.Label.StartsWith(label, StringComparison.Ordinal)).SelectMany(p => p.Content).OfType<TextElement>().Select(t => t.Text));
}
