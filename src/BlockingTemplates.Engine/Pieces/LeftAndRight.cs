using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Pieces;

/// <summary>What is done to the left and right measurements of kinds whose edges are called so.</summary>
public static class LeftAndRight
{
    private const double OfferBelow = 0.03;

    /// <summary>The outline with the words left and right exchanged in its names, as seen from the other side of the work.</summary>
    public static Outline Renamed(Outline outline)
    {
        ArgumentNullException.ThrowIfNull(outline);
        return new(
            [.. outline.Edges.Select(e => e with { Name = Other(e.Name) })],
            [.. outline.Corners.Select(c => c with { Name = Other(c.Name) })]);
    }

    /// <summary>Left and right averaged where both were measured; each pair that differed, or that cannot be averaged, is told in a note.</summary>
    public static Measurements Averaged(Measurements measured, Findings findings)
    {
        ArgumentNullException.ThrowIfNull(measured);
        ArgumentNullException.ThrowIfNull(findings);
        return measured with
        {
            Sides = Average(measured, "sides", measured.Sides, findings),
            Bows = Average(measured, "bows", WithStraightOnes(measured), findings),
            Along = Average(measured, "along", measured.Along, findings),
        };
    }

    /// <summary>Adds a note where left and right differ by less than 3 %, offering to even them out.</summary>
    public static void Offer(Measurements measured, Findings findings)
    {
        ArgumentNullException.ThrowIfNull(measured);
        ArgumentNullException.ThrowIfNull(findings);
        foreach (var (group, lengths) in new[] { ("sides", measured.Sides), ("along", measured.Along) })
        {
            foreach (var left in LeftNames(lengths))
            {
                if (Pair(lengths, left) is var (one, other) && one != other && Math.Abs(one - other) < OfferBelow * Math.Max(one, other))
                    findings.Note($"{measured.Path}.{group}", $"{Capital(left)} and {Other(left)} differ by less than 3 %: {findings.Say(one)} and {findings.Say(other)}.", "If both sides were worked alike, write \"evenOut\": true: both are then taken as their mean.");
            }
        }
    }

    private static Dictionary<string, Length> Average(Measurements measured, string group, IReadOnlyDictionary<string, Length> lengths, Findings findings)
    {
        var averaged = lengths.ToDictionary();
        var place = $"{measured.Path}.{group}";
        foreach (var left in LeftNames(lengths))
        {
            var right = Other(left);
            if (Pair(lengths, left) is var (one, other))
            {
                if (one == other)
                    continue;
                var mean = (one + other) / 2;
                averaged[left] = averaged[right] = Length.FromMillimetres(mean);
                findings.Note(place, $"{Capital(left)} {findings.Say(one)} and {right} {findings.Say(other)} are evened out: both are taken as {findings.Say(mean)}.", "Write \"evenOut\": false if the two sides really differ.");
            }
            else if (!measured.Unreadable.Any(u => u.StartsWith(place, StringComparison.Ordinal)))
                findings.Note(place, $"Only one of {left} and {right} stands here: the two cannot be evened out in it.", "Measure both sides in the same way.");
        }

        return averaged;
    }

    /// <summary>The bows, with a 0 for a side that was taped straight across only, where its partner has a bow.</summary>
    private static Dictionary<string, Length> WithStraightOnes(Measurements measured)
    {
        var bows = measured.Bows.ToDictionary();
        foreach (var missing in measured.Bows.Keys.Select(Other).Where(o => !measured.Bows.ContainsKey(o)).ToList())
        {
            if (measured.Sides.ContainsKey(missing) && !measured.Along.ContainsKey(missing))
                bows.Add(missing, Length.Zero);
        }

        return bows;
    }

    /// <summary>The names that speak of the left, of all that stand here themselves or by their partner.</summary>
    private static List<string> LeftNames(IReadOnlyDictionary<string, Length> lengths) =>
        [.. lengths.Keys.Where(k => Other(k) != k).Select(k => k.Contains("left", StringComparison.Ordinal) ? k : Other(k)).Distinct()];

    private static (double Left, double Right)? Pair(IReadOnlyDictionary<string, Length> lengths, string left) =>
        lengths.TryGetValue(left, out var one) && lengths.TryGetValue(Other(left), out var other) ? (one.Millimetres, other.Millimetres) : null;

    private static string Capital(string name) => char.ToUpperInvariant(name[0]) + name[1..];

    /// <summary>The name with the words left and right exchanged.</summary>
    public static string Other(string name) =>
        name.Contains("left", StringComparison.Ordinal) ? name.Replace("left", "right", StringComparison.Ordinal) : name.Replace("right", "left", StringComparison.Ordinal);
}
