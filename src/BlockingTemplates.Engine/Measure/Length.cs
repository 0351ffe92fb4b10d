namespace BlockingTemplates.Engine.Measure;

/// <summary>A length, held in millimetres.</summary>
/// <remarks>
/// Any finite value, negative ones included (a bow may be inward); the factories throw
/// <see cref="ArgumentOutOfRangeException"/> for NaN and infinities. There is no conversion from or to a
/// plain number: the unit is always named.
/// Source of the inch: international yard and pound agreement, in force 1 July 1959 (1 in = 25.4 mm exactly).
/// </remarks>
public readonly record struct Length : IComparable<Length>
{
    /// <summary>Millimetres in one inch, exactly.</summary>
    public const double MillimetresPerInch = 25.4;

    /// <summary>PDF points in one inch, exactly (ISO 32000-1, 8.3.2.3).</summary>
    public const double PointsPerInch = 72;

    private Length(double millimetres) => Millimetres = millimetres;

    /// <summary>No length at all.</summary>
    public static Length Zero => default;

    /// <summary>The length in millimetres.</summary>
    public double Millimetres { get; }

    /// <summary>The length in centimetres.</summary>
    public double Centimetres => Millimetres / 10;

    /// <summary>The length in inches.</summary>
    public double Inches => Millimetres / MillimetresPerInch;

    /// <summary>The length in PDF points of 1/72 inch.</summary>
    public double Points => Millimetres * PointsPerInch / MillimetresPerInch;

    /// <summary>A length of so many millimetres.</summary>
    public static Length FromMillimetres(double value) => new(Finite(value));

    /// <summary>A length of so many centimetres.</summary>
    public static Length FromCentimetres(double value) => new(Finite(value) * 10);

    /// <summary>A length of so many inches.</summary>
    public static Length FromInches(double value) => new(Finite(value) * MillimetresPerInch);

    /// <summary>A length of so many PDF points of 1/72 inch.</summary>
    public static Length FromPoints(double value) => new(Finite(value) * MillimetresPerInch / PointsPerInch);

    /// <summary>A length of so many of the given unit.</summary>
    public static Length From(double value, LengthUnit unit) => unit switch
    {
        LengthUnit.Millimetres => FromMillimetres(value),
        LengthUnit.Centimetres => FromCentimetres(value),
        LengthUnit.Inches => FromInches(value),
        _ => throw new ArgumentOutOfRangeException(nameof(unit)),
    };

    /// <summary>The length as a number of the given unit.</summary>
    public double In(LengthUnit unit) => unit switch
    {
        LengthUnit.Millimetres => Millimetres,
        LengthUnit.Centimetres => Centimetres,
        LengthUnit.Inches => Inches,
        _ => throw new ArgumentOutOfRangeException(nameof(unit)),
    };

    /// <inheritdoc/>
    public int CompareTo(Length other) => Millimetres.CompareTo(other.Millimetres);

    /// <summary>Whether the first is shorter.</summary>
    public static bool operator <(Length left, Length right) => left.Millimetres < right.Millimetres;

    /// <summary>Whether the first is longer.</summary>
    public static bool operator >(Length left, Length right) => left.Millimetres > right.Millimetres;

    /// <summary>Whether the first is no longer.</summary>
    public static bool operator <=(Length left, Length right) => left.Millimetres <= right.Millimetres;

    /// <summary>Whether the first is no shorter.</summary>
    public static bool operator >=(Length left, Length right) => left.Millimetres >= right.Millimetres;

    private static double Finite(double value) =>
        double.IsFinite(value) ? value : throw new ArgumentOutOfRangeException(nameof(value), "A length is a finite number.");
}
