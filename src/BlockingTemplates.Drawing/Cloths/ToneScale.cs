using System.Globalization;
using BlockingTemplates.Engine.Pins.Settling;

namespace BlockingTemplates.Drawing.Cloths;

/// <summary>Greys for stretch: a few steps of round percentages, darker for more; the same for every picture of a piece.</summary>
public sealed class ToneScale
{
    private const int MostSteps = 5;
    private const double OutlyingShare = 0.03;
    private const double Lightest = 0.97;
    private const double Darkest = 0.5;
    private static readonly double[] Steps = [0.01, 0.02, 0.05, 0.1, 0.2, 0.5, 1, 2, 5];

    private ToneScale(IReadOnlyList<double> bounds) => Bounds = bounds;

    /// <summary>Where the tones change, increasing; fractions of the length at rest. One tone more than bounds.</summary>
    public IReadOnlyList<double> Bounds { get; }

    /// <summary>The scale for stretch along and across the rows, the few cells beside pins and corners that stick out left aside.</summary>
    public static ToneScale For(StretchMap map)
    {
        ArgumentNullException.ThrowIfNull(map);
        double[] values = [.. map.Cells.SelectMany(c => new[] { c.Along, c.Across }).Order()];
        if (values.Length == 0)
            return new([]);
        var aside = (int)(OutlyingShare * values.Length);
        var (low, high) = (values[aside], values[^(1 + aside)]);
        var step = Steps.FirstOrDefault(s => Inner(low, high, s).Count() <= MostSteps, Steps[^1]);
        return new([.. Inner(low, high, step).Take(MostSteps)]);
    }

    /// <summary>The tone of a stretch, from 0, the lightest.</summary>
    public int Tone(double stretch) => Bounds.Count(b => stretch >= b);

    /// <summary>The grey of a tone: 0 black to 1 white.</summary>
    public double Grey(int tone) => Bounds.Count == 0 ? Lightest : Lightest - ((Lightest - Darkest) * tone / Bounds.Count);

    /// <summary>The range of a tone in words.</summary>
    public string Words(int tone) =>
        Bounds.Count == 0 ? "all alike"
        : tone == 0 ? $"under {Percent(Bounds[0])}"
        : tone == Bounds.Count ? $"{Percent(Bounds[^1])} and more"
        : string.Create(CultureInfo.InvariantCulture, $"{100 * Bounds[tone - 1]:0} to {Percent(Bounds[tone])}");

    /// <summary>A fraction as whole per cent; nothing is minus zero.</summary>
    public static string Percent(double fraction) => string.Create(CultureInfo.InvariantCulture, $"{Math.Round(100 * fraction, MidpointRounding.AwayFromZero) + 0.0:0} %");

    /// <summary>Multiples of a step between two values.</summary>
    private static IEnumerable<double> Inner(double low, double high, double step)
    {
        for (var k = Math.Ceiling((low / step) + 1e-9); k * step < high; k++)
            yield return (k * step) + 0.0; // no minus zero
    }
}
