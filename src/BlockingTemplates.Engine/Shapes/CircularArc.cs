namespace BlockingTemplates.Engine.Shapes;

/// <summary>An edge that is an arc of a circle, up to a half circle.</summary>
public sealed class CircularArc : EdgeCurve
{
    private readonly Point _from;
    private readonly Point _to;
    private readonly double _bow;
    private readonly Point _centre;
    private readonly double _radius;
    private readonly double _startAngle;
    private readonly double _sweep;

    /// <summary>The arc between two points with a bow.</summary>
    /// <param name="from">Where it starts.</param>
    /// <param name="to">Where it ends; another point.</param>
    /// <param name="bow">Greatest distance from the chord, positive to the right of travel (outward on a
    /// counter-clockwise outline); not 0, and at most half the chord either way.</param>
    public CircularArc(Point from, Point to, double bow)
    {
        var chord = from.DistanceTo(to);
        if (!(chord > 0) || bow == 0 || !(Math.Abs(bow) <= (chord / 2) + 1e-9))
            throw new ArgumentOutOfRangeException(nameof(bow), "An arc needs two ends and a bow of at most half its chord.");
        (_from, _to, _bow) = (from, to, bow);
        _radius = CircularSegment.Radius(chord, Math.Abs(bow));
        _sweep = Math.Sign(bow) * CircularSegment.Angle(chord, Math.Abs(bow));
        _centre = from.Toward(to, 0.5) + ((bow - (Math.Sign(bow) * _radius)) * (to - from).Unit.TurnedRight);
        _startAngle = Math.Atan2(from.Y - _centre.Y, from.X - _centre.X);
    }

    /// <inheritdoc/>
    public override double Length => _radius * Math.Abs(_sweep);

    /// <summary>The edge between two points: an arc, or a straight line for no bow.</summary>
    public static EdgeCurve Between(Point from, Point to, double bow) =>
        bow == 0 ? new StraightEdge(from, to) : new CircularArc(from, to, bow);

    /// <inheritdoc/>
    public override Point At(double fraction) => Checked(fraction) switch
    {
        0 => _from,
        1 => _to,
        _ => _centre + (_radius * Vector.AtAngle(_startAngle + (fraction * _sweep))),
    };

    /// <inheritdoc/>
    public override Vector Direction(double fraction)
    {
        var outward = Vector.AtAngle(_startAngle + (Checked(fraction) * _sweep));
        return _sweep > 0 ? outward.TurnedLeft : outward.TurnedRight;
    }

    /// <inheritdoc/>
    public override IReadOnlyList<Point> Flatten(double toleranceMm)
    {
        var widest = 2 * Math.Acos(Math.Max(0, 1 - (toleranceMm / _radius)));
        var pieces = Math.Max(1, (int)Math.Ceiling(Math.Abs(_sweep) / widest));
        return [.. Enumerable.Range(0, pieces + 1).Select(i => At((double)i / pieces))];
    }

    /// <inheritdoc/>
    public override EdgeCurve Mapped(Affine map)
    {
        var x = map.Map(new Vector(1, 0));
        var y = map.Map(new Vector(0, 1));
        var scale = x.Length;
        var isSimilar = Math.Abs(x.Dot(y)) < 1e-12 * scale * scale && Math.Abs(scale - y.Length) < 1e-12 * scale;
        return isSimilar
            ? new CircularArc(map.Map(_from), map.Map(_to), Math.Sign(map.Determinant) * scale * _bow)
            : new EllipticArc(_centre, _radius, _startAngle, _sweep, map);
    }

    /// <inheritdoc/>
    public override EdgeCurve Reversed() => new CircularArc(_to, _from, -_bow);
}
