namespace BlockingTemplates.Engine.Shapes;

/// <summary>An affine map of the plane: x' = Xx x + Xy y + X0, y' = Yx x + Yy y + Y0 (shifts in millimetres).</summary>
public readonly record struct Affine(double Xx, double Xy, double X0, double Yx, double Yy, double Y0)
{
    /// <summary>The map that leaves everything where it is.</summary>
    public static Affine Identity => new(1, 0, 0, 0, 1, 0);

    /// <summary>The map that mirrors left and right, x to -x.</summary>
    public static Affine MirrorLeftRight => new(-1, 0, 0, 0, 1, 0);

    /// <summary>Ratio of areas; negative when left and right are exchanged.</summary>
    public double Determinant => (Xx * Yy) - (Xy * Yx);

    /// <summary>A shift.</summary>
    public static Affine Shift(Vector by) => new(1, 0, by.X, 0, 1, by.Y);

    /// <summary>A turn about the origin, counter-clockwise, in radians.</summary>
    public static Affine Turn(double radians)
    {
        var (s, c) = Math.SinCos(radians);
        return new(c, -s, 0, s, c, 0);
    }

    /// <summary>A scaling by two factors along two perpendicular directions, about a fixed point.</summary>
    /// <param name="about">The point that stays.</param>
    /// <param name="radians">Angle of the first direction from x.</param>
    /// <param name="along">Factor along it.</param>
    /// <param name="across">Factor across it.</param>
    public static Affine Stretch(Point about, double radians, double along, double across)
    {
        var map = Turn(-radians).Then(new(along, 0, 0, 0, across, 0)).Then(Turn(radians));
        return Shift(Point.Origin - about).Then(map).Then(Shift(about - Point.Origin));
    }

    /// <summary>Where a point goes.</summary>
    public Point Map(Point p) => new((Xx * p.X) + (Xy * p.Y) + X0, (Yx * p.X) + (Yy * p.Y) + Y0);

    /// <summary>Where a displacement goes.</summary>
    public Vector Map(Vector v) => new((Xx * v.X) + (Xy * v.Y), (Yx * v.X) + (Yy * v.Y));

    /// <summary>This map, then another.</summary>
    public Affine Then(Affine next) => new(
        (next.Xx * Xx) + (next.Xy * Yx),
        (next.Xx * Xy) + (next.Xy * Yy),
        (next.Xx * X0) + (next.Xy * Y0) + next.X0,
        (next.Yx * Xx) + (next.Yy * Yx),
        (next.Yx * Xy) + (next.Yy * Yy),
        (next.Yx * X0) + (next.Yy * Y0) + next.Y0);
}
