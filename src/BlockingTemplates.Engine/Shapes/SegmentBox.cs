namespace BlockingTemplates.Engine.Shapes;

/// <summary>Distances between straight stretches and upright boxes.</summary>
public static class SegmentBox
{
    /// <summary>Least distance between a stretch and a box, in millimetres; 0 where they meet.</summary>
    public static double Distance(Point a, Point b, Box box)
    {
        if (Meets(a, b, box))
            return 0;
        var least = Math.Min(ToBox(a, box), ToBox(b, box));
        ReadOnlySpan<Point> corners = [new(box.Left, box.Lower), new(box.Right, box.Lower), new(box.Right, box.Upper), new(box.Left, box.Upper)];
        foreach (var corner in corners)
            least = Math.Min(least, ToSegment(corner, a, b));
        return least;
    }

    /// <summary>Whether a stretch and a box have a point in common.</summary>
    public static bool Meets(Point a, Point b, Box box)
    {
        // Liang and Barsky's clipping of a stretch to a box (ACM Transactions on Graphics 3, 1984, 1).
        double from = 0, to = 1;
        return Clip(a.X - box.Left, b.X - a.X, ref from, ref to)
            && Clip(box.Right - a.X, a.X - b.X, ref from, ref to)
            && Clip(a.Y - box.Lower, b.Y - a.Y, ref from, ref to)
            && Clip(box.Upper - a.Y, a.Y - b.Y, ref from, ref to);
    }

    /// <summary>Distance of a point from a stretch, in millimetres.</summary>
    public static double ToSegment(Point p, Point a, Point b)
    {
        var step = b - a;
        var squared = step.Dot(step);
        var along = squared > 0 ? Math.Clamp((p - a).Dot(step) / squared, 0, 1) : 0;
        return p.DistanceTo(a.Toward(b, along));
    }

    /// <summary>The point of a box nearest to a point.</summary>
    public static Point Nearest(Point p, Box box) => new(Math.Clamp(p.X, box.Left, box.Right), Math.Clamp(p.Y, box.Lower, box.Upper));

    private static double ToBox(Point p, Box box) => p.DistanceTo(Nearest(p, box));

    private static bool Clip(double inside, double gain, ref double from, ref double to)
    {
        if (gain == 0)
            return inside >= 0;
        var at = -inside / gain;
        if (gain > 0)
            from = Math.Max(from, at);
        else
            to = Math.Min(to, at);
        return from <= to;
    }
}
