using System.Globalization;

namespace BlockingTemplates.Output.Svg;

/// <summary>Numbers as an SVG file holds them: at most four decimals (0.0001 mm), no minus before a zero.</summary>
internal static class SvgNumber
{
    public static string Of(double value)
    {
        var text = value.ToString("0.####", CultureInfo.InvariantCulture);
        return text == "-0" ? "0" : text;
    }
}
