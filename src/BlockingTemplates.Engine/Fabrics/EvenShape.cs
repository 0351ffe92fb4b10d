using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Fabrics;

/// <summary>The affine map that brings points nearest to their marks; a rigid one in directions the points leave open.</summary>
internal static class EvenShape
{
    /// <summary>How far, as a share of their spread, points must lie off one line to tell how the cloth is stretched across it.</summary>
    private const double Ridge = 3e-3;

    /// <summary>The map with the least sum of squared distances.</summary>
    internal static Affine Fit(IReadOnlyList<(Point From, Point To)> pairs)
    {
        if (pairs.Count == 0)
            return Affine.Identity;
        var from = Mean(pairs.Select(p => p.From));
        var to = Mean(pairs.Select(p => p.To));
        double xx = 0, xy = 0, yy = 0, ax = 0, ay = 0, bx = 0, by = 0;
        foreach (var pair in pairs)
        {
            var (u, v) = (pair.From - from, pair.To - to);
            xx += u.X * u.X;
            xy += u.X * u.Y;
            yy += u.Y * u.Y;
            ax += v.X * u.X;
            ay += v.X * u.Y;
            bx += v.Y * u.X;
            by += v.Y * u.Y;
        }

        var angle = Math.Atan2(bx - ay, ax + by);
        var (sin, cos) = xx + yy > 0 ? Math.SinCos(angle) : (0, 1);
        var ridge = xx + yy > 0 ? Ridge * (xx + yy) : 1;
        xx += ridge;
        yy += ridge;
        ax += ridge * cos;
        ay -= ridge * sin;
        bx += ridge * sin;
        by += ridge * cos;
        var d = (xx * yy) - (xy * xy);
        var map = new Affine(
            ((ax * yy) - (ay * xy)) / d,
            ((ay * xx) - (ax * xy)) / d,
            0,
            ((bx * yy) - (by * xy)) / d,
            ((by * xx) - (bx * xy)) / d,
            0);
        var shift = to - map.Map(from);
        return map with { X0 = shift.X, Y0 = shift.Y };
    }

    private static Point Mean(IEnumerable<Point> points)
    {
        var sum = default(Vector);
        var count = 0;
        foreach (var p in points)
        {
            sum += p - Point.Origin;
            count++;
        }

        return Point.Origin + (1.0 / count * sum);
    }
}
