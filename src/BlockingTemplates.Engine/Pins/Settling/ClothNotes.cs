using System.Globalization;
using BlockingTemplates.Engine.Fabrics;
using BlockingTemplates.Engine.Measure;

namespace BlockingTemplates.Engine.Pins.Settling;

/// <summary>What the maker should know of the computed cloth.</summary>
internal static class ClothNotes
{
    private const double Heavy = 3;
    private const int MostNamed = 6;

    /// <summary>Adds the note that the cloth was not found at rest, and what was done instead.</summary>
    /// <param name="computation">How it was computed.</param>
    /// <param name="isSpaced">Whether the pins stand where the cloth needed them before the mats were laid.</param>
    /// <param name="findings">Takes the note.</param>
    internal static void NotAtRest(Computation computation, bool isSpaced, Findings findings)
    {
        var pins = isSpaced ? "the pins stand where it needed them before marks moved off the seams" : "the pins stand by the spacing setting";
        if (computation.IsTimeUp)
            findings.Note("cloth", $"The time for computing was up before the cloth came to rest: nothing is told of it, and {pins}.", "Allow more time with \"timeLimit\".");
        else
            findings.Note("cloth", $"The computation of the cloth did not come to rest: nothing is told of it, and {pins}.", "Check the unblocked measurements; judge the edge between the pins by eye.");
    }

    /// <summary>Adds the notes on a cloth at rest.</summary>
    internal static void Add(ClothPlan cloth, PinPlan pins, PinSettings settings, SpacingLimits limits, Findings findings)
    {
        foreach (var hold in cloth.Edges)
        {
            if (hold is { IsKept: false, Worst: { } worst })
                NotKept(hold, worst, pins, settings, findings);
            if (hold is { Slack.Count: > 0 })
                SlackEdge(hold, pins, findings);
        }

        foreach (var region in cloth.Slack)
            findings.Note("cloth", $"The cloth stays slack {PlaceWords.Of(region.Middle, pins.Pinned)}: too many stitches there, or too small a finished size.", "Smooth it by hand before it dries, plan a larger finished size, or work fewer stitches there.");
        foreach (var region in cloth.Beyond)
            findings.Note("cloth", Text($"The cloth is stretched further than your swatch took {PlaceWords.Of(region.Middle, pins.Pinned)}: up to {100 * region.Cells.Max(c => c.Along):0} % along and {100 * region.Cells.Max(c => c.Across):0} % across the rows."), "Block a swatch that far first, or plan a smaller finished size.");
        HeavyPins(cloth, pins, findings);
        if (cloth.IsBestSoFar)
            findings.Note("cloth", "The time for computing was up: what is told of the cloth is the best found so far.", "Allow more time with \"timeLimit\" for fewer pins or the missing figures.");
    }

    private static void NotKept(EdgeStraightness hold, MarkGap worst, PinPlan pins, PinSettings settings, Findings findings)
    {
        var edge = PlaceWords.EdgeWords(pins.Edges[hold.Edge].Name);
        var dips = Math.Abs(worst.ScallopMm);
        var between = $"between marks {worst.From} and {worst.To}";
        if (pins.Edges[hold.Edge].Treatment.HeldBy == Pieces.Holding.Wire)
            findings.Note($"edge {pins.Edges[hold.Edge].Name}", $"The wire of the {edge} lies {findings.Say(dips)} off its line {between}; {findings.Say(settings.Scallop.Millimetres)} were asked for.", "Use a stiffer wire, or set a pin more there.");
        else if (pins.Edges[hold.Edge].Treatment.HasSetPlaces)
            findings.Note($"edge {pins.Edges[hold.Edge].Name}", $"The {edge} lies {findings.Say(dips)} off its line {between}, where its marks stand as you set them; {findings.Say(settings.Scallop.Millimetres)} were asked for.", "Pin its valleys too, ask for closer marks, or accept the dip.");
        else if (settings.Spacing is { } spacing)
            findings.Note($"edge {pins.Edges[hold.Edge].Name}", $"With your spacing of {findings.Say(spacing.Millimetres)} the {edge} lies {findings.Say(dips)} off its line {between}; {findings.Say(settings.Scallop.Millimetres)} were asked for.", "Leave \"pins.spacing\" out to let the cloth decide, or lay a wire or comb pins there.");
        else if (worst.WidthMm >= 2 * settings.MinSpacing.Millimetres)
            findings.Note($"edge {pins.Edges[hold.Edge].Name}", $"The {edge} lies {findings.Say(dips)} off its line {between}, where a mark moved by a stitch or no better place was found; {findings.Say(settings.Scallop.Millimetres)} were asked for.", "Set one more pin in that gap.");
        else
            findings.Note($"edge {pins.Edges[hold.Edge].Name}", $"The {edge} lies {findings.Say(dips)} off its line {between}, where pins stand as close as \"pins.minSpacing\" allows; {findings.Say(settings.Scallop.Millimetres)} were asked for.", "Lay a wire or comb pins there, stretch the piece less, work more rows, or allow closer pins.");
    }

    private static void SlackEdge(EdgeStraightness hold, PinPlan pins, Findings findings)
    {
        var edge = PlaceWords.EdgeWords(pins.Edges[hold.Edge].Name);
        var named = string.Join(", ", hold.Slack.Take(MostNamed).Select(g => $"{g.From} and {g.To}"));
        var more = hold.Slack.Count > MostNamed ? Text($" and {hold.Slack.Count - MostNamed} more") : "";
        findings.Note($"edge {pins.Edges[hold.Edge].Name}", $"The {edge} is slack between marks {named}{more}: its line there is not determined by the pull, and no scallop can be told.", "Lay it straight by hand, or plan a longer edge or fewer stitches there.");
    }

    private static void HeavyPins(ClothPlan cloth, PinPlan pins, Findings findings)
    {
        var mean = cloth.LoadShares.Average();
        var heavy = pins.Marks.Where(m => cloth.LoadShares[m.Number - 1] >= Heavy * mean).OrderByDescending(m => cloth.LoadShares[m.Number - 1]).ToList();
        if (heavy.Count == 0)
            return;
        var named = heavy.Take(MostNamed).Select(m => Text($"mark {m.Number} ({PlaceWords.Of(m.At, pins.Pinned)}) {cloth.LoadShares[m.Number - 1] / mean:0.#} times"));
        findings.Note("cloth", $"Some pins take far more than the mean pull: {string.Join(", ", named)}.", "Set two pins or a comb there, deep and slanted outward.");
    }

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
