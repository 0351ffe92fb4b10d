namespace BlockingTemplates.Engine.Shapes;

/// <summary>An edge with points or scallops standing outward on a smooth base line that runs through its valleys.</summary>
/// <remarks>
/// Valley, flank, tip, flank, valley and so on: n points have 2n flanks. A tip stands over the middle of the straight line
/// between its valleys, at the depth from the base line there; a scallop is the circular arc through the three.
/// </remarks>
public sealed class PointedEdge : EdgeCurve
{
    private const double AtPlace = 1e-9;
    private const double HalfCircleMm = 1e-6;

    private readonly EdgeCurve[] _flanks;
    private readonly JoinedEdge _line;

    private PointedEdge(EdgeCurve basis, EdgeCurve[] flanks)
    {
        Basis = basis;
        _flanks = flanks;
        _line = new(flanks);
        var places = new double[flanks.Length + 1];
        for (var i = 0; i < flanks.Length; i++)
            places[i + 1] = places[i] + flanks[i].Length;
        for (var i = 0; i < places.Length; i++)
            places[i] = i == flanks.Length ? 1 : places[i] / _line.Length;
        Places = places;
    }

    /// <summary>The smooth line that runs through the valleys.</summary>
    public EdgeCurve Basis { get; }

    /// <summary>Fractions of valleys (even index) and tips (odd index), from 0 to 1.</summary>
    public IReadOnlyList<double> Places { get; }

    /// <summary>How many points.</summary>
    public int Count => _flanks.Length / 2;

    /// <inheritdoc/>
    public override double Length => _line.Length;

    /// <inheritdoc/>
    public override IReadOnlyList<double> Breaks => _line.Breaks;

    /// <summary>The edge on a base line.</summary>
    /// <param name="basis">The base line.</param>
    /// <param name="valleys">Fractions of the base line where the valleys lie, increasing from 0 to 1; one more than points.</param>
    /// <param name="shape">What the points look like.</param>
    /// <param name="depthMm">How far the tips stand outward of the base line, in millimetres, above 0; for scallops at most <see cref="DeepestScallop"/>.</param>
    public static PointedEdge On(EdgeCurve basis, IReadOnlyList<double> valleys, PointShape shape, double depthMm)
    {
        ArgumentNullException.ThrowIfNull(basis);
        ArgumentNullException.ThrowIfNull(valleys);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(depthMm);
        if (shape == PointShape.Scallop)
            ArgumentOutOfRangeException.ThrowIfGreaterThan(depthMm, DeepestScallop(basis, valleys) + HalfCircleMm);
        return new(basis, [.. Enumerable.Range(1, valleys.Count - 1).SelectMany(i =>
        {
            var (from, to, rise) = Stretch(basis, valleys[i - 1], valleys[i]);
            var bow = depthMm + rise;
            var tip = from.Toward(to, 0.5) + (bow * (to - from).Unit.TurnedRight);
            if (shape == PointShape.Point)
                return [new StraightEdge(from, tip), new StraightEdge(tip, to)];
            var half = HalfBow(from.DistanceTo(to), bow);
            return new[] { CircularArc.Between(from, tip, half), CircularArc.Between(tip, to, half) };
        })]);
    }

    /// <summary>The greatest depth of scallops on a base line, in millimetres: the half circle over the narrowest of them.</summary>
    public static double DeepestScallop(EdgeCurve basis, IReadOnlyList<double> valleys)
    {
        ArgumentNullException.ThrowIfNull(basis);
        ArgumentNullException.ThrowIfNull(valleys);
        return Enumerable.Range(1, valleys.Count - 1).Min(i => Stretch(basis, valleys[i - 1], valleys[i]) is var (from, to, rise) ? (from.DistanceTo(to) / 2) - rise : 0);
    }

    /// <inheritdoc/>
    public override Point At(double fraction) => _line.At(fraction);

    /// <inheritdoc/>
    public override Vector Direction(double fraction) => _line.Direction(fraction);

    /// <inheritdoc/>
    public override Vector Outward(double fraction)
    {
        for (var i = 1; i < _flanks.Length; i++)
        {
            if (Math.Abs(Places[i] - fraction) <= AtPlace)
                return (_flanks[i - 1].Direction(1).TurnedRight + _flanks[i].Direction(0).TurnedRight).Unit;
        }

        return base.Outward(fraction);
    }

    /// <inheritdoc/>
    public override IReadOnlyList<Point> Flatten(double toleranceMm) => _line.Flatten(toleranceMm);

    /// <inheritdoc/>
    public override EdgeCurve Mapped(Affine map) => new PointedEdge(Basis.Mapped(map), [.. _flanks.Select(f => f.Mapped(map))]);

    /// <inheritdoc/>
    public override EdgeCurve Reversed() => new PointedEdge(Basis.Reversed(), [.. _flanks.Reverse().Select(f => f.Reversed())]);

    /// <summary>Two valleys, and how far out of their joining line the base line lies half-way between.</summary>
    private static (Point From, Point To, double Rise) Stretch(EdgeCurve basis, double from, double to)
    {
        Point a = basis.At(from), b = basis.At(to);
        return (a, b, (basis.At((from + to) / 2) - a.Toward(b, 0.5)).Dot((b - a).Unit.TurnedRight));
    }

    /// <summary>The bow of each half of an arc: r (1 - cos(angle / 4)).</summary>
    private static double HalfBow(double chord, double bow)
    {
        var size = Math.Abs(bow);
        if (size < 1e-9)
            return 0;
        var quarter = CircularSegment.Angle(chord, size) / 4;
        return Math.Sign(bow) * CircularSegment.Radius(chord, size) * (1 - Math.Cos(quarter));
    }
}
