using BlockingTemplates.Engine.Fabrics;
using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Tests.Pins.Settling;

// Pieces that have to be pulled to their finished outline; all invented.
internal static class PulledPieces
{
    // A flat triangle, its corners at equal stretch, one edge of the unblocked one bowed by a tenth of its chord.
    public static Piece FlatTriangle(double wingspan, double depth, double stretch, double stitchMm, int bowed, double bow = 0.1)
    {
        Point[] corners = [new(0, -depth), new(wingspan / 2, 0), new(-wingspan / 2, 0)];
        var rest = corners.Select(c => new Point(c.X / (1 + stretch), c.Y / (1 + stretch))).ToList();
        return Of(corners, [0, 0, 0], rest, [.. Enumerable.Range(0, 3).Select(e => e == bowed ? bow : 0)], _ => stitchMm);
    }

    // A convex or dented piece of three to six corners, pulled by 5 to 25 % along and across, its edges bowed.
    public static Piece Random(Random random)
    {
        while (true)
        {
            var n = random.Next(3, 7);
            var (width, height) = (Between(random, 300, 900), Between(random, 250, 600));
            double[] angles = [.. Enumerable.Range(0, n).Select(i => ((i + Between(random, -0.25, 0.25)) * 2 * Math.PI / n) + 0.3)];
            var finished = angles.Select(a => (Radius: Between(random, 0.75, 1), A: a)).Select(p => new Point(p.Radius * width / 2 * Math.Cos(p.A), p.Radius * height / 2 * Math.Sin(p.A))).ToList();
            var (along, across) = (Between(random, 0.05, 0.25), Between(random, 0.05, 0.25));
            var rest = finished.Select(c => new Point(c.X / (1 + along), c.Y / (1 + across))).ToList();
            double[] bows = [.. finished.Select(_ => random.Next(3) == 0 ? Between(random, -0.08, 0.12) : 0)];
            double[] restBows = [.. bows.Select(b => b + Between(random, -0.03, 0.08))];
            double[] stitches = [.. finished.Select(_ => Between(random, 4, 7))];
            var piece = Of(finished, bows, rest, restBows, e => stitches[e]);
            if (IsSound(piece.Finished) && IsSound(piece.Unblocked!))
                return piece;
        }
    }

    private static bool IsSound(Outline outline) => outline.SignedArea() > 10_000 && OutlineCrossing.Find(outline) is null;

    private static Piece Of(IReadOnlyList<Point> finished, double[] bows, IReadOnlyList<Point> rest, double[] restBows, Func<int, double> stitchMm)
    {
        var unblocked = Ring(rest, restBows);
        var edges = unblocked.Edges.Select((e, i) => new EdgeTreatment((int)Math.Round(e.Curve.Length / stitchMm(i)), CountedIn.Stitches, Holding.Pins)).ToList();
        return new(Ring(finished, bows), unblocked, edges, WorkSide.RightSide, FabricSettings.Unsaid with { Kind = FabricKind.Lace });
    }

    private static Outline Ring(IReadOnlyList<Point> corners, double[] bows) => new(
        [.. corners.Select((c, i) => new Edge($"side {i}", Line(c, corners[(i + 1) % corners.Count], bows[i])))],
        [.. corners.Select((_, i) => new Corner($"corner {i}"))]);

    private static EdgeCurve Line(Point from, Point to, double bow) =>
        bow == 0 ? new StraightEdge(from, to) : CircularArc.Between(from, to, bow * from.DistanceTo(to));

    private static double Between(Random random, double low, double high) => low + ((high - low) * random.NextDouble());
}
