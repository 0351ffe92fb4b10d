namespace BlockingTemplates.Engine.Pins.Wires;

/// <summary>A straight elastic wire on several supports under an even side load, in the plane; small slopes.</summary>
/// <remarks>
/// Clapeyron's equation of three moments, the ends free to turn (S. Timoshenko, Strength of Materials, part I, 3rd ed.
/// 1955, ch. on continuous beams; from memory). Sag is measured from the chord of each span, positive the way the load pulls.
/// Supports that do not stand in line are given by how far the chords turn at each of them, positive away from the load.
/// </remarks>
public sealed class ContinuousBeam
{
    private readonly double _stiffness;
    private readonly double _load;
    private readonly double[] _spans;
    private readonly double[] _moments;

    /// <summary>Solves for the moments over the supports.</summary>
    /// <param name="stiffness">Bending stiffness EI, force times length squared, above 0.</param>
    /// <param name="spans">Lengths of the spans, each above 0; at least one.</param>
    /// <param name="load">Load a length, at least 0.</param>
    /// <param name="turns">Turn of the chords at each inner support, in radians; straight where null.</param>
    public ContinuousBeam(double stiffness, IReadOnlyList<double> spans, double load, IReadOnlyList<double>? turns = null)
    {
        ArgumentNullException.ThrowIfNull(spans);
        if (!(stiffness > 0) || spans.Count == 0 || spans.Any(s => !(s > 0)) || !(load >= 0))
            throw new ArgumentException("A beam needs a stiffness and spans above 0 and a load of at least 0.");
        if (turns is not null && turns.Count != spans.Count - 1)
            throw new ArgumentException("A turn belongs to each inner support.", nameof(turns));
        (_stiffness, _load, _spans) = (stiffness, load, [.. spans]);
        _moments = Moments(turns);
    }

    /// <summary>Bending moments over the supports, both ends included, in the stiffness's units over length; 0 at the ends. Positive where the wire hollows away from the load.</summary>
    public IReadOnlyList<double> SupportMoments => _moments;

    /// <summary>Sag below the chord of a span at a distance from its first support.</summary>
    public double SagAt(int span, double along)
    {
        double s = _spans[span], left = _moments[span], right = _moments[span + 1], rest = s - along;
        var ends = along * rest / 6 / s * ((left * (s + rest)) + (right * (s + along)));
        var load = _load / 24 * along * rest * ((s * s) + (along * rest));
        return (load - ends) / _stiffness;
    }

    private double[] Moments(IReadOnlyList<double>? turns)
    {
        // Thomas's algorithm on the tridiagonal system; it is diagonally dominant.
        var n = _spans.Length;
        var moments = new double[n + 1];
        var (ratio, value) = (new double[n + 1], new double[n + 1]);
        for (var i = 1; i < n; i++)
        {
            double before = _spans[i - 1], after = _spans[i];
            var right = (_load / 24 * ((before * before * before) + (after * after * after))) + (_stiffness * (turns?[i - 1] ?? 0));
            var pivot = ((before + after) / 3) - (before / 6 * ratio[i - 1]);
            ratio[i] = after / 6 / pivot;
            value[i] = (right - (before / 6 * value[i - 1])) / pivot;
        }

        for (var i = n - 1; i > 0; i--)
            moments[i] = value[i] - (ratio[i] * moments[i + 1]);
        return moments;
    }
}
