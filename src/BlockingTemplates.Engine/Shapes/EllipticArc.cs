namespace BlockingTemplates.Engine.Shapes;

/// <summary>The image of a circular arc under a map that scales its two directions differently.</summary>
public sealed class EllipticArc : SmoothEdge
{
    private readonly Point _centre;
    private readonly double _radius;
    private readonly double _startAngle;
    private readonly double _sweep;
    private readonly Affine _map;

    /// <summary>The image of an arc about a centre.</summary>
    /// <param name="centre">Centre of the circle before the map.</param>
    /// <param name="radius">Radius before the map, in millimetres, above 0.</param>
    /// <param name="startAngle">Angle of the start from x, before the map, in radians.</param>
    /// <param name="sweep">Angle travelled, counter-clockwise positive, in radians, not 0.</param>
    /// <param name="map">The map; not singular.</param>
    public EllipticArc(Point centre, double radius, double startAngle, double sweep, Affine map) =>
        (_centre, _radius, _startAngle, _sweep, _map) = (centre, radius, startAngle, sweep, map);

    /// <inheritdoc/>
    protected override IReadOnlyList<double> Knots { get; } = [0, 1];

    /// <inheritdoc/>
    public override EdgeCurve Mapped(Affine map) => new EllipticArc(_centre, _radius, _startAngle, _sweep, _map.Then(map));

    /// <inheritdoc/>
    public override EdgeCurve Reversed() => new EllipticArc(_centre, _radius, _startAngle + _sweep, -_sweep, _map);

    /// <inheritdoc/>
    protected override Point PointAt(double parameter) => _map.Map(_centre + (_radius * Vector.AtAngle(_startAngle + (parameter * _sweep))));

    /// <inheritdoc/>
    protected override Vector VelocityAt(double parameter) =>
        _map.Map(_radius * _sweep * Vector.AtAngle(_startAngle + (parameter * _sweep)).TurnedLeft);
}
