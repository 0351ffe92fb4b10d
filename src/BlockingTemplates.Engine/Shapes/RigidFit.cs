using MathNet.Numerics.Integration;

namespace BlockingTemplates.Engine.Shapes;

/// <summary>Lays one outline on another: turned and shifted, never scaled or mirrored.</summary>
/// <remarks>
/// Least integral of the squared distance between points at equal fractions of equal edges, over the target's arc
/// length. Closed form in the plane (the angle of the summed cross and scalar products; Kabsch, Acta
/// Crystallographica A32, 1976, 922, in two dimensions); integrals by Gauss-Legendre quadrature, order 64 an edge part.
/// </remarks>
public static class RigidFit
{
    private const int Order = 64;
    private const int PartsPerEdge = 4;

    /// <summary>The motion that lays <paramref name="moving"/> on <paramref name="target"/>.</summary>
    /// <param name="moving">The outline that is moved.</param>
    /// <param name="target">The outline it is laid on; the same number of edges.</param>
    /// <param name="pinned">A point of each that must meet exactly, or null for none.</param>
    public static Affine Lay(Outline moving, Outline target, (Point Moving, Point Target)? pinned)
    {
        ArgumentNullException.ThrowIfNull(moving);
        ArgumentNullException.ThrowIfNull(target);
        List<(double Weight, Point From, Point To)> samples = [];
        for (var i = 0; i < target.Edges.Count; i++)
        {
            var (a, b) = (moving.Edges[i].Curve, target.Edges[i].Curve);
            for (var part = 0; part < PartsPerEdge; part++)
            {
                var rule = new GaussLegendreRule((double)part / PartsPerEdge, (part + 1.0) / PartsPerEdge, Order);
                for (var k = 0; k < rule.Order; k++)
                {
                    var t = rule.GetAbscissa(k);
                    samples.Add((rule.GetWeight(k) * b.Length, a.At(t), b.At(t)));
                }
            }
        }

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
}
