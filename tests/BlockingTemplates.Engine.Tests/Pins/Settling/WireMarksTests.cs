using BlockingTemplates.Engine.Fabrics;
using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Pins;
using BlockingTemplates.Engine.Pins.Settling;

namespace BlockingTemplates.Engine.Tests.Pins.Settling;

// Wires where the maker gave the spacing of single pins.
public class WireMarksTests
{
    [Theory]
    [InlineData("stole-on-wires", 80, 5)]
    [InlineData("stole-on-wires", 150, 2)]
    [InlineData("half-circle-on-wires", 80, 5)]
    [InlineData("lace-triangle", 80, 2)]
    [InlineData("combed-blanket", 80, 5)]
    public void With_a_given_spacing_wire_and_cloth_together_keep_the_scallop_and_single_pins_stay(string example, double spacing, double scallop)
    {
        Holding? way = example.EndsWith("wires", StringComparison.Ordinal) ? null : Holding.Wire;
        var held = HeldExample.Of(example, way, s => s with { Spacing = Length.FromMillimetres(spacing), Scallop = Length.FromMillimetres(scallop) });
        using var cloth = new PinnedCloth(held.Piece, ClothMaterials.Of(held.Piece.Fabric).Likely);
        var beamAlone = cloth.Settle(held.Placed, null, Computation.Whole);
        using var study = ClothStudy.Of(held.Piece, held.Settings, held.Placed, Computation.Whole with { WithEnds = false }, new())!;
        // As the beam alone places them, no example keeps it: the cloth pulls harder than its mean where it is narrow.
        Assert.True(Worst(beamAlone) > 1.2 * scallop, $"{Worst(beamAlone)}");
        Assert.InRange(Worst(study.Settled), 0, scallop * 1.001);
        Assert.Equal(Single(held.Placed), Single(study.Pins));
    }

    private static double Worst(SettledPins settled) =>
        settled.Gaps.Where(g => settled.Plan.Edges[g.Edge].Treatment.HeldBy == Holding.Wire).Max(g => Math.Abs(g.ScallopMm));

    private static IEnumerable<(int, double)> Single(PinPlan plan) =>
        plan.Marks.Where(m => m.IsCorner || plan.Edges[m.Edge].Treatment.HeldBy == Holding.Pins).Select(m => (m.Edge, m.Fraction)).Order();
}
