namespace BlockingTemplates.Engine.Shapes;

/// <summary>A stretch of a line that never turns back to the left.</summary>
internal sealed class RightwardRun
{
    private readonly double[] _x;
    private readonly double[] _y;

    private RightwardRun(IEnumerable<Point> points)
    {
        Point[] held = [.. points];
        _x = [.. held.Select(p => p.X)];
        _y = [.. held.Select(p => p.Y)];
    }

    /// <summary>A ring cut where it turns back along x; each run then crosses a strip in one go.</summary>
    public static IEnumerable<RightwardRun> Split(IReadOnlyList<Point> ring)
    {
        var run = new List<Point> { ring[0] };
        var heading = 0;
        for (var i = 1; i <= ring.Count; i++)
        {
            var next = ring[i % ring.Count];
            var step = Math.Sign(next.X - run[^1].X);
            if (step * heading < 0)
            {
                yield return Headed(run, heading);
                run = [run[^1]];
                heading = 0;
            }

            heading = step == 0 ? heading : step;
            run.Add(next);
        }

        yield return Headed(run, heading);
    }

    /// <summary>Heights of the part from a strip's left side on and short of its right side, or null.</summary>
    /// <remarks>
    /// Both ends are raised by the tolerance, so that a height just under a line of the lattice counts as on it; but a
    /// greatest height that is only neared at the right side, where the strip has ended, is lowered by it.
    /// </remarks>
    public Extent? InStrip(double left, double right, double tolerance)
    {
        var n = _x.Length;
        if (_x[n - 1] < left - tolerance || _x[0] >= right - tolerance)
            return null;
        var i = Increasing.FirstFrom(_x, left - tolerance);
        var (low, high) = (double.PositiveInfinity, double.NegativeInfinity);
        if (i > 0 && _x[i] > left + tolerance)
            low = high = HeightAt(i - 1, left);
        for (; i < n && _x[i] < right - tolerance; i++)
            (low, high) = (Math.Min(low, _y[i]), Math.Max(high, _y[i]));
        high += tolerance;
        if (i > 0 && i < n)
        {
            var neared = _x[i] > right + tolerance ? HeightAt(i - 1, right) : _y[i];
            (low, high) = (Math.Min(low, neared), Math.Max(high, neared - tolerance));
        }

        return new(low + tolerance, high);
    }

    private static RightwardRun Headed(List<Point> run, int heading) => new(heading < 0 ? Enumerable.Reverse(run) : run);

    private double HeightAt(int segment, double x) =>
        _y[segment] + ((x - _x[segment]) / (_x[segment + 1] - _x[segment]) * (_y[segment + 1] - _y[segment]));
}
