using MathNet.Numerics.Integration;

namespace BlockingTemplates.Engine.Shapes;

/// <summary>An edge given by a smooth parameter from 0 to 1, measured by quadrature.</summary>
/// <remarks>
/// Arc length by Gauss-Legendre quadrature of order 16 on 16 parts of every stretch between knots; a fraction is
/// turned into a parameter by Newton steps kept inside their part by bisection, to 1e-12 of the length.
/// </remarks>
public abstract class SmoothEdge : EdgeCurve
{
    private const int PartsPerStretch = 16;
    private const int Order = 16;

    /// <summary>Least share of a cubic's greatest distance from its chord that its three quarter points show (0.914, reached by t(1-t)(t+1/4)).</summary>
    private const double SeenByQuarters = 0.91;

    private readonly Lazy<(double[] Parameter, double[] Length)> _table;

    /// <summary>Starts with nothing measured; the table of lengths is made when first asked for.</summary>
    protected SmoothEdge() => _table = new(Measure);

    /// <inheritdoc/>
    public override double Length => _table.Value.Length[^1];

    /// <inheritdoc/>
    public override IReadOnlyList<double> Breaks => [.. Enumerable.Range(0, Knots.Count).Select(i => _table.Value.Length[i * PartsPerStretch] / Length)];

    /// <summary>Parameters where the curve is less smooth, 0 and 1 included, increasing.</summary>
    protected abstract IReadOnlyList<double> Knots { get; }

    /// <inheritdoc/>
    public override Point At(double fraction) => PointAt(ParameterAt(Checked(fraction)));

    /// <inheritdoc/>
    public override Vector Direction(double fraction) => VelocityAt(ParameterAt(Checked(fraction))).Unit;

    /// <inheritdoc/>
    public override IReadOnlyList<Point> Flatten(double toleranceMm)
    {
        var points = new List<Point> { PointAt(0) };
        for (var i = 1; i < Knots.Count; i++)
            Split(Knots[i - 1], points[^1], Knots[i], PointAt(Knots[i]), SeenByQuarters * toleranceMm, points, 0);
        return points;
    }

    /// <summary>The point at a parameter.</summary>
    protected abstract Point PointAt(double parameter);

    /// <summary>The derivative by the parameter; nowhere zero.</summary>
    protected abstract Vector VelocityAt(double parameter);

    private void Split(double from, Point a, double to, Point b, double tolerance, List<Point> points, int depth)
    {
        var middle = (from + to) / 2;
        var m = PointAt(middle);
        var far = depth < 2
            || Away(m, a, b) > tolerance
            || Away(PointAt((from + middle) / 2), a, b) > tolerance
            || Away(PointAt((middle + to) / 2), a, b) > tolerance;
        if (!far || depth > 24)
        {
            points.Add(b);
            return;
        }

        Split(from, a, middle, m, tolerance, points, depth + 1);
        Split(middle, m, to, b, tolerance, points, depth + 1);
    }

    private static double Away(Point p, Point a, Point b)
    {
        var chord = b - a;
        return chord.Length > 0 ? Math.Abs(chord.Unit.Cross(p - a)) : p.DistanceTo(a);
    }

    private (double[] Parameter, double[] Length) Measure()
    {
        List<double> parameter = [0], length = [0];
        for (var i = 1; i < Knots.Count; i++)
        {
            for (var part = 1; part <= PartsPerStretch; part++)
            {
                var to = part == PartsPerStretch ? Knots[i] : Knots[i - 1] + ((Knots[i] - Knots[i - 1]) * part / PartsPerStretch);
                length.Add(length[^1] + Between(parameter[^1], to));
                parameter.Add(to);
            }
        }

        return ([.. parameter], [.. length]);
    }

    private double Between(double from, double to) => GaussLegendreRule.Integrate(t => VelocityAt(t).Length, from, to, Order);

    private double ParameterAt(double fraction)
    {
        if (fraction is 0 or 1)
            return fraction;
        var (parameter, length) = _table.Value;
        var wanted = fraction * length[^1];
        var found = Array.BinarySearch(length, wanted);
        if (found >= 0)
            return parameter[found];
        var part = Math.Clamp(~found, 1, length.Length - 1);
        double low = parameter[part - 1], high = parameter[part];
        var guess = low + ((high - low) * (wanted - length[part - 1]) / (length[part] - length[part - 1]));
        for (var step = 0; step < 60; step++)
        {
            var miss = length[part - 1] + Between(parameter[part - 1], guess) - wanted;
            if (Math.Abs(miss) <= 1e-12 * length[^1])
                break;
            if (miss > 0)
                high = guess;
            else
                low = guess;
            var next = guess - (miss / VelocityAt(guess).Length);
            guess = next > low && next < high ? next : (low + high) / 2;
        }

        return guess;
    }
}
