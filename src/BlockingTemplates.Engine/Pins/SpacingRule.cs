using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Pins;

/// <summary>How wide a gap between pins may be, by its place.</summary>
/// <remarks>
/// Common practice, no source: the full spacing along an edge, half of it within one spacing of a corner, half of it
/// on an edge that must shrink; a half never less than the least spacing unless the full spacing is.
/// </remarks>
public sealed class SpacingRule
{
    private readonly double[] _lengths;
    private readonly bool[] _sharp;
    private readonly bool[] _shrinks;

    /// <summary>The rule for a pinned outline.</summary>
    /// <param name="pinned">The pinned outline.</param>
    /// <param name="spacingMm">Full spacing, in millimetres, above 0.</param>
    /// <param name="leastMm">Least spacing the halves keep, in millimetres.</param>
    /// <param name="shrinks">For each edge whether it must shrink.</param>
    public SpacingRule(Outline pinned, double spacingMm, double leastMm, IReadOnlyList<bool> shrinks)
    {
        ArgumentNullException.ThrowIfNull(pinned);
        _lengths = [.. pinned.Edges.Select(e => e.Curve.Length)];
        _sharp = [.. pinned.Corners.Select(c => !c.Smooth)];
        _shrinks = [.. shrinks];
        FullMm = spacingMm;
        HalfMm = Math.Min(spacingMm, Math.Max(spacingMm / 2, leastMm));
    }

    /// <summary>The full spacing, in millimetres.</summary>
    public double FullMm { get; }

    /// <summary>The half spacing, in millimetres.</summary>
    public double HalfMm { get; }

    /// <summary>Widest gap along an edge away from corners, in millimetres.</summary>
    public double OnEdge(int edge) => _shrinks[edge] ? HalfMm : FullMm;

    /// <summary>Widest gap allowed about a place, in millimetres.</summary>
    public double At(int edge, double fraction)
    {
        var n = _lengths.Length;
        var near = false;
        // Back to the corner before, forward to the one behind, through smooth corners.
        var back = fraction * _lengths[edge];
        for (var e = edge; back < FullMm; e = (e + n - 1) % n, back += _lengths[e])
        {
            if (_sharp[e])
            {
                near = true;
                break;
            }

            if (_sharp.All(s => !s))
                break;
        }

        var ahead = (1 - fraction) * _lengths[edge];
        for (var e = (edge + 1) % n; !near && ahead < FullMm; ahead += _lengths[e], e = (e + 1) % n)
        {
            if (_sharp[e])
                near = true;
            else if (_sharp.All(s => !s))
                break;
        }

        return near ? HalfMm : OnEdge(edge);
    }
}
