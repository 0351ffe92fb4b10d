using BlockingTemplates.Engine.Fabrics;
using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Pins;
using BlockingTemplates.Engine.Pins.Settling;
using BlockingTemplates.Engine.Pins.Wires;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Tests.Pins.Settling;

// Pulls in turn where wires were threaded before the first pin.
public class WiresInTurnTests
{
    private static readonly Lazy<(HeldExample Held, PinPlan Plan, List<PullInTurn> Turns)> Stole = new(() => InTurn("stole-on-wires", Holding.Wire));

    [Fact]
    public void A_pull_in_turn_is_the_one_of_cloth_and_wires_on_a_finer_mesh_within_3_mm_once_more_than_ten_pins_hold()
    {
        var (held, plan, turns) = Stole.Value;
        Assert.Equal(plan.Marks.Count, turns.Count);
        using var fine = Cloth(held);
        foreach (var number in new[] { 14, 17, 24, plan.Marks.Count - 3, plan.Marks.Count })
        {
            var rest = fine.Hold(fine.Threaded(plan, [.. plan.Marks.Take(number - 1)], _ => true).Support, null, Computation.Whole);
            Assert.True(rest.Converged);
            Assert.InRange(fine.StitchAt(plan.Marks[number - 1], rest.Places).DistanceTo(turns[number - 1].Rest), 0, 3);
        }
    }

    [Fact]
    public void Marks_on_a_very_stiff_wire_all_lie_on_one_line_before_they_are_pinned()
    {
        var (held, plan, _) = Stole.Value;
        var stiff = plan with { Wires = [.. plan.Wires.Select(w => w with { Form = new(WireKind.Stiff, Length.FromMillimetres(30)) })] };
        using var cloth = Cloth(held, Coarse(held));
        foreach (var count in new[] { 4, 8, 12 })
        {
            var under = stiff.Marks.Take(count).ToList();
            var rest = cloth.Hold(cloth.Threaded(stiff, under, _ => true).Support, null, Computation.Whole, slackShare: 1e-3);
            var bare = cloth.Hold(cloth.Held(under).Support, null, Computation.Whole, slackShare: 1e-3);
            Assert.True(rest.Converged && bare.Converged);
            Assert.InRange(OffALine(rest), 0, 1.5);
            Assert.True(OffALine(bare) > 10, $"{OffALine(bare)}");
            // Of the marks on each wire of the lower edge, the farthest from the line through its first and last.
            double OffALine(Equilibrium at) => stiff.Wires.Where(w => w.Edge == 0).Max(w =>
            {
                List<Point> on = [.. stiff.Marks.Where(m => m.Edge == 0 && m.Fraction * stiff.Edges[0].PinnedMm is var mm && mm >= w.FromMm - 1e-6 && mm <= w.ToMm + 1e-6).OrderBy(m => m.Fraction).Select(m => cloth.StitchAt(m, at.Places))];
                return on.Max(p => Math.Abs((on[^1] - on[0]).Unit.Cross(p - on[0])));
            });
        }
    }

    [Fact]
    public void A_limp_wire_changes_no_pull()
    {
        var (held, plan, turns) = Stole.Value;
        List<PullInTurn> Turns(IEnumerable<Wire> wires)
        {
            using var cloth = Cloth(held, Coarse(held));
            return PinningInTurn.Of(plan with { Wires = [.. wires] }, cloth, 1, 20, Computation.Whole);
        }

        var (limp, none) = (Turns(plan.Wires.Select(w => w with { Form = new(WireKind.Stiff, Length.FromMillimetres(0.05)) })), Turns([]));
        Assert.Equal(20, limp.Count);
        Assert.All(limp.Zip(none), t => Assert.InRange(t.First.Rest.DistanceTo(t.Second.Rest), 0, 0.1));
        // The real ones do, by tens of millimetres.
        Assert.True(turns.Take(20).Zip(none).Average(t => t.First.Rest.DistanceTo(t.Second.Rest)) > 10);
    }

    [Fact]
    public void Until_the_wire_of_a_curve_can_be_taken_pulls_are_approximate()
    {
        var (_, plan, turns) = InTurn("half-circle-on-wires", null);
        var wires = new WiresInTurn(plan);
        var lower = plan.Edges.ToList().FindIndex(e => e.Name == "lower");
        Assert.True(wires.AreTaken(1 - lower, []));
        Assert.False(wires.AreTaken(lower, []));
        Assert.True(wires.AreTaken(lower, plan.Marks));
        foreach (var mark in plan.Marks)
        {
            Mark[] before = [.. plan.Marks.Take(mark.Number - 1)];
            // A half circle turns by 180 degrees: by 60 in a third of it.
            double[] at = [.. before.Where(m => m.Edge == lower).Select(m => m.Fraction).Append(1).Order()];
            var isClose = before.Count(m => m.IsCorner) == 2 && at.Zip(at.Skip(1)).All(g => g.Second - g.First <= (1 / 3.0) + 0.002);
            Assert.Equal(isClose, wires.AreTaken(lower, before));
            Assert.True(isClose || turns[mark.Number - 1].IsApproximate);
        }

        Assert.False(turns[^1].IsApproximate);
    }

    private static double Coarse(HeldExample held) => held.Piece.Unblocked!.Length / PinningInTurn.RimNodes;

    private static PinnedCloth Cloth(HeldExample held, double? nodeMm = null) => new(held.Piece, ClothMaterials.Of(held.Piece.Fabric).Likely, nodeMm);

    private static (HeldExample Held, PinPlan Plan, List<PullInTurn> Turns) InTurn(string example, Holding? way)
    {
        var held = HeldExample.Of(example, way);
        using var study = ClothStudy.Of(held.Piece, held.Settings, held.Placed, Computation.Whole with { WithEnds = false }, new())!;
        using var cloth = Cloth(held, Coarse(held));
        return (held, study.Pins, PinningInTurn.Of(study.Pins, cloth, 1, study.Pins.Marks.Count, Computation.Whole));
    }
}
