using BlockingTemplates.Engine.Fabrics;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Tests.Fabrics;

public class FreeEdgeTests
{
    private static readonly OrthotropicCloth Cloth = new(1, 0.6, 0.4, 0.25);

    [Fact]
    public void Distances_are_those_to_a_finely_drawn_outline()
    {
        // Slow and obvious: the nearest of many points all along the edge, its side by the direction of travel there.
        var mesh = PinnedPiece.Of(Outlines.Crescent, Outlines.PinnedCrescent, 50, 12, 40).Mesh;
        var edges = new FreeEdge(mesh, Outlines.PinnedCrescent);
        var random = new Random(3);
        for (var node = 3; node < mesh.Rim.Count; node += 7)
        {
            var curve = Outlines.PinnedCrescent.Edges[mesh.Rim[node].Edge].Curve;
            if (mesh.Rim[node].Fraction is < 0.03 or > 0.97)
                continue;
            var place = curve.At(mesh.Rim[node].Fraction) + new Vector((16 * random.NextDouble()) - 8, (16 * random.NextDouble()) - 8);
            var (distance, fraction) = Enumerable.Range(0, 40001).Select(k => (place.DistanceTo(curve.At(k / 40000.0)), k / 40000.0)).Min();
            var side = curve.Direction(fraction).Cross(place - curve.At(fraction)) > 0 ? 1 : -1;
            Assert.Equal(side * distance, edges.Inside(node, place), 0.01);
        }
    }

    [Fact]
    public void A_pulled_straight_edge_dips_inside_and_a_hollow_one_lies_outside()
    {
        var straight = PinnedPiece.Of(Outlines.Rectangle(600, 400), Outlines.Rectangle(690, 480), 60, 15, 40);
        var gaps = new FreeEdge(straight.Mesh, straight.Pinned).Gaps(straight.Support, straight.Solve(Cloth));
        Assert.Equal(straight.Support.Pins.Count, gaps.Count);
        Assert.All(gaps, g => Assert.InRange(g.ScallopMm, 0.5, 12));
        Assert.Equal(Enumerable.Range(0, gaps.Count), gaps.Select(g => g.FromPin));
        Assert.All(gaps, g => Assert.Equal((g.FromPin + 1) % gaps.Count, g.ToPin));

        // The hollow edge of a crescent with few pins: pulled along, the cloth cuts across and lies outside.
        var hollow = PinnedPiece.Of(Outlines.Crescent, Outlines.Of((-720, 0, 320), (720, 0, -230)), 160, 15, 40);
        var rest = hollow.Solve(Cloth);
        var edge = new FreeEdge(hollow.Mesh, hollow.Pinned).Gaps(hollow.Support, rest).Where(g => hollow.Support.Pins[g.FromPin].Edge == 1);
        Assert.Contains(edge, g => g.ScallopMm < -0.5);
    }

    [Fact]
    public void Knows_that_a_pulled_piece_determines_its_edge_and_a_slack_one_does_not()
    {
        var taut = PinnedPiece.Of(Outlines.Triangle, Outlines.PinnedTriangle, 50, 15, 40);
        var rest = taut.Solve(Cloth, new() { TrySlack = true });
        Assert.True(rest.SlackTried);
        Assert.All(new FreeEdge(taut.Mesh, taut.Pinned).Gaps(taut.Support, rest), g => Assert.True(g.Determined));

        // Pulled longer and pushed narrower: wrinkled, yet the pull along decides where the short sides lie.
        var wrinkled = PinnedPiece.Of(Outlines.Rectangle(400, 300), Outlines.Rectangle(480, 285), 100, 15, 30);
        var drawn = wrinkled.Solve(Cloth, new() { TrySlack = true });
        Assert.Contains(drawn.Stretches, s => s.State == ClothState.Wrinkled);
        Assert.NotNull(drawn.OtherPlaces);
        Assert.All(new FreeEdge(wrinkled.Mesh, wrinkled.Pinned).Gaps(wrinkled.Support, drawn), g => Assert.True(g.Determined));

        // Pinned smaller than it is: nothing pulls.
        var loose = PinnedPiece.Of(Outlines.Rectangle(400, 300), Outlines.Rectangle(380, 285), 100, 15, 30);
        var slack = loose.Solve(Cloth, new() { TrySlack = true });
        Assert.True(slack.Converged, $"{slack.End}");
        Assert.True(slack.SlackTried);
        Assert.All(new FreeEdge(loose.Mesh, loose.Pinned).Gaps(loose.Support, slack), g => Assert.False(g.Determined));
        Assert.All(new FreeEdge(loose.Mesh, loose.Pinned).Gaps(loose.Support, loose.Solve(Cloth)), g => Assert.Null(g.Determined));
    }
}
