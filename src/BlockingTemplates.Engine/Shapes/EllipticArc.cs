namespace BlockingTemplates.Engine.Shapes;

/// <summary>The image of a circular arc under a map that scales its two directions differently.</summary>
public sealed class EllipticArc : SmoothEdge
{
    private readonly CircularArc _circular;
    private readonly Affine _map;

    /// <summary>The image of an arc.</summary>
    /// <param name="circular">The arc before the map.</param>
    /// <param name="map">The map; not singular.</param>
    public EllipticArc(CircularArc circular, Affine map) => (_circular, _map) = (circular, map);

    /// <inheritdoc/>
    protected override IReadOnlyList<double> Knots { get; } = [0, 1];

    /// <inheritdoc/>
    public override EdgeCurve Mapped(Affine map) => new EllipticArc(_circular, _map.Then(map));

    /// <inheritdoc/>
    public override EdgeCurve Reversed() => new EllipticArc((CircularArc)_circular.Reversed(), _map);

    /// <inheritdoc/>
    protected override Point PointAt(double parameter) => _map.Map(_circular.At(parameter));

    /// <inheritdoc/>
    protected override Vector VelocityAt(double parameter) => _map.Map(_circular.Length * _circular.Direction(parameter));
}
