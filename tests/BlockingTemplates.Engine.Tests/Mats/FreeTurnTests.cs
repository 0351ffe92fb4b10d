using BlockingTemplates.Engine.Mats;
using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Pins;
using BlockingTemplates.Engine.Shapes;
using BlockingTemplates.Engine.Tests.Pins;
using BlockingTemplates.Engine.Tests.Shapes;

namespace BlockingTemplates.Engine.Tests.Mats;

public class FreeTurnTests
{
    private static readonly int[] SomeTurns = [0, 7, 30, 44, 45, 46, 61, 89, 90, 101, 135, 136, 150, 179];

    [Theory]
    [InlineData(0, 9, 6, 1.5)]
    [InlineData(1, 7, 7, 1)]
    [InlineData(2, 6, 9, 0)]
    [InlineData(4, 9, 6, 2)]
    [InlineData(10, 8, 6, 0)]
    [InlineData(12, 8, 8, 0)]
    public void Among_some_turns_the_layout_is_the_one_found_by_laying_out_each_shift(int seed, double width, double height, double border) =>
        IsTheSlowChoice(RandomRings.Of(seed, 19), MatFieldTests.Settings(width, height, border, 0.8, SomeTurns));

    [Theory]
    [InlineData(0, 6, 4)]
    [InlineData(4, 5, 5)]
    public void Among_all_degrees_the_layout_is_the_one_found_by_laying_out_each_shift(int seed, double width, double height) =>
        IsTheSlowChoice(RandomRings.Of(seed, 11), MatFieldTests.Settings(width, height, 0.5, 0.4, [.. MatSettings.EveryDegree]));

    [Theory]
    [InlineData(0, 9, 6, 1.5, 36, 24)]
    [InlineData(1, 7, 7, 1, 28, 21)]
    [InlineData(2, 6, 9, 0, 24, 27)]
    [InlineData(4, 9, 6, 2, 27, 30)]
    [InlineData(10, 8, 6, 0, 32, 18)]
    [InlineData(12, 8, 6, 0, 8, 6)]
    public void On_a_floor_the_layout_is_the_best_of_those_that_fit(int seed, double width, double height, double border, double across, double up)
    {
        var settings = MatFieldTests.Settings(width, height, border, 0.8, SomeTurns);
        IsTheSlowChoice(RandomRings.Of(seed, 19), settings with { Floor = seed % 2 == 0 ? Floor(across, up) : Floor(up, across) });
    }

    [Fact]
    public void A_square_laid_askew_takes_mats_turned_with_it()
    {
        // Three by two mats of 100 mm, 30 degrees askew: exact fit, so no other turn takes six.
        var askew = Affine.Turn(Math.PI / 6);
        Point[] ring = [.. RandomRings.Rectangle(300, 200).Select(askew.Map)];
        var laid = MatField.Plan(MatFieldTests.Plan(ring, 1), MatFieldTests.Settings(100, 100, 0, 0, [.. MatSettings.EveryDegree]));
        Assert.Equal((6, 3, 2, 30.0, -30.0), (laid.Layout.Mats.Count, laid.Layout.Columns, laid.Layout.Rows, laid.Layout.TurnDegrees, laid.Layout.PieceTurnDegrees));
        Assert.All(laid.Pins.Pinned.Ring().Zip(RandomRings.Rectangle(300, 200)), p => Assert.Equal(0, p.First.DistanceTo(p.Second), 9));
    }

    [Fact]
    public void Everything_of_the_plan_turns_with_the_piece()
    {
        var findings = new Findings();
        var plan = PinPlanner.Plan(PieceMaker.Make(DemoTriangle.Request, findings)!, PinSettings.Default, findings)!;
        var settings = MatSettings.Default with { Width = Length.FromCentimetres(60), Turns = [120] };
        var laid = MatField.Plan(plan, settings, (_, _, _) => null);
        Assert.Equal((120.0, -30.0, 300.0, 600.0), (laid.Layout.TurnDegrees, laid.Layout.PieceTurnDegrees, laid.Layout.PitchX, laid.Layout.PitchY));

        var turn = Affine.Turn(-Math.PI / 6);
        var by = laid.Pins.Marks[0].At - turn.Map(plan.Marks[0].At);
        Assert.All(plan.Marks.Zip(laid.Pins.Marks), m =>
        {
            Same(turn.Map(m.First.At) + by, m.Second.At);
            Same(turn.Map(m.First.Rest!.Value) + by, m.Second.Rest!.Value);
            Assert.Equal(0, (turn.Map(m.First.Outward) - m.Second.Outward).Length, 9);
            Assert.Equal(m.First.Pull!.Value.Length, m.Second.Pull!.Value.Length, 9);
            Same(laid.Pins.Pinned.Edges[m.Second.Edge].Curve.At(m.Second.Fraction), m.Second.At);
            Same(laid.Pins.LayLine!.Edges[m.Second.Edge].Curve.At(m.Second.Fraction), m.Second.Rest!.Value);
        });
        var mirror = laid.Pins.Mirror!;
        Assert.Equal(0, (Vector.AtAngle(Math.PI / 3) - mirror.Axis).Length, 6);
        Same(laid.Pins.Pinned.CornerAt(2), mirror.Image(laid.Pins.Pinned.CornerAt(1)));

        static void Same(Point expected, Point actual) => Assert.Equal(0, expected.DistanceTo(actual), 6);
    }

    [Fact]
    public void For_the_demo_the_answer_is_the_best_of_all_turns_each_planned_alone_and_the_same_every_time()
    {
        var findings = new Findings();
        var plan = PinPlanner.Plan(PieceMaker.Make(DemoTriangle.Request, findings)!, PinSettings.Default, findings)!;
        var settings = MatSettings.Default with { Width = Length.FromCentimetres(60) };
        var free = Laid(MatSettings.EveryDegree);
        var alone = MatSettings.EveryDegree.Select(t => Laid([t])).ToList();
        Assert.Equal(alone.Min(Key), Key(free));
        Assert.NotEqual(Key(free), Key(alone[0]));
        for (var again = 0; again < 5; again++)
            Assert.Equal(free.Mats, Laid(MatSettings.EveryDegree).Mats);

        MatLayout Laid(IReadOnlyList<int> turns) => MatField.Plan(plan, settings with { Turns = turns }, (_, _, _) => null).Layout;
        static (int, int, int, double) Key(MatLayout l) => (l.Mats.Count, l.Seats.Count(s => s.NearSeam), l.Columns * l.Rows, l.TurnDegrees);
    }

    [Fact]
    public void A_floor_too_small_is_a_note_with_what_stands_over_and_the_layout_is_the_one_without_it()
    {
        // With the border 300 by 1200 mm: one column of four mats of 300 mm.
        var plan = MatFieldTests.Plan(RandomRings.Rectangle(200, 1100), 2);
        var settings = MatSettings.Default with { SeamClearance = Length.Zero };
        var without = MatField.Plan(plan, settings);
        Assert.Empty(without.Notes);
        Assert.Empty(MatField.Plan(plan, settings with { Floor = Floor(1200, 300) }).Notes);

        var tooShort = MatField.Plan(plan, settings with { Floor = Floor(400, 1000) }, units: LengthUnit.Centimetres);
        Assert.Equal(without.Layout.Mats, tooShort.Layout.Mats);
        var note = Assert.Single(tooShort.Notes);
        Assert.Equal("mats.floor", note.Place);
        Assert.EndsWith("take 30.0 cm by 120.0 cm: 20.0 cm too long.", note.What, StringComparison.Ordinal);
        Assert.Contains("\"free\"", note.Do, StringComparison.Ordinal);

        var bothWays = Assert.Single(MatField.Plan(plan, settings with { Floor = Floor(290, 1000) }, units: LengthUnit.Centimetres).Notes);
        Assert.EndsWith(": 20.0 cm too long and 1.0 cm too wide.", bothWays.What, StringComparison.Ordinal);
    }

    private static void IsTheSlowChoice(IReadOnlyList<Point> ring, MatSettings settings)
    {
        var plan = MatFieldTests.Plan(ring, perEdge: 2);
        Point[] marks = [.. plan.Marks.Select(m => m.At)];
        var turns = settings.Width == settings.Height ? settings.Turns.DistinctBy(t => t % 90).ToArray() : settings.Turns;
        var slow = SlowMats.Best(ring, marks, settings with { Turns = turns });
        var laid = MatField.Plan(plan, settings, (_, _, _) => null);
        if (slow is null)
        {
            Assert.Contains(laid.Notes, n => n.Place == "mats.floor");
            slow = SlowMats.Best(ring, marks, settings with { Turns = turns, Floor = null })!;
        }
        else
            Assert.DoesNotContain(laid.Notes, n => n.Place == "mats.floor");
        var layout = laid.Layout;
        Assert.Equal(
            (slow.Mats, slow.Near, slow.BoxSize, (double)slow.Turn),
            (layout.Mats.Count, layout.Seats.Count(s => s.NearSeam), layout.Columns * layout.Rows, layout.TurnDegrees));
        Assert.True(slow.Cells.SetEquals(layout.Mats.Select(m => new Cell(m.Column, m.Row))));
        Assert.Equal(0, (layout.TurnDegrees + layout.PieceTurnDegrees) % 90);
        var turn = Affine.Turn(layout.PieceTurnDegrees * Math.PI / 180);
        Assert.All(marks.Zip(laid.Pins.Marks), m => Assert.Equal(0, (turn.Map(m.First) - (slow.Corner - Point.Origin)).DistanceTo(m.Second.At), 9));
    }

    private static MatFloor Floor(double across, double up) => new(Length.FromMillimetres(across), Length.FromMillimetres(up));
}
