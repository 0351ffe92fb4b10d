using MathNet.Numerics.Integration;

namespace BlockingTemplates.Engine.Shapes;

/// <summary>Lays one outline on another: turned and shifted, never scaled or mirrored.</summary>
/// <remarks>
/// Least integral of the squared distance between points that belong to each other on equal edges, over the target's arc
/// length. Closed form in the plane (the angle of the summed cross and scalar products; Kabsch, Acta
/// Crystallographica A32, 1976, 922, in two dimensions); integrals by Gauss-Legendre quadrature between the places
/// where either edge is less smooth.
/// </remarks>
public static class RigidFit
{
    private const int Order = 16;
    private const int LeastPartsPerEdge = 16;
    private const double SamePlace = 1e-12;

    /// <summary>The motion that lays <paramref name="moving"/> on <paramref name="target"/>.</summary>
    /// <param name="moving">The outline that is moved.</param>
    /// <param name="target">The outline it is laid on; the same number of edges.</param>
    /// <param name="pinned">A point of each that must meet exactly, or null for none.</param>
    /// <param name="matches">For each edge which fractions belong to each other, the target's being the pinned ones; null where equal fractions do.</param>
    public static Affine Lay(Outline moving, Outline target, (Point Moving, Point Target)? pinned, IReadOnlyList<Correspondence>? matches = null)
    {
        ArgumentNullException.ThrowIfNull(moving);
        ArgumentNullException.ThrowIfNull(target);
        if (moving.Edges.Count != target.Edges.Count)
            throw new ArgumentException("Both outlines need the same edges.", nameof(moving));
        var samples = target.Edges.SelectMany((e, i) => Samples(moving.Edges[i].Curve, e.Curve, matches?[i] ?? Correspondence.Even)).ToList();
        var total = samples.Sum(s => s.Weight);
        var from = pinned?.Moving ?? new Point(samples.Sum(s => s.Weight * s.From.X) / total, samples.Sum(s => s.Weight * s.From.Y) / total);
        var to = pinned?.Target ?? new Point(samples.Sum(s => s.Weight * s.To.X) / total, samples.Sum(s => s.Weight * s.To.Y) / total);
        double cross = 0, dot = 0;
        foreach (var s in samples)
        {
            cross += s.Weight * (s.From - from).Cross(s.To - to);
            dot += s.Weight * (s.From - from).Dot(s.To - to);
        }

        return Affine.Shift(Point.Origin - from).Then(Affine.Turn(Math.Atan2(cross, dot))).Then(Affine.Shift(to - Point.Origin));
    }

    private static IEnumerable<(double Weight, Point From, Point To)> Samples(EdgeCurve moving, EdgeCurve target, Correspondence match)
    {
        double[] breaks = [.. moving.Breaks.Select(match.PinnedOf).Concat(target.Breaks).Concat(match.Pinned).Order()];
        var parts = (LeastPartsPerEdge + breaks.Length - 1) / breaks.Length;
        for (var i = 1; i < breaks.Length; i++)
        {
            if (breaks[i] - breaks[i - 1] < SamePlace)
                continue;
            for (var part = 0; part < parts; part++)
            {
                var step = (breaks[i] - breaks[i - 1]) / parts;
                var rule = new GaussLegendreRule(breaks[i - 1] + (part * step), breaks[i - 1] + ((part + 1) * step), Order);
                for (var k = 0; k < rule.Order; k++)
                    yield return (rule.GetWeight(k) * target.Length, moving.At(match.UnblockedAt(rule.GetAbscissa(k))), target.At(rule.GetAbscissa(k)));
            }
        }
    }
}
