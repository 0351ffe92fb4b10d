using BlockingTemplates.Engine.Pins;
using static BlockingTemplates.Engine.Tests.Pins.SaidEdges;

namespace BlockingTemplates.Engine.Tests.Pins;

// Edges with a mark at every so many stitches.
public class MarksAtEveryStitchTests
{
    [Fact]
    public void Marks_at_every_eighth_stitch_stand_there_whatever_the_spacing()
    {
        var (_, plan, _) = Planned(Rectangle(("right", Counted(160) with { Every = 8 })));
        Assert.Equal(Enumerable.Range(0, 20).Select(k => 8.0 * k), On(plan, 1).Select(m => m.Count!.Value));
        Assert.Equal("as asked; every 8th stitch", plan.Edges[1].SpacingRule);
    }

    [Fact]
    public void An_anchored_edge_with_set_places_gets_no_mark_between_them()
    {
        var (_, plan, _) = Planned(Rectangle(("lower", Counted(110) with { Every = 10 })), "lower");
        Assert.Equal(Enumerable.Range(0, 11).Select(k => 10.0 * k), On(plan, 0).Select(m => m.Count!.Value));
        Assert.All(On(plan, 0), m => Assert.Equal((1, true), (m.Round, m.IsAnchor)));
    }

    [Fact]
    public void Marks_further_apart_than_the_cap_are_noted_and_stay()
    {
        var (_, plan, findings) = Planned(Rectangle(("right", Counted(160) with { Every = 20 })));
        var note = Assert.Single(findings.Notes, n => n.Place == "piece.edges.right.every");
        Assert.Contains("up to 12.5 cm apart", note.What, StringComparison.Ordinal);
        Assert.Equal(8, On(plan, 1).Count);
    }

    [Theory]
    [InlineData(90, 8)]
    [InlineData(92, 8)]
    [InlineData(91, 7)]
    [InlineData(91, 8)]
    [InlineData(3, 2)]
    [InlineData(2, 2)]
    [InlineData(5, 5)]
    [InlineData(9, 1)]
    public void On_an_edge_that_mirrors_itself_stitches_are_counted_off_from_both_corners(int count, int every)
    {
        var (_, plan, _) = Planned(Rectangle(("lower", Counted(count) with { Every = every })));
        Assert.NotNull(plan.Mirror);
        double[] at = [.. On(plan, 0).Select(m => m.Count!.Value), count];
        Assert.Equal(at.Select(a => count - a).Order(), at);
        var gaps = at.Zip(at.Skip(1), (a, b) => b - a).ToList();
        Assert.All(gaps, g => Assert.InRange(g, 1, every));
        Assert.True(gaps.Count(g => g != every) <= 3);
    }

    [Fact]
    public void A_mark_on_such_an_edge_is_not_moved_off_a_seam()
    {
        var (_, plan, _) = Planned(Rectangle(("right", Counted(120) with { Points = Ten }), ("left", Counted(120) with { Every = 6 }), ("top", Counted(91))));
        Assert.All(plan.Marks.Where(m => m.Edge is 1 or 3), m => Assert.Null(MarkShift.Moved(plan, m.Number, 1)));
        Assert.Contains(plan.Marks.Where(m => m.Edge == 2), m => MarkShift.Moved(plan, m.Number, 1) is not null);
    }
}
