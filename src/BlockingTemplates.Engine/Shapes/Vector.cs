using System.Globalization;

namespace BlockingTemplates.Engine.Shapes;

/// <summary>A displacement in the plane, in millimetres (or a direction of length 1); x to the right, y up.</summary>
public readonly record struct Vector(double X, double Y)
{
    /// <summary>Length of the vector, in millimetres.</summary>
    public double Length => Math.Sqrt((X * X) + (Y * Y));

    /// <summary>The vector turned by a quarter turn counter-clockwise.</summary>
    public Vector TurnedLeft => new(-Y, X);

    /// <summary>The vector turned by a quarter turn clockwise: from an edge of a counter-clockwise outline, outward.</summary>
    public Vector TurnedRight => new(Y, -X);

    /// <summary>The direction of the vector, length 1; the zero vector has none and stays zero.</summary>
    public Vector Unit => Length is var l && l > 0 ? new(X / l, Y / l) : default;

    /// <summary>The unit vector at an angle from x, counter-clockwise, in radians.</summary>
    public static Vector AtAngle(double radians) => new(Math.Cos(radians), Math.Sin(radians));

    /// <summary>Sum of two vectors.</summary>
    public static Vector operator +(Vector a, Vector b) => new(a.X + b.X, a.Y + b.Y);

    /// <summary>Difference of two vectors.</summary>
    public static Vector operator -(Vector a, Vector b) => new(a.X - b.X, a.Y - b.Y);

    /// <summary>The opposite vector.</summary>
    public static Vector operator -(Vector a) => new(-a.X, -a.Y);

    /// <summary>The vector made longer by a factor.</summary>
    public static Vector operator *(double factor, Vector a) => new(factor * a.X, factor * a.Y);

    /// <summary>The two components (what a record prints of itself would turn for ever).</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"({X}, {Y})");

    /// <summary>Scalar product.</summary>
    public double Dot(Vector other) => (X * other.X) + (Y * other.Y);

    /// <summary>Vector product; positive when the other lies counter-clockwise of this.</summary>
    public double Cross(Vector other) => (X * other.Y) - (Y * other.X);
}
