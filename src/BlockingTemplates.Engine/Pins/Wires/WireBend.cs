using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Pins.Wires;

/// <summary>Where an edge turns tightest.</summary>
/// <param name="RadiusMm">Radius there, in millimetres; infinite for a straight line.</param>
/// <param name="Fraction">Its place, as a fraction of the edge.</param>
public readonly record struct WireBend(double RadiusMm, double Fraction)
{
    /// <summary>Length over which the turn is taken: a wire rounds off what is finer.</summary>
    public const double WindowMm = 20;

    private const double Straight = 1e-9;

    /// <summary>The tightest place of an edge: the turn over 2 cm of it, every 2 mm.</summary>
    public static WireBend Tightest(EdgeCurve curve)
    {
        ArgumentNullException.ThrowIfNull(curve);
        var window = Math.Min(WindowMm, curve.Length);
        var steps = Math.Max(1, (int)Math.Ceiling((curve.Length - window) / (WindowMm / 10)));
        var tightest = new WireBend(double.PositiveInfinity, 0.5);
        for (var i = 0; i <= steps; i++)
        {
            var from = (curve.Length - window) / curve.Length * i / steps;
            var to = Math.Min(1, from + (window / curve.Length));
            var (a, b) = (curve.Direction(from), curve.Direction(to));
            var turn = Math.Abs(Math.Atan2(a.Cross(b), a.Dot(b)));
            if (turn > Straight && window / turn < tightest.RadiusMm)
                tightest = new(window / turn, (from + to) / 2);
        }

        return tightest;
    }
}
