namespace BlockingTemplates.Engine.Measure;

/// <summary>The fractions that stand in one character.</summary>
/// <remarks>Source: The Unicode Standard, character names of U+00BC to U+00BE and U+2150 to U+215E.</remarks>
internal static class VulgarFraction
{
    /// <summary>Its value, or null for any other character.</summary>
    public static double? Of(char c) => c switch
    {
        '\u00BC' => 1.0 / 4,
        '\u00BD' => 1.0 / 2,
        '\u00BE' => 3.0 / 4,
        '\u2150' => 1.0 / 7,
        '\u2151' => 1.0 / 9,
        '\u2152' => 1.0 / 10,
        '\u2153' => 1.0 / 3,
        '\u2154' => 2.0 / 3,
        '\u2155' => 1.0 / 5,
        '\u2156' => 2.0 / 5,
        '\u2157' => 3.0 / 5,
        '\u2158' => 4.0 / 5,
        '\u2159' => 1.0 / 6,
        '\u215A' => 5.0 / 6,
        '\u215B' => 1.0 / 8,
        '\u215C' => 3.0 / 8,
        '\u215D' => 5.0 / 8,
        '\u215E' => 7.0 / 8,
        _ => null,
    };
}
