using System.Globalization;
using BlockingTemplates.Engine;
using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Pins.Settling;

namespace BlockingTemplates.Drawing.Cloths;

/// <summary>What the computed cloth does, in the maker's words and units.</summary>
public static class ClothWords
{
    private const double GravityMetresPerSecond2 = 9.80665; // standard gravity: ISO 80000-3
    private const double StraightMm = 0.5;

    /// <summary>How an edge lies between its pins, to follow its lengths; null where no gap lies on it.</summary>
    public static string? Hold(Plan plan, ClothPlan cloth, int edge)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(cloth);
        if (cloth.Edges[edge] is not { } hold)
            return null;
        return hold switch
        {
            { Worst: null } => "slack between its pins, line not determined",
            { Slack.Count: > 0, Worst: { } worst } => $"slack in part; {(hold.IsKept ? "kept" : "NOT kept")} elsewhere, {At(worst)}",
            { Worst: { } worst } when Math.Abs(worst.ScallopMm) < StraightMm => "straight between pins",
            { IsKept: true, Worst: { } worst } => $"kept, {At(worst)}",
            { Worst: { } worst } => $"NOT kept, {At(worst)}",
        };
        string At(MarkGap gap) => string.Create(CultureInfo.InvariantCulture, $"{Off(plan, gap)}{(gap.ScallopMm < 0 ? " outside" : "")} at marks {gap.From}-{gap.To}");
    }

    /// <summary>What "kept" means, in one line.</summary>
    public static string Kept(Plan plan) => $"Kept: no farther than {Asked(plan)} off its line; the worst gap is named.";

    /// <summary>The scallop asked for.</summary>
    public static string Asked(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return LengthWords.Of(plan.Project.Pins.Scallop, plan.Project.Units);
    }

    /// <summary>How far the edge lies off its line in a gap, and to which side.</summary>
    public static string Scallop(Plan plan, MarkGap gap) => $"{Off(plan, gap)} {(gap.ScallopMm < 0 ? "outside" : "inside")}";

    private static string Off(Plan plan, MarkGap gap)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var mm = Math.Abs(gap.ScallopMm);
        var said = LengthWords.Of(Length.FromMillimetres(mm), plan.Project.Units);
        var over = mm > plan.Project.Pins.Scallop.Millimetres * (1 + 1e-3) && said == Asked(plan) ? "a little over " : "";
        return over + said;
    }

    /// <summary>What a softer or stiffer cloth would ask for, where that differs from the plan; null where it does not.</summary>
    public static string? Ends(Plan plan, ClothPlan cloth)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(cloth);
        string[] words = [.. new[] { End(plan, cloth, cloth.Soft, "softer"), End(plan, cloth, cloth.Stiff, "stiffer") }.OfType<string>()];
        return words.Length == 0 ? null : string.Join(" ", words);
    }

    /// <summary>The largest load in newtons and as the weight of so many grams, with its ends; null where no strips tell.</summary>
    public static string? LargestLoad(ClothPlan cloth)
    {
        ArgumentNullException.ThrowIfNull(cloth);
        return cloth.LargestLoadNewtons is not { } load ? null : string.Create(
            CultureInfo.InvariantCulture,
            $"{load.Likely:0.0} N ({load.Least:0.0} to {load.Most:0.0}), the weight of {Grams(load.Likely)} g ({Grams(load.Least)} to {Grams(load.Most)})");
    }

    private static string? End(Plan plan, ClothPlan cloth, ClothEnd? end, string how)
    {
        if (end is null)
            return null;
        string Say(double mm) => LengthWords.Of(Length.FromMillimetres(mm), plan.Project.Units);
        var pins = end.Pins is { } count && count != plan.Pins.Marks.Count ? string.Create(CultureInfo.InvariantCulture, $"it would need {count} pins") : null;
        var dips = end.ScallopMm is { } mm && cloth.WorstScallopMm is { } worst && Say(mm) != Say(worst) ? $"under these pins it would lie up to {Say(mm)} off its line" : null;
        return pins is null && dips is null ? null : $"If your cloth is {how} than taken, {string.Join("; ", new[] { pins, dips }.OfType<string>())}.";
    }

    private static string Grams(double newtons) => Math.Round(1000 * newtons / GravityMetresPerSecond2 / 10, MidpointRounding.AwayFromZero).ToString("0", CultureInfo.InvariantCulture) + "0";
}
