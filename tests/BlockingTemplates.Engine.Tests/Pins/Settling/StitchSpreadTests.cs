using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Pins;
using BlockingTemplates.Engine.Shapes;
using CsCheck;

namespace BlockingTemplates.Engine.Tests.Pins.Settling;

public class StitchSpreadTests
{
    // One edge of a long thin triangle with a profile of a few knots, on stitches.
    private static readonly Gen<(int Count, double Length, double[] Spacings)> Any =
        Gen.Select(Gen.Int[3, 120], Gen.Double[150, 900], Gen.Double[15, 160].Array[2, 6]);

    [Fact]
    public void On_stitches_it_takes_as_few_gaps_as_any_choice_of_stitches_that_keeps_the_profile()
    {
        Any.Sample(given =>
        {
            var (outline, run, edges, profile) = Case(given);
            var places = new StitchSpread(run, edges, profile, [], false).Places();
            double[] all = [0, .. places, run.Length];
            var stitch = run.Length / given.Count;
            Assert.All(places, p => Assert.Equal(Math.Round(p / stitch), p / stitch, 1e-6));
            for (var i = 1; i < all.Length; i++)
                Assert.True(Shares(profile, all[i - 1], all[i]) <= 1 + 1e-3 || all[i] - all[i - 1] <= stitch * 1.001, $"gap {i} of {all.Length - 1}");
            // The slow and obvious way: for each stitch the fewest gaps that reach it.
            var least = new int[given.Count + 1];
            for (var to = 1; to <= given.Count; to++)
            {
                least[to] = int.MaxValue;
                for (var from = 0; from < to; from++)
                {
                    if (to - from == 1 || Shares(profile, from * stitch, to * stitch) <= 1 - 1e-3)
                        least[to] = Math.Min(least[to], least[from] + 1);
                }
            }

            Assert.True(all.Length - 1 <= least[given.Count], $"{all.Length - 1} gaps, {least[given.Count]} are enough");
        }, iter: 200, seed: "0000RN4vXJ7a");
    }

    [Fact]
    public void A_symmetric_run_gets_symmetric_places_that_keep_the_profile()
    {
        Any.Sample(given =>
        {
            double[] spacings = [.. given.Spacings, .. given.Spacings.Reverse()];
            var (_, run, edges, profile) = Case((given.Count, given.Length, spacings));
            var places = new StitchSpread(run, edges, profile, [], true).Places();
            Assert.Equal(places.Select(p => Math.Round(p, 6)), places.Reverse().Select(p => Math.Round(run.Length - p, 6)));
            double[] all = [0, .. places, run.Length];
            var stitch = run.Length / given.Count;
            for (var i = 1; i < all.Length; i++)
                Assert.True(Shares(profile, all[i - 1], all[i]) <= 1 + 1e-3 || all[i] - all[i - 1] <= 2 * stitch * 1.001, $"gap {i} of {all.Length - 1}");
        }, iter: 200, seed: "0000RN4vXJ7b");
    }

    [Fact]
    public void Asked_for_fewer_gaps_it_lets_all_of_them_out()
    {
        var (_, run, edges, profile) = Case((100, 500, [40, 40]));
        Assert.Equal(12, new StitchSpread(run, edges, profile, [], false).Places().Count);
        Assert.Equal(10, new StitchSpread(run, edges, profile, [], false, fewer: 2).Places().Count);
    }

    [Theory]
    [InlineData(20, 80)]
    [InlineData(80, 20)]
    [InlineData(50, 50)]
    public void Shares_of_a_linear_profile_are_those_of_the_integral(double first, double last)
    {
        var outline = Triangle(400);
        var profile = new SpacingProfile(outline, [(0, first), (400, last)]);
        var steps = Enumerable.Range(0, 40_000).Select(k => 0.01 / profile.At((k + 0.5) * 0.01)).Sum();
        Assert.Equal(steps, profile.SharesUpTo(400) - profile.SharesUpTo(0), 1e-6);
        Assert.Equal(profile.SharesUpTo(profile.LengthMm) + profile.SharesUpTo(10), profile.SharesUpTo(profile.LengthMm + 10), 1e-9);
    }

    private static double Shares(SpacingProfile profile, double from, double to) => profile.SharesUpTo(to) - profile.SharesUpTo(from);

    private static (Outline Outline, EdgeRun Run, EdgePlan[] Edges, SpacingProfile Profile) Case((int Count, double Length, double[] Spacings) given)
    {
        var outline = Triangle(given.Length);
        EdgePlan[] edges = [.. new EdgeTreatment[] { new(given.Count, CountedIn.Stitches, Holding.Pins), EdgeTreatment.Unsaid, EdgeTreatment.Unsaid }.Select(t =>
            new EdgePlan { Name = "", Treatment = t, FinishedMm = given.Length, PinnedMm = given.Length, SpacingMm = 0, SpacingRule = "" })];
        var run = EdgeRun.Of(outline, _ => true, default)[0];
        var last = given.Spacings.Length - 1;
        return (outline, run, edges, new(outline, given.Spacings.Select((s, i) => (given.Length * i / last, s))));
    }

    private static Outline Triangle(double length)
    {
        Point[] corners = [new(0, 0), new(length, 0), new(length / 2, 300)];
        return new(
            [.. corners.Select((c, i) => new Edge($"edge {i}", new StraightEdge(c, corners[(i + 1) % 3])))],
            [.. corners.Select((_, i) => new Corner($"corner {i}"))]);
    }
}
