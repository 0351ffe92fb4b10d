using System.Globalization;

namespace BlockingTemplates.Engine.Measure;

/// <summary>Writes a length as a maker reads it off a tape.</summary>
/// <remarks>
/// Centimetres to 0.1 ("148.0 cm"), millimetres to 1 ("1480 mm"), inches to the nearest 1/8 as a fraction in its lowest
/// terms ("58 1/4 in", "3/8 in", "0 in"); halves are rounded away from zero, and nothing is written as minus zero.
/// </remarks>
public static class LengthWords
{
    private const int PartsOfAnInch = 8;

    /// <summary>The length with its unit.</summary>
    public static string Of(Length length, LengthUnit unit) => $"{Number(length, unit)} {UnitOf(unit)}";

    /// <summary>A length in centimetres and, beside it, in inches.</summary>
    public static string InBoth(double millimetres)
    {
        var length = Length.FromMillimetres(millimetres);
        return $"{Of(length, LengthUnit.Centimetres)} ({Of(length, LengthUnit.Inches)})";
    }

    /// <summary>The length without its unit, for the columns of a table.</summary>
    public static string Number(Length length, LengthUnit unit) => unit switch
    {
        LengthUnit.Millimetres => Fixed(Rounded(length.Millimetres), "F0"),
        LengthUnit.Centimetres => Fixed(Rounded(length.Millimetres) / 10, "F1"),
        LengthUnit.Inches => Eighths(Rounded(length.Inches * PartsOfAnInch)),
        _ => throw new ArgumentOutOfRangeException(nameof(unit)),
    };

    /// <summary>The unit's name: mm, cm or in.</summary>
    public static string UnitOf(LengthUnit unit) => unit switch
    {
        LengthUnit.Millimetres => "mm",
        LengthUnit.Centimetres => "cm",
        LengthUnit.Inches => "in",
        _ => throw new ArgumentOutOfRangeException(nameof(unit)),
    };

    private static string Eighths(double count)
    {
        var sign = count < 0 ? "-" : "";
        var size = Math.Abs(count);
        var whole = Math.Floor(size / PartsOfAnInch);
        var over = (int)(size - (whole * PartsOfAnInch));
        if (over == 0)
            return sign + Fixed(whole, "F0");
        var parts = PartsOfAnInch;
        while (over % 2 == 0)
        {
            over /= 2;
            parts /= 2;
        }

        var fraction = string.Create(CultureInfo.InvariantCulture, $"{over}/{parts}");
        return whole == 0 ? sign + fraction : $"{sign}{Fixed(whole, "F0")} {fraction}";
    }

    // Adding 0 turns minus zero into zero.
    private static double Rounded(double value) => Math.Round(value, MidpointRounding.AwayFromZero) + 0.0;

    private static string Fixed(double value, string format) => value.ToString(format, CultureInfo.InvariantCulture);
}
