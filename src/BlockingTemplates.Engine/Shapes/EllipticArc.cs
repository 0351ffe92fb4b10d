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

    /// <summary>The part of an upright ellipse from one angle over a sweep; an arc of a circle where both half axes are equal.</summary>
    /// <param name="centre">The ellipse's middle.</param>
    /// <param name="across">Its half axis along x, in millimetres, above 0.</param>
    /// <param name="up">Its half axis along y, in millimetres, above 0.</param>
    /// <param name="start">Angle of the start in radians, as on the circle that the ellipse is a stretched image of.</param>
    /// <param name="sweep">How far round, counter-clockwise positive, in radians; not 0, at most a half turn either way.</param>
    public static EdgeCurve About(Point centre, double across, double up, double start, double sweep)
    {
        var bow = Math.Sign(sweep) * 2 * Math.Pow(Math.Sin(sweep / 4), 2);
        var onCircle = new CircularArc(Point.Origin + Vector.AtAngle(start), Point.Origin + Vector.AtAngle(start + sweep), bow);
        return onCircle.Mapped(new(across, 0, centre.X, 0, up, centre.Y));
    }

    /// <inheritdoc/>
    public override EdgeCurve Mapped(Affine map) => new EllipticArc(_circular, _map.Then(map));

    /// <inheritdoc/>
    public override EdgeCurve Reversed() => new EllipticArc((CircularArc)_circular.Reversed(), _map);

    /// <inheritdoc/>
    protected override Point PointAt(double parameter) => _map.Map(_circular.At(parameter));

    /// <inheritdoc/>
    protected override Vector VelocityAt(double parameter) => _map.Map(_circular.Length * _circular.Direction(parameter));
}
