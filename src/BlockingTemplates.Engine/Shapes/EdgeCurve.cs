namespace BlockingTemplates.Engine.Shapes;

/// <summary>The line of one edge from its first corner to its last, in millimetres. Immutable.</summary>
/// <remarks>Fractions run from 0 (first corner) to 1 (last corner) by arc length.</remarks>
public abstract class EdgeCurve
{
    /// <summary>Arc length in millimetres, above 0.</summary>
    public abstract double Length { get; }

    /// <summary>Fractions between which the curve is smooth, increasing, 0 and 1 included.</summary>
    public virtual IReadOnlyList<double> Breaks => [0, 1];

    /// <summary>Where the curve starts.</summary>
    public Point Start => At(0);

    /// <summary>Where the curve ends.</summary>
    public Point End => At(1);

    /// <summary>The point at a fraction of the arc length; values outside 0 to 1 throw.</summary>
    public abstract Point At(double fraction);

    /// <summary>The direction of travel at a fraction of the arc length, length 1.</summary>
    public abstract Vector Direction(double fraction);

    /// <summary>The direction to the right of travel (away from the piece on a counter-clockwise outline), length 1; at a tip or a valley half-way between both sides'.</summary>
    public virtual Vector Outward(double fraction) => Direction(fraction).TurnedRight;

    /// <summary>Points on the curve, both ends included, whose joining lines stay within a distance of it.</summary>
    /// <param name="toleranceMm">Greatest distance between the curve and the lines, in millimetres, above 0.</param>
    public abstract IReadOnlyList<Point> Flatten(double toleranceMm);

    /// <summary>The image of the curve under a map of the plane.</summary>
    public abstract EdgeCurve Mapped(Affine map);

    /// <summary>The same line travelled the other way.</summary>
    public abstract EdgeCurve Reversed();

    /// <summary>The fraction itself, or <see cref="ArgumentOutOfRangeException"/> outside 0 to 1.</summary>
    protected static double Checked(double fraction) =>
        fraction is >= 0 and <= 1 ? fraction : throw new ArgumentOutOfRangeException(nameof(fraction), "A fraction of an edge lies between 0 and 1.");
}
