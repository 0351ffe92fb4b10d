using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Pins;

/// <summary>How wide a gap between pins may be, by its place.</summary>
/// <remarks>
/// Common practice, no source: the full spacing along an edge, half of it within one spacing of a corner that is not
/// smooth (measured along the outline), half of it on an edge that must shrink; a half never less than the least
/// spacing unless the full spacing is.
/// </remarks>
public sealed class SpacingRule
{
    private const double Contact = 1e-7;
    private readonly double[] _lengths;
    private readonly double[] _behind;
    private readonly double[] _ahead;
    private readonly bool[] _shrinks;

    /// <summary>The rule for a pinned outline.</summary>
    /// <param name="pinned">The pinned outline.</param>
    /// <param name="spacingMm">Full spacing, in millimetres, above 0.</param>
    /// <param name="leastMm">Least spacing the halves keep, in millimetres.</param>
    /// <param name="shrinks">For each edge whether it must shrink.</param>
    public SpacingRule(Outline pinned, double spacingMm, double leastMm, IReadOnlyList<bool> shrinks)
    {
        ArgumentNullException.ThrowIfNull(pinned);
        ArgumentNullException.ThrowIfNull(shrinks);
        if (!(spacingMm > 0))
            throw new ArgumentOutOfRangeException(nameof(spacingMm), "A spacing is above 0.");
        var n = pinned.Edges.Count;
        _lengths = [.. pinned.Edges.Select(e => e.Curve.Length)];
        _shrinks = [.. shrinks];
        _behind = new double[n];
        _ahead = new double[n];
        Array.Fill(_behind, double.PositiveInfinity);
        Array.Fill(_ahead, double.PositiveInfinity);
        // Twice round the ring, so that distances run on through corner 0.
        for (var i = 0; i < 2 * n; i++)
        {
            int on = i % n, back = n - 1 - on;
            _behind[on] = pinned.Corners[on].Smooth ? _behind[(on + n - 1) % n] + _lengths[(on + n - 1) % n] : 0;
            _ahead[back] = pinned.Corners[(back + 1) % n].Smooth ? _ahead[(back + 1) % n] + _lengths[(back + 1) % n] : 0;
        }

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
    public double At(int edge, double fraction) =>
        Behind(edge, fraction) < FullMm - Contact || Ahead(edge, fraction) < FullMm - Contact ? HalfMm : OnEdge(edge);

    /// <summary>Distance along the outline back to the nearest corner that is not smooth, in millimetres; infinite where there is none.</summary>
    public double Behind(int edge, double fraction) => _behind[edge] + (fraction * _lengths[edge]);

    /// <summary>Distance along the outline on to the nearest corner that is not smooth, in millimetres; infinite where there is none.</summary>
    public double Ahead(int edge, double fraction) => _ahead[edge] + ((1 - fraction) * _lengths[edge]);
}
