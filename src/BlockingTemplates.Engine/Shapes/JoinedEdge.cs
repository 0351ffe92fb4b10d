namespace BlockingTemplates.Engine.Shapes;

/// <summary>An edge of several curves, each of which starts where the one before it ends.</summary>
public sealed class JoinedEdge : EdgeCurve
{
    private const double JoiningMm = 1e-6;

    private readonly EdgeCurve[] _parts;
    private readonly double[] _start;

    /// <summary>The edge of curves in order; at least one, joined within 1e-6 mm.</summary>
    public JoinedEdge(IReadOnlyList<EdgeCurve> parts)
    {
        ArgumentNullException.ThrowIfNull(parts);
        if (parts.Count == 0)
            throw new ArgumentException("An edge needs a curve.", nameof(parts));
        _parts = [.. parts];
        _start = new double[_parts.Length + 1];
        for (var i = 0; i < _parts.Length; i++)
        {
            if (i > 0 && _parts[i].Start.DistanceTo(_parts[i - 1].End) > JoiningMm)
                throw new ArgumentException($"Curve {i} does not start where the one before it ends.", nameof(parts));
            _start[i + 1] = _start[i] + _parts[i].Length;
        }
    }

    /// <inheritdoc/>
    public override double Length => _start[^1];

    /// <inheritdoc/>
    public override IReadOnlyList<double> Breaks =>
        [0, .. _parts.SelectMany((p, i) => p.Breaks.Skip(1).SkipLast(1).Select(b => (_start[i] + (b * p.Length)) / Length).Append(i == _parts.Length - 1 ? 1 : _start[i + 1] / Length))];

    /// <summary>The edge of curves in order: the curve itself where there is one.</summary>
    public static EdgeCurve Of(IReadOnlyList<EdgeCurve> parts) => parts is [var only] ? only : new JoinedEdge(parts);

    /// <inheritdoc/>
    public override Point At(double fraction)
    {
        var (part, within) = Locate(fraction);
        return part.At(within);
    }

    /// <inheritdoc/>
    public override Vector Direction(double fraction)
    {
        var (part, within) = Locate(fraction);
        return part.Direction(within);
    }

    /// <inheritdoc/>
    public override IReadOnlyList<Point> Flatten(double toleranceMm) =>
        [.. _parts.SelectMany((p, i) => p.Flatten(toleranceMm).Skip(i == 0 ? 0 : 1))];

    /// <inheritdoc/>
    public override EdgeCurve Mapped(Affine map) => new JoinedEdge([.. _parts.Select(p => p.Mapped(map))]);

    /// <inheritdoc/>
    public override EdgeCurve Reversed() => new JoinedEdge([.. _parts.Reverse().Select(p => p.Reversed())]);

    private (EdgeCurve Part, double Within) Locate(double fraction)
    {
        var at = Checked(fraction) * Length;
        var found = Array.BinarySearch(_start, at);
        var i = Math.Clamp(found >= 0 ? found : ~found - 1, 0, _parts.Length - 1);
        return fraction == 1 ? (_parts[^1], 1) : (_parts[i], Math.Clamp((at - _start[i]) / _parts[i].Length, 0, 1));
    }
}
