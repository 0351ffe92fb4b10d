using BlockingTemplates.Engine.Mats;
using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Pins;
using BlockingTemplates.Engine.Shapes;
using BlockingTemplates.Engine.Tests.Shapes;

namespace BlockingTemplates.Engine.Tests.Mats;

public class MatFieldTests
{
    [Theory]
    [InlineData(0, 12, 12, 3)]
    [InlineData(1, 12, 9, 3)]
    [InlineData(2, 9, 12, 1.5)]
    [InlineData(3, 12, 7.62, 2)]
    [InlineData(4, 12, 9, 0)]
    [InlineData(5, 8, 8, 0)]
    [InlineData(8, 10, 14, 2.5)]
    [InlineData(10, 12, 12, 0)]
    // In these the fewest marks near seams and the smallest box are not had together.
    [InlineData(4, 12, 9, 1)]
    [InlineData(6, 8, 10, 0.5)]
    [InlineData(14, 12, 9, 1)]
    [InlineData(50, 8, 10, 0.5)]
    public void The_layout_is_the_one_found_by_laying_out_every_turn_and_shift(int seed, double width, double height, double border)
    {
        var ring = RandomRings.Of(seed, 30);
        var plan = Plan(ring, perEdge: 3);
        var settings = Settings(width, height, border, 0.8, width == height ? [0] : [0, 90]);
        var slow = SlowMats.Best(ring, [.. plan.Marks.Select(m => m.At)], settings)!;

        var layout = MatField.Plan(plan, settings with { Turns = [0, 90] }, (_, _, _) => null);

        Assert.Equal(slow.Mats, layout.Layout.Mats.Count);
        Assert.Equal(slow.Near, layout.Layout.Seats.Count(s => s.NearSeam));
        Assert.Equal(slow.BoxSize, layout.Layout.Columns * layout.Layout.Rows);
        Assert.Equal(slow.Turn, layout.Layout.TurnDegrees);
        Assert.True(slow.Cells.SetEquals(layout.Layout.Mats.Select(m => new Cell(m.Column, m.Row))));
        var by = layout.Pins.Marks[0].At - plan.Marks[0].At;
        Assert.Equal(0, (by - (Point.Origin - slow.Corner)).Length, 9);
        Assert.All(layout.Layout.Seats, s =>
        {
            var at = layout.Pins.Marks[s.Number - 1].At;
            Assert.Equal(SlowMats.SeamDistance(at, slow.Cells, Point.Origin, layout.Layout.PitchX, layout.Layout.PitchY), s.SeamMm, 9);
            var mat = layout.Layout.Mats.Single(m => m.Name == s.Mat);
            Assert.Equal(0, (mat.At + s.OnMat - at).Length, 9);
            Assert.InRange(s.OnMat.X, -0.0101, layout.Layout.PitchX + 0.0101);
            Assert.InRange(s.OnMat.Y, -0.0101, layout.Layout.PitchY + 0.0101);
        });
    }

    [Fact]
    public void Everything_moves_into_the_frame_together_and_nothing_is_rounded()
    {
        var ring = RandomRings.Rectangle(700.0625, 330.1875, left: 17.125, lower: -40.5);
        var plan = Plan(ring, 4) with { LayLine = StraightLine.Outline(RandomRings.Rectangle(600, 300)) };
        var laid = MatField.Plan(plan, MatSettings.Default, (_, _, _) => null);
        var by = laid.Pins.Marks[0].At - plan.Marks[0].At;
        Assert.Equal(plan.Marks.Select(m => m.At + by), laid.Pins.Marks.Select(m => m.At));
        Assert.Equal(plan.Pinned.Ring().Select(p => p + by), laid.Pins.Pinned.Ring());
        Assert.Equal(plan.LayLine.Ring().Select(p => p + by), laid.Pins.LayLine!.Ring());
        Assert.Equal((3, 2), (laid.Layout.Columns, laid.Layout.Rows));
        Assert.Equal(["A1", "B1", "C1", "A2", "B2", "C2"], laid.Layout.Mats.Select(m => m.Name));
        Assert.Equal(new Point(300, 300), laid.Layout.Mats[4].At);
        var box = Box.Around(laid.Pins.Pinned.Ring());
        Assert.True(new Box(50, 50, 850, 550).Grown(0.01).Holds(box));
    }

    [Fact]
    public void Columns_past_Z_take_two_letters()
    {
        var laid = MatField.Plan(Plan(RandomRings.Rectangle(20 * 55, 15), 1), Settings(20, 20, 0, 0, [0]));
        Assert.Equal(55, laid.Layout.Mats.Count);
        Assert.Equal(["Y1", "Z1", "AA1", "AB1"], laid.Layout.Mats.Skip(24).Take(4).Select(m => m.Name));
        Assert.Equal(["AZ1", "BA1"], laid.Layout.Mats.Skip(51).Take(2).Select(m => m.Name));
    }

    [Fact]
    public void A_single_mat_has_no_seams()
    {
        var laid = MatField.Plan(Plan(RandomRings.Rectangle(100, 100), 3), MatSettings.Default);
        Assert.All(laid.Layout.Seats, s => Assert.Equal(("A1", double.PositiveInfinity, false), (s.Mat, s.SeamMm, s.NearSeam)));
        Assert.Empty(laid.Notes);
    }

    [Fact]
    public void Mats_missing_are_told_and_mats_enough_are_not()
    {
        var plan = Plan(RandomRings.Rectangle(700, 400), 1);
        var settings = MatSettings.Default with { SeamClearance = Length.Zero };
        Assert.Empty(MatField.Plan(plan, settings with { Owned = 6 }).Notes);
        var note = Assert.Single(MatField.Plan(plan, settings with { Owned = 4 }).Notes);
        Assert.Equal("mats.owned", note.Place);
        Assert.Equal("6 mats needed, 4 at hand: 2 missing.", note.What);
    }

    [Fact]
    public void Rectangular_mats_are_turned_where_that_takes_fewer()
    {
        // 300 x 1200 mm with the border: four mats of 600 x 300 lying, two standing.
        var plan = Plan(RandomRings.Rectangle(200, 1100), 2);
        var lying = MatSettings.Default with { Width = Length.FromMillimetres(600), SeamClearance = Length.Zero, Turns = [0] };
        Assert.Equal((4, 0.0, 600.0, 300.0), Laid(lying));
        Assert.Equal((2, 90.0, 300.0, 600.0), Laid(lying with { Turns = [90, 0] }));

        // 350 mm wide: four either way, so they lie as they are.
        plan = Plan(RandomRings.Rectangle(250, 1100), 2);
        Assert.Equal((4, 90.0, 300.0, 600.0), Laid(lying with { Turns = [90] }));
        Assert.Equal((4, 0.0, 600.0, 300.0), Laid(lying with { Turns = [90, 0] }));

        (int, double, double, double) Laid(MatSettings settings)
        {
            var layout = MatField.Plan(plan, settings).Layout;
            return (layout.Mats.Count, layout.TurnDegrees, layout.PitchX, layout.PitchY);
        }
    }

    [Theory]
    [InlineData]
    [InlineData(-1)]
    [InlineData(0, 180)]
    public void Turns_outside_a_half_turn_throw(params int[] turns) =>
        Assert.Throws<ArgumentException>(() => MatField.Plan(Plan(RandomRings.Rectangle(9, 9), 1), Settings(10, 10, 0, 0, turns)));

    internal static MatSettings Settings(double width, double height, double border, double clearance, int[] turns) => new(
        Length.FromMillimetres(width), Length.FromMillimetres(height), Length.FromMillimetres(border), Length.FromMillimetres(clearance), turns, null);

    internal static PinPlan Plan(IReadOnlyList<Point> ring, int perEdge)
    {
        var outline = StraightLine.Outline(ring);
        var marks = from edge in Enumerable.Range(0, ring.Count)
                    from k in Enumerable.Range(0, perEdge)
                    let curve = outline.Edges[edge].Curve
                    select new Mark
                    {
                        Number = (edge * perEdge) + k + 1,
                        Round = 1,
                        Edge = edge,
                        Fraction = (double)k / perEdge,
                        At = curve.At((double)k / perEdge),
                        Outward = curve.Direction(0).TurnedRight,
                    };
        return new()
        {
            Pinned = outline,
            Anchor = new(AnchorKind.None, 0, "none"),
            Rule = new(outline, 50, 15, [.. outline.Edges.Select(_ => false)]),
            Edges = [],
            Marks = [.. marks],
        };
    }
}
