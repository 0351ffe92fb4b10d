using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Pins;
using BlockingTemplates.Engine.Tests.Pieces;
using CsCheck;

namespace BlockingTemplates.Engine.Tests.Pins;

public sealed class RoundOrderTests
{
    /// <summary>The definition of rounds, slowly: one mark at a time, each gap found by walking from mark to mark.</summary>
    [Fact]
    public void Rounds_and_numbers_are_those_of_the_definition() => Gen.OneOf(RandomPieces.Any, RandomPieces.Symmetric).Check(250, given =>
    {
        var plan = RandomPieces.Plan(given);
        var walk = new RingWalk(plan);
        List<Mark> ring = [.. plan.Marks.OrderBy(m => m.Edge).ThenBy(m => m.Fraction)];
        var n = ring.Count;
        double[] at = [.. ring.Select(walk.Position)];
        double Ahead(int from, int to) => to == from ? plan.Pinned.Length : ((at[to] - at[from]) + plan.Pinned.Length) % plan.Pinned.Length;
        bool IsSharp(Mark m) => m.Fraction == 0 && !plan.Pinned.Corners[m.Edge].Smooth;

        // Where the walk starts: the anchor's first mark, else the first corner, else the first place.
        List<int> anchors = [.. Enumerable.Range(0, n).Where(i => ring[i].IsAnchor)];
        List<int> corners = [.. Enumerable.Range(0, n).Where(i => IsSharp(ring[i]) && !ring[i].IsAnchor)];
        var first = anchors.Count > 0
            ? anchors.Count == n ? 0 : anchors.First(i => !ring[(i + n - 1) % n].IsAnchor)
            : corners.Count > 0 ? corners[0] : 0;
        double FromStart(int i) => i == first ? 0 : Ahead(first, i);

        var round = new int[n];
        List<int> order = [];
        void Take(int i, int r)
        {
            round[i] = r;
            order.Add(i);
        }

        foreach (var i in anchors.OrderBy(FromStart))
            Take(i, 1);
        if (anchors.Count == 0 && corners.Count == 0)
            Take(first, 2);
        List<int> left = [.. corners.OrderBy(FromStart)];
        while (left.Count > 0)
        {
            var next = order.Count == 0 ? left[0] : left.OrderByDescending(c => Math.Round(ring[c].At.DistanceTo(ring[order[^1]].At), 3)).First();
            Take(next, 2);
            left.Remove(next);
        }

        for (var current = 3; order.Count < n; current++)
        {
            // For every unset mark, the set marks before and behind it.
            var gapOf = new Dictionary<int, (int Before, int Behind)>();
            for (var i = 0; i < n; i++)
            {
                if (round[i] != 0)
                    continue;
                int before = i, behind = i;
                do before = (before + n - 1) % n; while (round[before] == 0);
                do behind = (behind + 1) % n; while (round[behind] == 0);
                gapOf[i] = (before, behind);
            }

            var gaps = gapOf.GroupBy(g => g.Value).ToList();
            List<int> chosen = gaps.TrueForAll(g => g.Count() <= 3)
                ? [.. gapOf.Keys]
                : [.. gaps.Where(g => Ahead(g.Key.Before, g.Key.Behind) > (gaps.Max(o => Ahead(o.Key.Before, o.Key.Behind)) / 2) + 1e-6).Select(g => g.Select(m => m.Key)
                    .OrderBy(m => Math.Round(Math.Abs(Ahead(g.Key.Before, m) - (Ahead(g.Key.Before, g.Key.Behind) / 2)), 6))
                    .ThenBy(m => Math.Round(Math.Min(FromStart(m), plan.Pinned.Length - FromStart(m)), 6))
                    .ThenBy(m => Ahead(g.Key.Before, m))
                    .First())];
            foreach (var i in chosen.OrderBy(FromStart))
                Take(i, current);
        }

        for (var k = 0; k < n; k++)
        {
            Assert.Equal(k + 1, ring[order[k]].Number);
            Assert.Equal(round[order[k]], ring[order[k]].Round);
        }
    });

    [Fact]
    public void A_triangle_is_pinned_foot_then_tips_then_halves_its_edges()
    {
        var plan = Plan(Given.Request(new TrianglePiece(), Given.Finished(("wingspan", 1480), ("depth", 740)), null), null);
        Assert.Equal(["foot", "right tip", "left tip"], plan.Marks.Take(3).Select(m => plan.Pinned.Corners[m.Edge].Name));
        Assert.Equal([1, 2, 2], plan.Marks.Take(3).Select(m => m.Round));
        // Edges of 1047, 1480 and 1047 mm: all wider than half the widest, so round 3 halves all of them in one walk.
        Assert.Equal([("right", 3), ("top", 3), ("left", 3)], plan.Marks.Skip(3).Take(3).Select(m => (plan.Edges[m.Edge].Name, m.Round)));
        Assert.Equal(4, plan.Marks[6].Round);
        var last = plan.Marks.Where(m => m.Round == plan.Marks[^1].Round).Select(m => (m.Edge, m.Fraction)).ToList();
        Assert.Equal(last.Order(), last);
    }

    [Fact]
    public void An_anchored_edge_is_pinned_in_one_walk_from_its_first_corner()
    {
        foreach (var (name, index) in new[] { ("right", 0), ("top", 1), ("left", 2) })
        {
            var plan = Plan(Given.Request(new TrianglePiece(), Given.Finished(("wingspan", 1480), ("depth", 740)), null), name);
            var anchored = plan.Marks.Where(m => m.IsAnchor).ToList();
            Assert.Equal((index, 0.0), (anchored[0].Edge, anchored[0].Fraction));
            Assert.Equal(((index + 1) % 3, 0.0), (anchored[^1].Edge, anchored[^1].Fraction));
            Assert.Contains(anchored, m => m.Edge == index && m.Fraction == 0.5);
            Assert.True(anchored.Count > 10);
            Assert.Equal(Enumerable.Range(1, anchored.Count), anchored.Select(m => m.Number));
            Assert.Equal(anchored.SkipLast(1).OrderBy(m => m.Fraction), anchored.SkipLast(1));
        }
    }

    [Fact]
    public void Opposite_corners_of_a_rectangle_come_in_turn()
    {
        var plan = Plan(Given.Request(new RectanglePiece(), Given.Finished(("width", 400), ("length", 1500)), null), "lower left");
        Assert.Equal(["lower left", "upper right", "lower right", "upper left"], plan.Marks.Take(4).Select(m => plan.Pinned.Corners[m.Edge].Name));
        Assert.Equal([1, 2, 2, 2], plan.Marks.Take(4).Select(m => m.Round));
    }

    private static PinPlan Plan(PieceRequest request, string? anchor) =>
        Assert.IsType<PinPlan>(PinPlanner.Plan(Given.Made(request), PinSettings.Default with { Anchor = anchor }, new Findings()));
}
