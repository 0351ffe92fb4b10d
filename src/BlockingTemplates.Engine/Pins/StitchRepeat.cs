using System.Globalization;
using BlockingTemplates.Engine.Pieces;

namespace BlockingTemplates.Engine.Pins;

/// <summary>Tells in words after how many stitches or rows of an edge its marks come.</summary>
public static class StitchRepeat
{
    /// <summary>The words, such as "every 8th stitch, near the tips every 6th"; null where the edge is not counted or has fewer than two marks.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="edge">Index of the edge.</param>
    public static string? Of(PinPlan plan, int edge)
    {
        ArgumentNullException.ThrowIfNull(plan);
        if (plan.Edges[edge].Treatment is not { Count: { } count, Of: var of })
            return null;
        var next = (edge + 1) % plan.Edges.Count;
        List<double> at = [.. plan.Marks.Where(m => m.Edge == edge).Select(m => m.Count!.Value).Order()];
        if (plan.Marks.Any(m => m.Edge == next && m.IsCorner))
            at.Add(count);
        var gaps = at.Zip(at.Skip(1), (a, b) => b - a).ToList();
        if (gaps.Count == 0)
            return null;
        var what = of == CountedIn.Rows ? "row" : "stitch";
        return Words(gaps, what, (plan.Pinned.Corners[edge].Name, plan.Pinned.Corners[next].Name));
    }

    /// <summary>The words for gaps in order along an edge.</summary>
    /// <param name="gaps">Stitches from each mark to the next; half ones where a mark lies between two stitches. At least one.</param>
    /// <param name="what">What is counted: stitch or row.</param>
    /// <param name="corners">Names of the corners it starts and ends at.</param>
    public static string Words(IReadOnlyList<double> gaps, string what, (string First, string Last) corners)
    {
        ArgumentNullException.ThrowIfNull(gaps);
        var middle = gaps.Order().ElementAt(gaps.Count / 2);
        // Even places that go to the nearest stitch lie one stitch more or less apart.
        bool IsUsual(double gap) => Math.Abs(gap - middle) <= 1;
        var first = gaps.TakeWhile(g => !IsUsual(g)).ToList();
        var last = gaps.Skip(first.Count).Reverse().TakeWhile(g => !IsUsual(g)).ToList();
        var words = Every([.. gaps.Skip(first.Count).SkipLast(last.Count)], what);
        if (first.Count > 0 && last.Count > 0 && Every(first, "") == Every(last, ""))
            return $"{words}, near {Both(corners)} {Every(first, "")}";
        return words
            + (first.Count > 0 ? $", near the {corners.First} {Every(first, "")}" : "")
            + (last.Count > 0 ? $", near the {corners.Last} {Every(last, "")}" : "");
    }

    private static string Both((string First, string Last) corners) =>
        corners.First.EndsWith("tip", StringComparison.Ordinal) && corners.Last.EndsWith("tip", StringComparison.Ordinal) ? "the tips" : "both corners";

    private static string Every(List<double> gaps, string what)
    {
        var (least, most) = ((int)Math.Floor(gaps.Min()), (int)Math.Ceiling(gaps.Max()));
        var space = what.Length > 0 ? " " : "";
        if (least == most)
            return least == 1 && what.Length > 0 ? $"every {what}" : $"every {Ordinal(least)}{space}{what}";
        return $"every {Ordinal(least)} {(most - least == 1 ? "or" : "to")} {Ordinal(most)}{space}{what}";
    }

    private static string Ordinal(int number) => number.ToString(CultureInfo.InvariantCulture) + (number % 100 is 11 or 12 or 13
        ? "th"
        : (number % 10) switch { 1 => "st", 2 => "nd", 3 => "rd", _ => "th" });
}
