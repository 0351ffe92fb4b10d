namespace BlockingTemplates.Engine.Shapes;

/// <summary>An upright rectangle, in millimetres.</summary>
/// <param name="Left">Least x.</param>
/// <param name="Lower">Least y.</param>
/// <param name="Right">Greatest x.</param>
/// <param name="Upper">Greatest y.</param>
public readonly record struct Box(double Left, double Lower, double Right, double Upper)
{
    /// <summary>Extent along x, in millimetres.</summary>
    public double Width => Right - Left;

    /// <summary>Extent along y, in millimetres.</summary>
    public double Height => Upper - Lower;

    /// <summary>The middle.</summary>
    public Point Centre => new((Left + Right) / 2, (Lower + Upper) / 2);

    /// <summary>The least box that holds all points; at least one is needed.</summary>
    public static Box Around(IEnumerable<Point> points)
    {
        double left = double.PositiveInfinity, lower = left, right = double.NegativeInfinity, upper = right;
        foreach (var p in points)
        {
            left = Math.Min(left, p.X);
            right = Math.Max(right, p.X);
            lower = Math.Min(lower, p.Y);
            upper = Math.Max(upper, p.Y);
        }

        return left <= right ? new(left, lower, right, upper) : throw new ArgumentException("A box needs a point.", nameof(points));
    }

    /// <summary>A box of a size about a middle.</summary>
    public static Box About(Point centre, double width, double height) =>
        new(centre.X - (width / 2), centre.Y - (height / 2), centre.X + (width / 2), centre.Y + (height / 2));

    /// <summary>The box made larger on all sides (smaller for a negative distance).</summary>
    public Box Grown(double by) => new(Left - by, Lower - by, Right + by, Upper + by);

    /// <summary>The box moved.</summary>
    public Box Moved(Vector by) => new(Left + by.X, Lower + by.Y, Right + by.X, Upper + by.Y);

    /// <summary>Whether a point lies in it or on its border.</summary>
    public bool Holds(Point p) => p.X >= Left && p.X <= Right && p.Y >= Lower && p.Y <= Upper;

    /// <summary>Whether another box lies in it whole (borders may touch).</summary>
    public bool Holds(Box other) => other.Left >= Left && other.Right <= Right && other.Lower >= Lower && other.Upper <= Upper;

    /// <summary>Whether the insides of the two have a point in common.</summary>
    public bool Overlaps(Box other) => other.Left < Right && other.Right > Left && other.Lower < Upper && other.Upper > Lower;
}
