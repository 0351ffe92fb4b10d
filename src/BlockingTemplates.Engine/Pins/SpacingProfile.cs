using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Pins;

/// <summary>How wide a gap between pins may be, by its place round a pinned outline; between the places given, linear.</summary>
/// <remarks>
/// A gap keeps the profile if the integral of ds / spacing over it is at most 1. Arc lengths run round the pinned outline
/// from its first corner, in millimetres.
/// </remarks>
public sealed class SpacingProfile
{
    private readonly (double Arc, double Mm)[] _knots;
    private readonly double[] _starts;
    private readonly double[] _sums;

    /// <summary>A profile of a pinned outline.</summary>
    /// <param name="pinned">The outline.</param>
    /// <param name="knots">Arc lengths, not decreasing, from 0 to the outline's length, and the spacing there, above 0; at
    /// a corner two may stand at one arc length.</param>
    public SpacingProfile(Outline pinned, IEnumerable<(double ArcMm, double SpacingMm)> knots)
    {
        ArgumentNullException.ThrowIfNull(pinned);
        _starts = new double[pinned.Edges.Count + 1];
        for (var e = 0; e < pinned.Edges.Count; e++)
            _starts[e + 1] = _starts[e] + pinned.Edges[e].Curve.Length;
        List<(double Arc, double Mm)> all = [.. knots];
        if (all.Count == 0 || all.Exists(k => !(k.Mm > 0)))
            throw new ArgumentException("A profile needs spacings above 0.", nameof(knots));
        if (all[0].Arc > 0)
            all.Insert(0, (0, Over(all[^1], all[0])));
        if (all[^1].Arc < _starts[^1])
            all.Add((_starts[^1], all[0].Mm));
        _knots = [.. all];
        _sums = new double[_knots.Length];
        for (var i = 1; i < _knots.Length; i++)
            _sums[i] = _sums[i - 1] + Part(i, _knots[i].Arc);
    }

    /// <summary>Length of the outline, in millimetres.</summary>
    public double LengthMm => _starts[^1];

    /// <summary>Arc length of a place.</summary>
    public double ArcOf(int edge, double fraction) => _starts[edge] + (fraction * (_starts[edge + 1] - _starts[edge]));

    /// <summary>The spacing at an arc length, in millimetres.</summary>
    public double At(double arcMm)
    {
        var i = After(arcMm);
        var (from, to) = (_knots[i - 1], _knots[i]);
        return to.Arc > from.Arc ? from.Mm + ((to.Mm - from.Mm) * (arcMm - from.Arc) / (to.Arc - from.Arc)) : to.Mm;
    }

    /// <summary>The integral of ds / spacing from 0 up to an arc length, which may run on past the end and before the start.</summary>
    public double SharesUpTo(double arcMm)
    {
        var turns = Math.Floor(arcMm / LengthMm);
        var arc = Math.Clamp(arcMm - (turns * LengthMm), 0, LengthMm);
        var i = After(arc);
        return (turns * _sums[^1]) + _sums[i - 1] + Part(i, arc);
    }

    /// <summary>Whether a gap keeps the profile, to a relative tolerance.</summary>
    public bool Holds(double fromMm, double toMm, double tolerance = 1e-6) => SharesUpTo(toMm) - SharesUpTo(fromMm) <= 1 + tolerance;

    /// <summary>The same on the mirrored outline, whose edges run the other way from the same first corner.</summary>
    /// <param name="pinned">The mirrored outline.</param>
    public SpacingProfile Mirrored(Outline pinned) => new(pinned, _knots.Reverse().Select(k => (LengthMm - k.Arc, k.Mm)));

    private double Over((double Arc, double Mm) last, (double Arc, double Mm) first)
    {
        var wrap = first.Arc + LengthMm - last.Arc;
        return wrap > 0 ? last.Mm + ((first.Mm - last.Mm) * (LengthMm - last.Arc) / wrap) : first.Mm;
    }

    /// <summary>The first knot behind an arc length, at least 1.</summary>
    private int After(double arc)
    {
        var (low, high) = (1, _knots.Length - 1);
        while (low < high)
        {
            var middle = (low + high) / 2;
            if (_knots[middle].Arc > arc)
                high = middle;
            else
                low = middle + 1;
        }

        return low;
    }

    /// <summary>The integral from knot i - 1 to an arc length before knot i: in closed form, the spacing being linear.</summary>
    private double Part(int i, double arc)
    {
        var (from, to) = (_knots[i - 1], _knots[i]);
        if (arc <= from.Arc)
            return 0;
        var slope = (to.Mm - from.Mm) / (to.Arc - from.Arc);
        var grown = slope * (arc - from.Arc);
        return Math.Abs(grown) > 1e-6 * from.Mm ? Math.Log(1 + (grown / from.Mm)) / slope : (arc - from.Arc) / (from.Mm + (grown / 2));
    }
}
