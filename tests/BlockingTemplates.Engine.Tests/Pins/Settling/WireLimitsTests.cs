using BlockingTemplates.Engine.Fabrics;
using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Pins;
using BlockingTemplates.Engine.Pins.Settling;
using BlockingTemplates.Engine.Pins.Wires;

namespace BlockingTemplates.Engine.Tests.Pins.Settling;

// The two ends of what a wire can do, on the computed cloth.
public class WireLimitsTests
{
    [Fact]
    public void A_very_stiff_wire_needs_pins_at_its_ends_only()
    {
        var (plan, _) = Planned("lace-triangle", 20);
        // The demo's top edge has the anchor in its middle.
        Assert.All(plan.Marks, m => Assert.True(m.IsCorner || m.IsAnchor));
        Assert.Equal(3, plan.Wires.Count);
    }

    [Theory]
    [InlineData("stole-on-wires")]
    [InlineData("half-circle-on-wires")]
    public void A_limp_wire_takes_as_many_pins_as_no_wire(string example)
    {
        var (plan, limp) = Planned(example, 0.05);
        var (bare, pins) = Planned(example, null);
        Assert.All(plan.Wired, w => Assert.True(w.IsLimp));
        Assert.Empty(bare.Wired);
        Assert.InRange(plan.Marks.Count, 0.95 * bare.Marks.Count, 1.05 * bare.Marks.Count);
        Assert.All(limp.Gaps.Concat(pins.Gaps), g => Assert.InRange(Math.Abs(g.ScallopMm), 0, 5.005));
    }

    // With wires of so many millimetres where the example has wires, all round where it has none; or by single pins all round.
    private static (PinPlan Plan, SettledPins Settled) Planned(string example, double? mm)
    {
        Holding? way = mm is null ? Holding.Pins : example == "lace-triangle" ? Holding.Wire : null;
        var form = new WireForm(WireKind.Flexible, Length.FromMillimetres(mm ?? 1));
        var held = HeldExample.Of(example, way, s => s with { Wires = s.Wires with { Owned = [new(Length.FromCentimetres(200), 9, form)] } });
        using var study = ClothStudy.Of(held.Piece, held.Settings, held.Placed, Computation.Whole with { WithEnds = false }, new())!;
        return (study.Pins, study.Settled);
    }
}
