using BlockingTemplates.Engine.Mats;
using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Pins;
using BlockingTemplates.Engine.Shapes;
using BlockingTemplates.Engine.Tests.Shapes;

namespace BlockingTemplates.Engine.Tests.Mats;

/// <summary>A band of three mats (A1 to C1), 850 mm wide with 25 mm border on each side: the one way to lay them has its seams at 275 and 575 from the band's left.</summary>
public class SeamTests
{
    private static readonly MatSettings Mats = MatSettings.Default with { Border = Length.FromMillimetres(25) };

    [Fact]
    public void A_mark_near_a_seam_moves_by_one_stitch_to_the_side_that_leaves_more()
    {
        var moves = new List<(int Number, int Stitches)>();
        var laid = MatField.Plan(Band(100, 272, 700), Mats, (plan, number, stitches) =>
        {
            moves.Add((number, stitches));
            return Moved(plan, number, 12 * stitches);
        });
        Assert.Equal([100 + 25.0, 260 + 25, 700 + 25], laid.Pins.Marks.Select(m => m.At.X));
        Assert.All(moves, m => Assert.Equal(2, m.Number));
        Assert.DoesNotContain(laid.Layout.Seats, s => s.NearSeam);
        Assert.Equal([175.0, 15, 125], laid.Layout.Seats.Select(s => s.SeamMm));
        Assert.Empty(laid.Notes);
    }

    [Fact]
    public void The_other_side_is_taken_where_the_better_one_is_not_allowed()
    {
        var laid = MatField.Plan(Band(272), Mats, (plan, number, stitches) => stitches < 0 ? null : Moved(plan, number, 12));
        Assert.Equal(284 + 25.0, laid.Pins.Marks[0].At.X);
        Assert.Equal(("B1", 9.0, false), (laid.Layout.Seats[0].Mat, laid.Layout.Seats[0].SeamMm, laid.Layout.Seats[0].NearSeam));
    }

    [Fact]
    public void A_mark_that_a_stitch_does_not_take_out_stays_and_its_seam_is_to_be_taped()
    {
        var laid = MatField.Plan(Band(272, 578), Mats, (plan, number, stitches) => Moved(plan, number, 2 * stitches));
        Assert.Equal([272 + 25.0, 578 + 25], laid.Pins.Marks.Select(m => m.At.X));
        Assert.All(laid.Layout.Seats, s => Assert.True(s.NearSeam));
        var note = Assert.Single(laid.Notes);
        Assert.Equal("mats.seamClearance", note.Place);
        Assert.StartsWith("Marks 1, 2 stand within the seam clearance", note.What, StringComparison.Ordinal);
    }

    [Fact]
    public void A_mark_stays_where_the_move_would_bring_its_partner_near_a_seam()
    {
        // Partners at 272 and 593: 12 mm forward takes the first out and brings the second, moved as much back, to 581.
        PinPlan? Both(PinPlan plan, int number, int stitches) =>
            stitches < 0 ? null : Moved(Moved(plan, number, 12), number == 1 ? 2 : 1, -12);

        var laid = MatField.Plan(Band(272, 593), Mats, Both);
        Assert.Equal([272 + 25.0, 593 + 25], laid.Pins.Marks.Select(m => m.At.X));
        Assert.True(laid.Layout.Seats[0].NearSeam);
        Assert.False(laid.Layout.Seats[1].NearSeam);
    }

    [Fact]
    public void The_field_border_is_no_seam()
    {
        var laid = MatField.Plan(Band(0, 850), Mats with { Border = Length.FromMillimetres(25), SeamClearance = Length.FromMillimetres(40) }, (_, _, _) => null);
        Assert.DoesNotContain(laid.Layout.Seats, s => s.NearSeam);
    }

    [Fact]
    public void Seams_that_a_pull_crosses_within_reach_of_its_mark_are_listed_once_with_their_marks()
    {
        // Rests 60 mm inward (to the right), 60 mm inward, 200 mm inward with the seam at 101 mm, none.
        var plan = Band(250, 240, 174, 500);
        double?[] inward = [60, 60, 200, null];
        plan = plan with { Marks = [.. plan.Marks.Select((m, i) => m with { Rest = inward[i] is { } by ? m.At + new Vector(by, 0) : null })] };
        var laid = MatField.Plan(plan, Mats, (_, _, _) => null);
        var seam = Assert.Single(laid.Layout.CrossedSeams);
        Assert.Equal(("A1", "B1"), (seam.First, seam.Second));
        Assert.Equal((new Point(300, 0), new Point(300, 300)), (seam.From, seam.To));
        Assert.Equal([1, 2], seam.Marks);
        Assert.Contains("A1 to B1 (marks 1, 2)", Assert.Single(laid.Notes).What, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_an_unblocked_outline_no_seam_is_crossed() =>
        Assert.Empty(MatField.Plan(Band(250, 300), Mats, (_, _, _) => null).Layout.CrossedSeams);

    [Fact]
    public void A_pull_that_ends_short_of_the_seam_crosses_none()
    {
        var plan = Band(250);
        plan = plan with { Marks = [plan.Marks[0] with { Rest = plan.Marks[0].At + new Vector(24.9, 0) }] };
        Assert.Empty(MatField.Plan(plan, Mats, (_, _, _) => null).Layout.CrossedSeams);
        plan = plan with { Marks = [plan.Marks[0] with { Rest = plan.Marks[0].At + new Vector(25.1, 0) }] };
        Assert.Single(MatField.Plan(plan, Mats, (_, _, _) => null).Layout.CrossedSeams);
    }

    private static PinPlan Band(params double[] marksAt)
    {
        var plan = MatFieldTests.Plan(RandomRings.Rectangle(850, 250), 1);
        return plan with
        {
            Marks = [.. marksAt.Select((x, i) => plan.Marks[0] with { Number = i + 1, Fraction = x / 850, At = new(x, 0) })],
        };
    }

    private static PinPlan Moved(PinPlan plan, int number, double by) =>
        plan with { Marks = [.. plan.Marks.Select(m => m.Number == number ? m with { At = m.At + new Vector(by, 0) } : m)] };
}
