using BlockingTemplates.Engine.Shapes;
using CsCheck;

namespace BlockingTemplates.Engine.Tests.Shapes;

public class CorrespondenceTests
{
    private static readonly Gen<Correspondence> Any = Gen.Select(Gen.Double[0.01, 1].Array[2, 9], Gen.Double[0.01, 1].Array[9], Gen.Double[0.01, 1].Array[9], (a, b, c) =>
    {
        double[] Rising(double[] steps) => [0, .. Enumerable.Range(1, a.Length - 1).Select(i => steps.Take(i).Sum() / steps.Take(a.Length).Sum()), 1];
        var (x, y, z) = (Rising(a), Rising(b), Rising(c));
        return new Correspondence([.. x.Select((s, i) => (s, y[i], z[i]))]);
    });

    [Fact]
    public void Even_ones_give_back_the_very_same_number() =>
        Gen.Double[0, 1].Check(200, f =>
        {
            Assert.Equal(f, Correspondence.Even.ShareAt(f));
            Assert.Equal(f, Correspondence.Even.PinnedAt(f));
            Assert.Equal(f, Correspondence.Even.UnblockedAt(f));
        });

    [Fact]
    public void Known_places_are_met_and_straight_lines_lie_between()
    {
        // Stitch 40 of 100 lies at 30 % of the unblocked edge and shall lie at 50 % of the pinned one.
        var match = new Correspondence([(0, 0, 0), (0.4, 0.5, 0.3), (1, 1, 1)]);
        Assert.Equal(0.3, match.UnblockedAt(0.5));
        Assert.Equal(0.5, match.PinnedAt(0.4));
        Assert.Equal(0.2, match.ShareAt(0.25), 12);
        Assert.Equal(0.15, match.UnblockedAt(0.25), 12);
        Assert.Equal(0.65, match.UnblockedAt(0.75), 12);
    }

    [Fact]
    public void Every_way_there_has_its_way_back() =>
        Gen.Select(Any, Gen.Double[0, 1]).Check(300, x =>
        {
            var (match, f) = x;
            Assert.Equal(f, match.PinnedAt(match.ShareAt(f)), 9);
            Assert.Equal(f, match.PinnedOf(match.UnblockedAt(f)), 9);
        });

    [Fact]
    public void It_mirrors_its_own_mirror_image_and_no_other()
    {
        var match = new Correspondence([(0, 0, 0), (0.4, 0.5, 0.3), (1, 1, 1)]);
        var mirrored = new Correspondence([(0, 0, 0), (0.6, 0.5, 0.7), (1, 1, 1)]);
        Assert.True(match.Mirrors(mirrored) && mirrored.Mirrors(match));
        Assert.False(match.Mirrors(match));
        Assert.False(match.Mirrors(Correspondence.Even));
        Assert.True(Correspondence.Even.Mirrors(Correspondence.Even));
    }

    [Fact]
    public void Places_that_do_not_increase_from_0_to_1_are_refused()
    {
        Assert.Throws<ArgumentException>(() => new Correspondence([(0, 0, 0), (0.5, 0.6, 0.5), (0.6, 0.6, 0.6), (1, 1, 1)]));
        Assert.Throws<ArgumentException>(() => new Correspondence([(0, 0, 0), (0.5, 0.5, 0.5)]));
        Assert.Throws<ArgumentOutOfRangeException>(() => Correspondence.Even.ShareAt(1.01));
    }
}
