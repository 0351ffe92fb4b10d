namespace BlockingTemplates.Engine.Shapes;

/// <summary>An edge of straight stretches.</summary>
public sealed class PolylineEdge : EdgeCurve
{
    private readonly Point[] _points;
    private readonly double[] _length;

    /// <summary>The edge through points in order; at least two, none twice in a row.</summary>
    public PolylineEdge(IReadOnlyList<Point> points)
    {
        ArgumentNullException.ThrowIfNull(points);
        if (points.Count < 2)
            throw new ArgumentException("An edge needs two points.", nameof(points));
        _points = [.. points];
        _length = new double[_points.Length];
        for (var i = 1; i < _points.Length; i++)
        {
            var step = _points[i - 1].DistanceTo(_points[i]);
            if (!(step > 0))
                throw new ArgumentException("A point of an edge stands twice in a row.", nameof(points));
            _length[i] = _length[i - 1] + step;
        }
    }

    /// <inheritdoc/>
    public override double Length => _length[^1];

    /// <inheritdoc/>
    public override IReadOnlyList<double> Breaks => [.. _length.Select(l => l / Length)];

    /// <inheritdoc/>
    public override Point At(double fraction)
    {
        var i = StretchAt(Checked(fraction));
        if (fraction == 1)
            return _points[^1];
        return _points[i].Toward(_points[i + 1], ((fraction * Length) - _length[i]) / (_length[i + 1] - _length[i]));
    }

    /// <inheritdoc/>
    public override Vector Direction(double fraction)
    {
        var i = StretchAt(Checked(fraction));
        return (_points[i + 1] - _points[i]).Unit;
    }

    /// <inheritdoc/>
    public override IReadOnlyList<Point> Flatten(double toleranceMm) => _points;

    /// <inheritdoc/>
    public override EdgeCurve Mapped(Affine map) => new PolylineEdge([.. _points.Select(map.Map)]);

    /// <inheritdoc/>
    public override EdgeCurve Reversed() => new PolylineEdge([.. _points.Reverse()]);

    private int StretchAt(double fraction)
    {
        var found = Array.BinarySearch(_length, fraction * Length);
        return Math.Clamp(found >= 0 ? found : ~found - 1, 0, _points.Length - 2);
    }
}
