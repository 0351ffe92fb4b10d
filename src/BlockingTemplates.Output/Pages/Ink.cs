using BlockingTemplates.Drawing.Pages;

namespace BlockingTemplates.Output.Pages;

/// <summary>Greys and dashes as the formats want them.</summary>
internal static class Ink
{
    /// <summary>A grey of 0 to 1 as a level of 0 to 255.</summary>
    public static byte Level(double grey) => double.IsFinite(grey) && grey is >= 0 and <= 1
        ? (byte)Math.Round(255 * grey)
        : throw new ArgumentException("A grey is a number from 0 to 1.", nameof(grey));

    /// <summary>Dash and gap in turn, an even count of them; empty for a whole line. An odd list is taken twice.</summary>
    public static IReadOnlyList<double> Dashes(Stroke stroke) => stroke.DashMm switch
    {
        null => [],
        { Count: var n } odd when n % 2 == 1 => [.. odd, .. odd],
        var even => even,
    };
}
