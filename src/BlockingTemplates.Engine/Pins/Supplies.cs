using BlockingTemplates.Engine.Measure;

namespace BlockingTemplates.Engine.Pins;

/// <summary>Counts what a plan takes: pins, combs, wires by form and length.</summary>
public static class Supplies
{
    /// <summary>One spare is laid out for so many pins or combs begun (common practice).</summary>
    public const int OneSpareFor = 20;

    /// <summary>Pins first (those that hold wires among them), then combs, then wires, the longest first; what the plan does not take is left out, but pins never.</summary>
    public static IReadOnlyList<Supply> Of(PinPlan plan, PinSettings settings)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(settings);
        var combs = plan.Marks.Count(m => m.Kind == PinKind.Comb);
        List<Supply> supplies = [With(PinKind.Pin, plan.Marks.Count - combs, settings.Owned)];
        if (combs > 0)
            supplies.Add(With(PinKind.Comb, combs, settings.Combs.Owned));
        supplies.AddRange(plan.Wires.GroupBy(w => (w.Form, w.LengthMm)).OrderByDescending(g => g.Key.LengthMm).ThenBy(g => g.Key.Form.Diameter.Millimetres).ThenBy(g => g.Key.Form.Kind).Select(g =>
            new Supply(PinKind.Wire, g.Count(), 0, settings.Wires.Owned?.Where(o => o.Form == g.Key.Form && o.Length.Millimetres == g.Key.LengthMm).Sum(o => o.Count))
            {
                Form = g.Key.Form,
                LengthMm = g.Key.LengthMm,
            }));
        return supplies;
    }

    /// <summary>Adds a note for everything of which less is at hand than the plan takes; spares are not counted.</summary>
    public static void AddNotes(PinPlan plan, PinSettings settings, Findings findings)
    {
        ArgumentNullException.ThrowIfNull(findings);
        foreach (var supply in Of(plan, settings))
        {
            if (supply.Owned is not { } owned || owned >= supply.LayOut)
                continue;
            var missing = supply.LayOut - owned;
            var (place, name, @do) = supply.Kind switch
            {
                PinKind.Comb => ("combs.owned", "combs", "Get more, or hold one edge by single pins."),
                PinKind.Wire => ("wires.owned", $"{(supply.Form!.Kind == Wires.WireKind.Stiff ? "stiff" : "flexible")} wires of {findings.Say(supply.LengthMm!.Value)}", "Get more, or hold one edge by pins or combs."),
                _ => ("pins.owned", "pins", "Get more, or plan a wider spacing."),
            };
            findings.Note(place, FormattableString.Invariant($"The plan takes {supply.LayOut} {name} and {owned} are at hand: {missing} are missing."), @do);
        }
    }

    private static Supply With(PinKind kind, int count, int? owned) => new(kind, count, (count + OneSpareFor - 1) / OneSpareFor, owned);
}
