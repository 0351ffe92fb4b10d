using MathNet.Numerics.Interpolation;

namespace BlockingTemplates.Engine.Shapes;

/// <summary>An edge through stations beside its chord: a natural cubic spline through stations and corners.</summary>
/// <remarks>Spline by MathNet.Numerics (natural ends: no curvature at the corners).</remarks>
public sealed class SplineEdge : SmoothEdge
{
    private readonly CubicSpline _out;
    private readonly double _chord;
    private readonly Affine _place;
    private readonly bool _backward;

    /// <summary>The edge between two corners through stations.</summary>
    /// <param name="from">Where it starts.</param>
    /// <param name="to">Where it ends; another point.</param>
    /// <param name="stations">Distance along the chord from the start (strictly increasing, inside the chord) and
    /// distance out from it (to the right of travel, outward on a counter-clockwise outline), millimetres; at least one.</param>
    public SplineEdge(Point from, Point to, IReadOnlyList<(double Along, double Out)> stations)
    {
        ArgumentNullException.ThrowIfNull(stations);
        _chord = from.DistanceTo(to);
        double[] along = [0, .. stations.Select(s => s.Along), _chord];
        for (var i = 1; i < along.Length; i++)
        {
            if (!(along[i] > along[i - 1]))
                throw new ArgumentException("Stations must come one after the other inside the chord.", nameof(stations));
        }

        _out = CubicSpline.InterpolateNaturalSorted(along, [0, .. stations.Select(s => s.Out), 0]);
        Knots = [.. along.Select(a => a / _chord)];
        var x = (to - from).Unit;
        var y = x.TurnedRight;
        _place = new(x.X, y.X, from.X, x.Y, y.Y, from.Y);
    }

    private SplineEdge(SplineEdge other, Affine place, bool backward)
    {
        (_out, _chord, _place, _backward) = (other._out, other._chord, place, backward);
        Knots = backward == other._backward ? other.Knots : [.. other.Knots.Reverse().Select(k => 1 - k)];
    }

    /// <inheritdoc/>
    protected override IReadOnlyList<double> Knots { get; }

    /// <inheritdoc/>
    public override EdgeCurve Mapped(Affine map) => new SplineEdge(this, _place.Then(map), _backward);

    /// <inheritdoc/>
    public override EdgeCurve Reversed() => new SplineEdge(this, _place, !_backward);

    /// <inheritdoc/>
    protected override Point PointAt(double parameter)
    {
        var along = _chord * (_backward ? 1 - parameter : parameter);
        var isEnd = parameter is 0 or 1;
        return _place.Map(new Point(along, isEnd ? 0 : _out.Interpolate(along)));
    }

    /// <inheritdoc/>
    protected override Vector VelocityAt(double parameter)
    {
        var along = _chord * (_backward ? 1 - parameter : parameter);
        var forward = _place.Map(new Vector(_chord, _chord * _out.Differentiate(along)));
        return _backward ? -forward : forward;
    }
}
