using BlockingTemplates.Engine.Fabrics;
using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Pins;
using BlockingTemplates.Engine.Tests.Pieces;
using CsCheck;

namespace BlockingTemplates.Engine.Tests.Pins;

public sealed class UnitsTests
{
    /// <summary>Whole centimetres on purpose: stitches and spacings then fall on ties, where the last digit decides if it may.</summary>
    private static readonly Gen<(int Wingspan, int Depth, int Side, int Bow, int Count, int Spacing, int Back)> Triangles = Gen.Select(
        Gen.Int[60, 200], Gen.Int[30, 100], Gen.Int[60, 90], Gen.Int[-3, 6], Gen.Int[1, 300], Gen.Int[2, 9], Gen.Int[0, 4]);

    [Fact]
    public void The_same_piece_in_inches_and_in_millimetres_gives_the_same_plan()
    {
        var differing = 0;
        Triangles.Check(200, t =>
        {
            var inches = Plan(t, mm => Length.FromInches(Length.FromMillimetres(mm).Inches));
            var metric = Plan(t, Length.FromMillimetres);
            differing += Length.FromInches(Length.FromMillimetres(10 * t.Wingspan).Inches).Millimetres == 10 * t.Wingspan ? 0 : 1;
            Assert.Equal(metric.Marks.Count, inches.Marks.Count);
            foreach (var (a, b) in metric.Marks.Zip(inches.Marks))
            {
                Assert.Equal((a.Number, a.Round, a.Edge, a.Count, a.IsAnchor), (b.Number, b.Round, b.Edge, b.Count, b.IsAnchor));
                Assert.Equal(a.Fraction, b.Fraction, 1e-9);
                Assert.InRange(a.At.DistanceTo(b.At), 0, 1e-8);
                Assert.InRange(a.Rest!.Value.DistanceTo(b.Rest!.Value), 0, 1e-8);
            }

            foreach (var (a, b) in metric.Edges.Zip(inches.Edges))
            {
                Assert.Equal(a.PinnedMm, b.PinnedMm, 1e-9);
                Assert.Equal(a.Stretch!.Value, b.Stretch!.Value, 1e-9);
                Assert.Equal((a.SpacingRule, a.MayDipMm is null), (b.SpacingRule, b.MayDipMm is null));
            }
        });
        Assert.True(differing > 5, "The two units must differ in the last digit for this to mean anything.");
    }

    private static PinPlan Plan((int Wingspan, int Depth, int Side, int Bow, int Count, int Spacing, int Back) t, Func<double, Length> length)
    {
        IReadOnlyDictionary<string, Length> Cm(params (string Name, int Cm)[] all) => all.ToDictionary(a => a.Name, a => length(10 * a.Cm));
        var request = new PieceRequest(
            new TrianglePiece(),
            new() { Path = "piece.finished", Sizes = Cm(("wingspan", t.Wingspan), ("depth", t.Depth)) },
            new() { Path = "piece.unblocked", Sides = Cm(("top", 100), ("left", t.Side), ("right", t.Side)), Bows = Cm(("left", t.Bow), ("right", t.Bow)) },
            new Dictionary<string, EdgeTreatment> { ["top"] = new(t.Count, CountedIn.Stitches, Holding.Pins) },
            WorkSide.RightSide,
            WorkSide.RightSide,
            false,
            FabricSettings.Unsaid with { Stitch = (length(7), length(6)), SpringBack = new(t.Back / 100.0, t.Back / 200.0) });
        return Assert.IsType<PinPlan>(PinPlanner.Plan(Given.Made(request), PinSettings.Default with { Spacing = length(10 * t.Spacing) }, new Findings()));
    }
}
