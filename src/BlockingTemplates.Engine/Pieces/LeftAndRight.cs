using System.Globalization;
using BlockingTemplates.Engine.Measure;

namespace BlockingTemplates.Engine.Pieces;

/// <summary>What is done to the left and right measurements of kinds whose edges are called so.</summary>
public static class LeftAndRight
{
    private const double OfferBelow = 0.03;

    /// <summary>Left and right exchanged, as measured from the other side of the work.</summary>
    public static Measurements Exchanged(Measurements measured)
    {
        ArgumentNullException.ThrowIfNull(measured);
        return measured with
        {
            Sides = Exchange(measured.Sides),
            Bows = Exchange(measured.Bows),
            Along = Exchange(measured.Along),
            Diagonal = measured.Diagonal is { } d ? d with { From = Other(d.From), To = Other(d.To) } : null,
        };
    }

    /// <summary>Left and right averaged where both were measured; each pair that differed is told in a note.</summary>
    public static Measurements Averaged(Measurements measured, Findings findings)
    {
        ArgumentNullException.ThrowIfNull(measured);
        return measured with
        {
            Sides = Average(measured.Path, "sides", measured.Sides, findings),
            Bows = Average(measured.Path, "bows", measured.Bows, findings),
            Along = Average(measured.Path, "along", measured.Along, findings),
        };
    }

    /// <summary>Adds a note where left and right differ by less than 3 %, offering to even them out.</summary>
    public static void Offer(Measurements measured, Findings findings)
    {
        ArgumentNullException.ThrowIfNull(measured);
        foreach (var (group, lengths) in new[] { ("sides", measured.Sides), ("along", measured.Along) })
        {
            if (Pair(lengths) is var (left, right) && left != right && Math.Abs(left - right) < OfferBelow * Math.Max(left, right))
                findings.Note($"{measured.Path}.{group}", Text($"Left and right differ by less than 3 %: {findings.Say(left)} and {findings.Say(right)}."), "If both sides were worked alike, write \"evenOut\": true: both are then taken as their mean.");
        }
    }

    private static Dictionary<string, Length> Average(string path, string group, IReadOnlyDictionary<string, Length> lengths, Findings findings)
    {
        var averaged = lengths.ToDictionary();
        if (Pair(lengths) is var (left, right) && left != right)
        {
            var mean = (left + right) / 2;
            averaged["left"] = averaged["right"] = Length.FromMillimetres(mean);
            findings.Note($"{path}.{group}", Text($"Left {findings.Say(left)} and right {findings.Say(right)} are evened out: both are taken as {findings.Say(mean)}."), "Write \"evenOut\": false if the two sides really differ.");
        }

        return averaged;
    }

    private static (double Left, double Right)? Pair(IReadOnlyDictionary<string, Length> lengths) =>
        lengths.TryGetValue("left", out var left) && lengths.TryGetValue("right", out var right) ? (left.Millimetres, right.Millimetres) : null;

    private static Dictionary<string, Length> Exchange(IReadOnlyDictionary<string, Length> lengths) =>
        lengths.ToDictionary(l => Other(l.Key), l => l.Value);

    private static string Other(string name) =>
        name.Contains("left", StringComparison.Ordinal) ? name.Replace("left", "right", StringComparison.Ordinal) : name.Replace("right", "left", StringComparison.Ordinal);

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
