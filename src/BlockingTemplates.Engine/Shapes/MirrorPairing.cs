namespace BlockingTemplates.Engine.Shapes;

/// <summary>Which edge of a symmetric outline mirrors which.</summary>
/// <param name="Partner">For each edge the edge it mirrors (itself for an edge across the axis).</param>
/// <param name="Centre">A point on the axis.</param>
/// <param name="Axis">Direction of the axis, length 1, upward.</param>
public sealed record MirrorPairing(IReadOnlyList<int> Partner, Point Centre, Vector Axis)
{
    /// <summary>How far two mirrored points may lie apart, in millimetres.</summary>
    public const double ToleranceMm = 0.05;

    private const int SamplesPerEdge = 16;

    /// <summary>The pairing of an outline, the one nearest to left and right, or null if it is not symmetric.</summary>
    public static MirrorPairing? Of(Outline outline) => All(outline) is [var first, ..] ? first : null;

    /// <summary>All pairings of an outline, the one nearest to left and right first.</summary>
    public static IReadOnlyList<MirrorPairing> All(Outline outline)
    {
        ArgumentNullException.ThrowIfNull(outline);
        return [.. Enumerable.Range(0, outline.Edges.Count)
            .Select(sum => Fit(outline, sum))
            .OfType<MirrorPairing>()
            .OrderBy(p => Math.Round(Math.Abs(p.Axis.X), 9))];
    }

    /// <summary>Whether another outline with the same edges is symmetric in the same pairs.</summary>
    public bool Fits(Outline other) => Fit(other, Partner[0]) is not null;

    /// <summary>The mirror image of a point.</summary>
    public Point Image(Point p)
    {
        var from = p - Centre;
        return Centre + (2 * from.Dot(Axis) * Axis) - from;
    }

    private static MirrorPairing? Fit(Outline outline, int sum)
    {
        var n = outline.Edges.Count;
        int[] partner = [.. Enumerable.Range(0, n).Select(i => (sum - i + n) % n)];
        for (var i = 0; i < n; i++)
        {
            var a = outline.Edges[i].Curve.Length;
            if (Math.Abs(a - outline.Edges[partner[i]].Curve.Length) > ToleranceMm)
                return null;
            if (outline.Corners[i].Smooth != outline.Corners[(partner[i] + 1) % n].Smooth)
                return null;
        }

        List<(Point Here, Point There)> pairs = [];
        for (var i = 0; i < n; i++)
        {
            var (here, there) = (outline.Edges[i].Curve, outline.Edges[partner[i]].Curve);
            var even = Enumerable.Range(0, SamplesPerEdge).Select(k => (double)k / SamplesPerEdge);
            pairs.AddRange(even.Concat(here.Breaks).Concat(there.Breaks.Select(f => 1 - f)).Select(f => (here.At(f), there.At(1 - f))));
        }

        var centre = new Point(pairs.Average(p => p.Here.X), pairs.Average(p => p.Here.Y));
        double cos = 0, sin = 0;
        foreach (var (here, there) in pairs)
        {
            var (a, b) = (here - centre, there - centre);
            cos += (a.X * b.X) - (a.Y * b.Y);
            sin += (a.X * b.Y) + (a.Y * b.X);
        }

        var axis = Vector.AtAngle(Math.Atan2(sin, cos) / 2);
        var found = new MirrorPairing(partner, centre, axis.Y < 0 || (axis.Y == 0 && axis.X < 0) ? -axis : axis);
        return pairs.TrueForAll(p => found.Image(p.Here).DistanceTo(p.There) <= ToleranceMm) ? found : null;
    }
}
