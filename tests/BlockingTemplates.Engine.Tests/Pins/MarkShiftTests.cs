using BlockingTemplates.Engine.Fabrics;
using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Pins;
using BlockingTemplates.Engine.Tests.Pieces;
using CsCheck;

namespace BlockingTemplates.Engine.Tests.Pins;

public sealed class MarkShiftTests
{
    [Fact]
    public void A_mark_and_its_mirror_partner_move_by_one_stitch()
    {
        // 15 mm a row: between the corner stretches some gaps have three rows where four (60 of 70 mm) are allowed.
        var plan = Scarf(spacing: 70, count: 100);
        var (mark, by) = FirstThatMoves(plan);
        var moved = Assert.IsType<PinPlan>(MarkShift.Moved(plan, mark.Number, by));
        var (was, now) = (mark, moved.Marks[mark.Number - 1]);
        Assert.Equal(was.Count + by, now.Count);
        Assert.Equal(15, now.At.DistanceTo(was.At), 1e-9);
        Assert.Equal(15, now.Rest!.Value.DistanceTo(was.Rest!.Value) * 15 / 12, 1e-9);
        var partner = Assert.Single(moved.Marks, m => m.Edge == 3 && Math.Abs(m.Fraction - (1 - now.Fraction)) < 1e-9);
        Assert.Equal(plan.Marks[partner.Number - 1].Count - by, partner.Count);
        Assert.InRange(partner.At.DistanceTo(plan.Mirror!.Image(now.At)), 0, 1e-9);
        Assert.Equal(plan.Marks.Count - 2, plan.Marks.Zip(moved.Marks).Count(p => p.First == p.Second));
    }

    [Fact]
    public void Corners_anchors_and_marks_on_the_axis_do_not_move()
    {
        var plan = Scarf(spacing: 60, count: 100);
        foreach (var mark in plan.Marks.Where(m => m.IsCorner || m.IsAnchor || (m.Edge is 0 or 2 && m.Fraction == 0.5)))
        {
            Assert.Null(MarkShift.Moved(plan, mark.Number, 1));
            Assert.Null(MarkShift.Moved(plan, mark.Number, -1));
        }
    }

    [Fact]
    public void A_gap_that_would_grow_past_the_rule_is_refused()
    {
        // 100 rows of 15 mm, gaps of exactly four rows where 60 mm are allowed: no room to move.
        var plan = Scarf(spacing: 60, count: 100);
        foreach (var mark in plan.Marks.Where(m => m.Edge == 1 && m.Fraction is > 0.1 and < 0.9))
        {
            Assert.Null(MarkShift.Moved(plan, mark.Number, 1));
            Assert.Null(MarkShift.Moved(plan, mark.Number, -1));
        }

        // A row more allowed, and the same marks move one row, but not two.
        var loose = plan with { Rule = new(plan.Pinned, 75, 15, [false, false, false, false]) };
        foreach (var mark in plan.Marks.Where(m => m.Edge == 1 && m.Fraction is > 0.2 and < 0.8))
        {
            Assert.NotNull(MarkShift.Moved(loose, mark.Number, 1));
            Assert.NotNull(MarkShift.Moved(loose, mark.Number, -1));
            Assert.Null(MarkShift.Moved(loose, mark.Number, 2));
        }
    }

    [Fact]
    public void A_mark_never_moves_onto_or_past_its_neighbour()
    {
        // Far wider spacing than the marks need: only the order keeps them apart.
        var plan = Scarf(spacing: 60, count: 100);
        plan = plan with { Rule = new(plan.Pinned, 5000, 5000, [false, false, false, false]) };
        var mark = plan.Marks.First(m => m.Edge == 1 && m.Fraction is > 0.3 and < 0.45);
        var next = plan.Marks.Where(m => m.Edge == 1 && m.Fraction > mark.Fraction).MinBy(m => m.Fraction)!;
        var room = (int)(next.Count - mark.Count)!;
        Assert.NotNull(MarkShift.Moved(plan, mark.Number, room - 1));
        Assert.Null(MarkShift.Moved(plan, mark.Number, room));
        Assert.Null(MarkShift.Moved(plan, mark.Number, room + 1));
    }

    [Fact]
    public void Without_a_known_stitch_nothing_moves()
    {
        var plan = Scarf(spacing: 60, count: null);
        Assert.All(plan.Marks, m => Assert.Null(MarkShift.Moved(plan, m.Number, 1)));
    }

    [Fact]
    public void An_edge_that_is_not_counted_moves_by_the_stitch_of_the_cloth()
    {
        var plan = Scarf(spacing: 80, count: null, stitch: 6);
        plan = plan with { Rule = new(plan.Pinned, 100, 15, [false, false, false, false]) };
        var mark = plan.Marks.First(m => m.Edge == 1 && m.Fraction is > 0.3 and < 0.45);
        // 1200 mm of 6 mm rows pinned to 1500 mm: 7.5 mm each.
        Assert.Equal(7.5, plan.Edges[1].StitchMm!.Value, 1e-9);
        var moved = Assert.IsType<PinPlan>(MarkShift.Moved(plan, mark.Number, 1));
        Assert.Equal(7.5, moved.Marks[mark.Number - 1].At.DistanceTo(mark.At), 1e-9);
        Assert.Null(moved.Marks[mark.Number - 1].Count);
    }

    [Fact]
    public void What_moves_on_random_pieces_keeps_rule_order_and_symmetry() => Gen.OneOf(RandomPieces.Any, RandomPieces.Symmetric).Check(60, given =>
    {
        var plan = RandomPieces.Plan(given);
        foreach (var mark in plan.Marks.Where(m => m.Number % 5 == 0))
        {
            if (MarkShift.Moved(plan, mark.Number, 1) is not { } moved)
                continue;
            int[] Ring(PinPlan p) => [.. p.Marks.OrderBy(m => m.Edge).ThenBy(m => m.Fraction).Select(m => m.Number)];
            Assert.Equal(Ring(plan), Ring(moved));
            Assert.Equal(plan.Marks.Select(m => (m.Number, m.Round)), moved.Marks.Select(m => (m.Number, m.Round)));
            if (plan.Mirror is { } mirror)
                Assert.All(moved.Marks, m => Assert.Contains(moved.Marks, o => o.At.DistanceTo(mirror.Image(m.At)) < 1e-6));
            var now = moved.Marks[mark.Number - 1];
            Assert.Equal(plan.Edges[mark.Edge].StitchMm!.Value, (now.Fraction - mark.Fraction) * plan.Edges[mark.Edge].PinnedMm, 1e-6);
            var walk = new RingWalk(moved);
            foreach (var (from, to) in walk.Gaps.Where(g => Math.Abs(g.From - walk.Position(now)) < 1e-9 || Math.Abs(g.To - walk.Position(now)) < 1e-9))
            {
                var (edge, fraction) = walk.Locate((from + to) / 2);
                Assert.InRange(to - from, 0, moved.Rule.At(edge, fraction) + 1e-5);
            }
        }
    });

    private static (Mark Mark, int By) FirstThatMoves(PinPlan plan) => plan.Marks
        .Where(m => m.Edge == 1)
        .SelectMany(m => new[] { (Mark: m, By: 1), (Mark: m, By: -1) })
        .First(x => MarkShift.Moved(plan, x.Mark.Number, x.By) is not null);

    /// <summary>400 mm by 1500 mm pinned from 320 mm by 1200 mm; its sides counted alike, no anchor.</summary>
    private static PinPlan Scarf(double spacing, int? count, double? stitch = null)
    {
        var side = new EdgeTreatment(count, CountedIn.Rows, Holding.Pins);
        var request = Given.Request(
            new RectanglePiece(), Given.Finished(("width", 400), ("length", 1500)), Given.Unblocked(("lower", 320), ("top", 320), ("left", 1200), ("right", 1200)));
        request = request with
        {
            Edges = new Dictionary<string, EdgeTreatment> { ["left"] = side, ["right"] = side },
            Fabric = FabricSettings.Unsaid with { Stitch = stitch is { } mm ? (Length.FromMillimetres(mm), Length.FromMillimetres(mm)) : null },
        };
        return Assert.IsType<PinPlan>(PinPlanner.Plan(Given.Made(request), PinSettings.Default with { Spacing = Length.FromMillimetres(spacing), Anchor = "middle of lower" }, new Findings()));
    }
}
