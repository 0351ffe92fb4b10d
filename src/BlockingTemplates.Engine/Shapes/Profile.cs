namespace BlockingTemplates.Engine.Shapes;

/// <summary>A broken line that runs to the right, asked for its greatest height.</summary>
internal sealed class Profile
{
    private readonly double[] _x;
    private readonly double[] _y;

    /// <summary>A line through points with x rising.</summary>
    /// <param name="points">At least one point.</param>
    /// <param name="upsideDown">Whether heights are taken negative, so that the greatest tells the least.</param>
    public Profile(IReadOnlyList<Point> points, bool upsideDown = false)
    {
        _x = [.. points.Select(p => p.X)];
        _y = [.. points.Select(p => upsideDown ? -p.Y : p.Y)];
    }

    /// <summary>Greatest height between two abscissas; minus infinity where the line does not run.</summary>
    public double Highest(double left, double right)
    {
        var n = _x.Length;
        if (left > _x[n - 1] || right < _x[0])
            return double.NegativeInfinity;
        var i = Increasing.FirstFrom(_x, left);
        var best = i > 0 ? HeightAt(i - 1, left) : double.NegativeInfinity;
        for (; i < n && _x[i] <= right; i++)
            best = Math.Max(best, _y[i]);
        return i > 0 && i < n ? Math.Max(best, HeightAt(i - 1, right)) : best;
    }

    /// <summary>Greatest height between two abscissas of all discs of a radius centred on the line.</summary>
    /// <remarks>
    /// A centre at distance d beside the strip reaches sqrt(r^2 - d^2) up inside it. On a line of slope m,
    /// y + sqrt(r^2 - d^2) is greatest where the disc's slope is m, at d = r m / sqrt(1 + m^2).
    /// </remarks>
    public double Highest(double left, double right, double radius)
    {
        var best = Highest(left, right) + radius;
        var n = _x.Length;
        if (radius <= 0)
            return best;
        for (var i = Math.Max(1, Increasing.FirstFrom(_x, right)); i < n && _x[i - 1] < right + radius; i++)
            best = Math.Max(best, HighestDisc(i - 1, right, right, right + radius, radius));
        for (var i = Math.Max(1, Increasing.FirstFrom(_x, left - radius)); i < n && _x[i - 1] < left; i++)
            best = Math.Max(best, HighestDisc(i - 1, left, left - radius, left, radius));
        return best;
    }

    private double HighestDisc(int segment, double side, double least, double most, double radius)
    {
        var from = Math.Max(_x[segment], least);
        var to = Math.Min(_x[segment + 1], most);
        if (from > to)
            return double.NegativeInfinity;
        var (along, up) = (_x[segment + 1] - _x[segment], _y[segment + 1] - _y[segment]);
        var x = along > 0 ? Math.Clamp(side + (radius * up / Math.Sqrt((along * along) + (up * up))), from, to) : from;
        var d = x - side;
        return HeightAt(segment, x) + Math.Sqrt(Math.Max(0, (radius * radius) - (d * d)));
    }

    private double HeightAt(int segment, double x)
    {
        var along = _x[segment + 1] - _x[segment];
        return along > 0
            ? _y[segment] + ((x - _x[segment]) / along * (_y[segment + 1] - _y[segment]))
            : Math.Max(_y[segment], _y[segment + 1]);
    }
}
