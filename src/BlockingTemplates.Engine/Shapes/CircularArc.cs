namespace BlockingTemplates.Engine.Shapes;

/// <summary>An edge that is an arc of a circle, up to a half circle.</summary>
/// <remarks>Points are found by the chord from the arc's start, not from its centre: a flat arc's centre lies too far away for its digits.</remarks>
public sealed class CircularArc : EdgeCurve
{
    /// <summary>A bow no larger than this is none, in millimetres.</summary>
    private const double StraightMm = 1e-9;

    private readonly Point _from;
    private readonly Point _to;
    private readonly double _bow;
    private readonly double _radius;
    private readonly double _sweep;
    private readonly double _startAngle;

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
        _startAngle = Math.Atan2(to.Y - from.Y, to.X - from.X) - (_sweep / 2);
    }

    /// <inheritdoc/>
    public override double Length => _radius * Math.Abs(_sweep);

    /// <summary>The edge between two points: an arc, or a straight line for no bow (up to 1e-9 mm).</summary>
    public static EdgeCurve Between(Point from, Point to, double bow) =>
        Math.Abs(bow) <= StraightMm ? new StraightEdge(from, to) : new CircularArc(from, to, bow);

    /// <inheritdoc/>
    public override Point At(double fraction)
    {
        if (Checked(fraction) is 0 or 1)
            return fraction == 0 ? _from : _to;
        var half = fraction * _sweep / 2;
        return _from + (2 * _radius * Math.Abs(Math.Sin(half)) * Vector.AtAngle(_startAngle + half));
    }

    /// <inheritdoc/>
    public override Vector Direction(double fraction) => Vector.AtAngle(_startAngle + (Checked(fraction) * _sweep));

    /// <inheritdoc/>
    public override IReadOnlyList<Point> Flatten(double toleranceMm)
    {
        // A piece of angle w lies r (1 - cos(w/2)) = 2 r sin^2(w/4) from its chord.
        var widest = 4 * Math.Asin(Math.Min(1, Math.Sqrt(toleranceMm / (2 * _radius))));
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
            : new EllipticArc(this, map);
    }

    /// <inheritdoc/>
    public override EdgeCurve Reversed() => new CircularArc(_to, _from, -_bow);
}
