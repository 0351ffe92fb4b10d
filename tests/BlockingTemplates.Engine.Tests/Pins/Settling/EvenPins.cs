using BlockingTemplates.Engine.Fabrics;
using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Pins;
using BlockingTemplates.Engine.Pins.Settling;

namespace BlockingTemplates.Engine.Tests.Pins.Settling;

// The best that even spacing can do on the same cloth: on each edge by itself the fewest evenly spaced pins, on stitches,
// that keep every gap of it within the tolerance.
internal static class EvenPins
{
    private const int MostRounds = 60;

    public static SettledPins Best(PinnedCloth cloth, Piece piece, PinPlan plan, SpacingLimits limits, int perEdge = 6)
    {
        var n = piece.Edges.Count;
        int[] gaps = [.. Enumerable.Repeat(perEdge, n)];
        var failsAt = new int[n];
        SettledPins? best = null, last = null;
        for (var round = 0; round < MostRounds; round++)
        {
            var settled = cloth.Settle(Spread(plan, piece, gaps), last?.Rest.Places, Computation.Whole);
            Assert.True(settled.Rest.Converged);
            last = settled;
            var worst = new double[n];
            foreach (var gap in settled.Gaps.Where(g => g.Determined != false))
                worst[gap.Edge] = Math.Max(worst[gap.Edge], Math.Abs(gap.ScallopMm));
            var fails = Enumerable.Range(0, n).Where(e => worst[e] > limits.ScallopMm * (1 + SpacingLimits.Reading)).ToList();
            if (fails.Count == 0 && (best is null || settled.Plan.Marks.Count < best.Plan.Marks.Count))
                best = settled;
            var changed = false;
            for (var e = 0; e < n; e++)
            {
                if (fails.Contains(e))
                {
                    failsAt[e] = Math.Max(failsAt[e], gaps[e]);
                    gaps[e] = Math.Max(gaps[e] + 1, (int)(gaps[e] * Math.Min(1.5, 0.97 * Math.Pow(worst[e] / limits.ScallopMm, 0.8))));
                    changed = true;
                }
                else if (gaps[e] - 1 > failsAt[e])
                {
                    gaps[e] = Math.Max(failsAt[e] + 1, gaps[e] - Math.Max(1, (gaps[e] - failsAt[e]) / 2));
                    changed = true;
                }
            }

            if (!changed)
                break;
        }

        return Assert.IsType<SettledPins>(best);
    }

    private static PinPlan Spread(PinPlan plan, Piece piece, int[] gaps)
    {
        List<(double, double)> knots = [];
        var at = 0.0;
        for (var e = 0; e < gaps.Length; e++)
        {
            var length = plan.Edges[e].PinnedMm;
            // A little wider than even, so that the nearest stitch never asks for another gap.
            var mm = Math.Min(length, (length / gaps[e]) + (piece.Edges[e].Count is { } count ? length / count : 0));
            knots.Add((at, mm));
            knots.Add((at += length, mm));
        }

        return PinPlanner.Respaced(plan, piece, new(plan.Pinned, knots));
    }
}
