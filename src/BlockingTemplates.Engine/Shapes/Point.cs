namespace BlockingTemplates.Engine.Shapes;

/// <summary>A place in the plane, in millimetres; x to the right, y up.</summary>
public readonly record struct Point(double X, double Y)
{
    /// <summary>The origin.</summary>
    public static Point Origin => default;

    /// <summary>The place moved by a vector.</summary>
    public static Point operator +(Point place, Vector by) => new(place.X + by.X, place.Y + by.Y);

    /// <summary>The place moved back by a vector.</summary>
    public static Point operator -(Point place, Vector by) => new(place.X - by.X, place.Y - by.Y);

    /// <summary>The vector from the second place to the first.</summary>
    public static Vector operator -(Point to, Point from) => new(to.X - from.X, to.Y - from.Y);

    /// <summary>Distance to another place, in millimetres.</summary>
    public double DistanceTo(Point other) => (other - this).Length;

    /// <summary>The place a fraction of the way to another (0: here, 1: there).</summary>
    public Point Toward(Point other, double fraction) => this + (fraction * (other - this));
}
