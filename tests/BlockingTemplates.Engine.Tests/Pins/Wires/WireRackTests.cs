using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Pins.Wires;
using CsCheck;

namespace BlockingTemplates.Engine.Tests.Pins.Wires;

public class WireRackTests
{
    private static readonly WireForm Stiff = WireSettings.Default.Form;

    [Theory]
    [InlineData(850, "900")]
    [InlineData(550, "600")]
    [InlineData(1400, "900 600")]
    [InlineData(1750, "900 900")]
    [InlineData(2300, "900 900 600")]
    public void Takes_the_fewest_wires_and_of_these_the_shorter_ones(double need, string lengths) =>
        Assert.Equal(lengths, string.Join(' ', new WireRack(Owning((900, 2), (600, 2))).Take(Stiff, need, 50).Select(w => w.LengthMm)));

    [Fact]
    public void What_is_missing_is_bought_as_long_as_the_longest_owned()
    {
        var rack = new WireRack(Owning((900, 1), (600, 1)));
        Assert.Equal([(900.0, true), (900.0, false), (600.0, true)], rack.Take(Stiff, 2000, 50));
        Assert.Equal([(900.0, false)], rack.Take(Stiff, 500, 50));
        Assert.Equal([(900.0, false), (900.0, false)], new WireRack(WireSettings.Default).Take(Stiff, 1000, 50));
    }

    [Fact]
    public void Two_edges_alike_get_the_same_wires_of_what_is_there_for_both()
    {
        var rack = new WireRack(Owning((900, 2), (600, 3)));
        Assert.Equal([(900.0, true), (600.0, true)], rack.Take(Stiff, 1400, 50, times: 2));
        Assert.Equal([(600.0, true)], rack.Take(Stiff, 500, 50));
        Assert.Equal([(900.0, false)], rack.Take(Stiff, 500, 50));
    }

    [Fact]
    public void No_wire_is_dealt_out_twice_none_is_longer_than_owned_and_all_reach() =>
        Gen.Select(Gen.Select(Gen.Int[100, 1200], Gen.Int[0, 4]).Array[1, 5], Gen.Double[50, 4000].Array[1, 6], Gen.Double[10, 200]).Sample((stock, needs, overlap) =>
        {
            var owned = stock.DistinctBy(s => s.Item1).ToArray();
            var rack = new WireRack(Owning(owned));
            var left = owned.ToDictionary(s => (double)s.Item1, s => s.Item2);
            var longest = owned.Max(s => s.Item1);
            foreach (var need in needs)
            {
                var wires = rack.Take(Stiff, need, overlap);
                var beside = WireRack.Beside(overlap, wires.Min(w => w.LengthMm));
                Assert.True(wires.Sum(w => w.LengthMm) - ((wires.Count - 1) * beside) >= need - 1e-6);
                foreach (var (length, isOwned) in wires)
                {
                    Assert.True(length <= longest);
                    Assert.True(!isOwned || left[length]-- > 0, $"{length} is dealt out too often");
                }
            }
        });

    private static WireSettings Owning(params (int Mm, int Count)[] wires) =>
        WireSettings.Default with { Owned = [.. wires.Select(w => new WireStock(Length.FromMillimetres(w.Mm), w.Count, Stiff))] };
}
