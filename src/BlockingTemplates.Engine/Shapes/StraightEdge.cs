namespace BlockingTemplates.Engine.Shapes;

/// <summary>A straight edge.</summary>
public sealed class StraightEdge : EdgeCurve
{
    private readonly Point _from;
    private readonly Point _to;

    /// <summary>The line between two different points.</summary>
    public StraightEdge(Point from, Point to)
    {
        if (from == to)
            throw new ArgumentException("A straight edge needs two different ends.", nameof(to));
        (_from, _to) = (from, to);
    }

    /// <inheritdoc/>
    public override double Length => _from.DistanceTo(_to);

    /// <inheritdoc/>
    public override Point At(double fraction) => Checked(fraction) == 1 ? _to : _from.Toward(_to, fraction);

    /// <inheritdoc/>
    public override Vector Direction(double fraction) => (_to - _from).Unit;

    /// <inheritdoc/>
    public override IReadOnlyList<Point> Flatten(double toleranceMm) => [_from, _to];

    /// <inheritdoc/>
    public override EdgeCurve Mapped(Affine map) => new StraightEdge(map.Map(_from), map.Map(_to));

    /// <inheritdoc/>
    public override EdgeCurve Reversed() => new StraightEdge(_to, _from);
}
