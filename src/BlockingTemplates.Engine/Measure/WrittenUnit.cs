namespace BlockingTemplates.Engine.Measure;

/// <summary>A unit that a length may be written in, the names people give it, and its size.</summary>
/// <param name="IsMetric">Whether its size is in millimetres; else it is in inches.</param>
/// <param name="Size">Its size.</param>
internal sealed record WrittenUnit(bool IsMetric, double Size)
{
    private static readonly WrittenUnit Millimetre = new(true, 1);
    private static readonly WrittenUnit Centimetre = new(true, 10);
    private static readonly WrittenUnit Metre = new(true, 1000);
    private static readonly WrittenUnit Inch = new(false, 1);
    private static readonly WrittenUnit Foot = new(false, 12);
    private static readonly WrittenUnit Yard = new(false, 36);

    /// <summary>The unit of a name in any case, or null.</summary>
    public static WrittenUnit? Named(string name) => name.ToLowerInvariant() switch
    {
        "mm" or "millimetre" or "millimetres" or "millimeter" or "millimeters" => Millimetre,
        "cm" or "centimetre" or "centimetres" or "centimeter" or "centimeters" => Centimetre,
        "m" or "metre" or "metres" or "meter" or "meters" => Metre,
        "in" or "inch" or "inches" or "\"" or "''" => Inch,
        "ft" or "foot" or "feet" or "'" => Foot,
        "yd" or "yds" or "yard" or "yards" => Yard,
        _ => null,
    };

    /// <summary>The unit of a file.</summary>
    public static WrittenUnit Of(LengthUnit unit) => unit switch
    {
        LengthUnit.Millimetres => Millimetre,
        LengthUnit.Centimetres => Centimetre,
        LengthUnit.Inches => Inch,
        _ => throw new ArgumentOutOfRangeException(nameof(unit)),
    };
}
