namespace BlockingTemplates.Engine.Shapes;

/// <summary>An edge that is a cubic Bezier curve.</summary>
/// <param name="from">Where it starts.</param>
/// <param name="first">Its first control point: the curve sets out toward it.</param>
/// <param name="second">Its second control point: the curve arrives from it.</param>
/// <param name="to">Where it ends.</param>
public sealed class BezierEdge(Point from, Point first, Point second, Point to) : SmoothEdge
{
    /// <summary>How far inside a curve's direction is taken where a control point lies on the end, as a parameter.</summary>
    private const double Inside = 1e-5;

    /// <inheritdoc/>
    protected override IReadOnlyList<double> Knots { get; } = [0, 1];

    /// <summary>The quadratic Bezier curve of one control point, as a cubic one (the same curve).</summary>
    public static BezierEdge Quadratic(Point from, Point control, Point to) =>
        new(from, from.Toward(control, 2.0 / 3), to.Toward(control, 2.0 / 3), to);

    /// <inheritdoc/>
    public override EdgeCurve Mapped(Affine map) => new BezierEdge(map.Map(from), map.Map(first), map.Map(second), map.Map(to));

    /// <inheritdoc/>
    public override EdgeCurve Reversed() => new BezierEdge(to, second, first, from);

    /// <inheritdoc/>
    protected override Point PointAt(double parameter)
    {
        if (parameter is 0 or 1)
            return parameter == 0 ? from : to;
        double t = parameter, s = 1 - t;
        return from + (3 * s * s * t * (first - from)) + (3 * s * t * t * (second - from)) + (t * t * t * (to - from));
    }

    /// <inheritdoc/>
    protected override Vector VelocityAt(double parameter)
    {
        var at = Derivative(parameter);
        var size = (first - from).Length + (second - first).Length + (to - second).Length;
        return at.Length > 1e-9 * size ? at : Derivative(parameter < 0.5 ? parameter + Inside : parameter - Inside);
    }

    private Vector Derivative(double t)
    {
        var s = 1 - t;
        return (3 * s * s * (first - from)) + (6 * s * t * (second - first)) + (3 * t * t * (to - second));
    }
}
