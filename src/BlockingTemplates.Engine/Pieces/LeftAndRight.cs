using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Pieces;

/// <summary>What is done to the left and right measurements of kinds whose edges are called so.</summary>
public static class LeftAndRight
{
    private const double OfferBelow = 0.03;
    private static readonly string[] Both = ["left", "right"];

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
            if (Pair(lengths) is var (left, right) && left != right && Math.Abs(left - right) < OfferBelow * Math.Max(left, right))
                findings.Note($"{measured.Path}.{group}", $"Left and right differ by less than 3 %: {findings.Say(left)} and {findings.Say(right)}.", "If both sides were worked alike, write \"evenOut\": true: both are then taken as their mean.");
        }
    }

    private static Dictionary<string, Length> Average(Measurements measured, string group, IReadOnlyDictionary<string, Length> lengths, Findings findings)
    {
        var averaged = lengths.ToDictionary();
        var place = $"{measured.Path}.{group}";
        if (Pair(lengths) is var (left, right))
        {
            if (left != right)
            {
                var mean = (left + right) / 2;
                averaged["left"] = averaged["right"] = Length.FromMillimetres(mean);
                findings.Note(place, $"Left {findings.Say(left)} and right {findings.Say(right)} are evened out: both are taken as {findings.Say(mean)}.", "Write \"evenOut\": false if the two sides really differ.");
            }
        }
        else if ((lengths.ContainsKey("left") || lengths.ContainsKey("right")) && !measured.Unreadable.Any(u => u.StartsWith(place, StringComparison.Ordinal)))
        {
            findings.Note(place, "Only one of left and right stands here: the two cannot be evened out in it.", "Measure both sides in the same way.");
        }

        return averaged;
    }

    /// <summary>The bows, with a 0 for the side that was taped straight across only, where the other has a bow.</summary>
    private static IReadOnlyDictionary<string, Length> WithStraightOnes(Measurements measured)
    {
        var missing = Both.Where(e => !measured.Bows.ContainsKey(e)).ToList();
        return missing is [var one] && measured.Sides.ContainsKey(one) && !measured.Along.ContainsKey(one)
            ? measured.Bows.Append(new(one, Length.Zero)).ToDictionary()
            : measured.Bows;
    }

    private static (double Left, double Right)? Pair(IReadOnlyDictionary<string, Length> lengths) =>
        lengths.TryGetValue("left", out var left) && lengths.TryGetValue("right", out var right) ? (left.Millimetres, right.Millimetres) : null;

    private static string Other(string name) =>
        name.Contains("left", StringComparison.Ordinal) ? name.Replace("left", "right", StringComparison.Ordinal) : name.Replace("right", "left", StringComparison.Ordinal);
}
