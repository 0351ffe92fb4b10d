using BlockingTemplates.Engine.Pins;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine;

/// <summary>What several plans of one project file have in common and where they differ, line by line.</summary>
public static class Comparison
{
    /// <summary>The lines: finished measurements, width and height over all, pulls, pins, mats, sheets, edges.</summary>
    /// <param name="parts">The parts, at least one.</param>
    public static IReadOnlyList<ComparedRow> Of(IReadOnlyList<PlannedPart> parts)
    {
        ArgumentNullException.ThrowIfNull(parts);
        List<Plan> plans = [.. parts.Select(p => p.Plan)];
        ComparedRow Lengths(string name, Func<Plan, double?> of) => new(name, ComparedMeasure.Length, [.. plans.Select(of)]);
        ComparedRow Counts(string name, Func<Plan, double?> of) => new(name, ComparedMeasure.Count, [.. plans.Select(of)]);
        var finished = plans[0].Project.Kind.FinishedSizes.Where(s => plans.Exists(p => p.Project.Finished.Sizes.ContainsKey(s.Name)));
        // The edges of a mirrored piece come in another order, so each is found by its name.
        var edges = plans[0].Pins.Edges.Select(e => e.Name).ToList();
        EdgePlan? In(Plan plan, string name) => plan.Pins.Edges.FirstOrDefault(e => e.Name == name);
        return
        [
            .. finished.Select(s => Lengths($"finished {s.Words}", p => p.Project.Finished.Sizes.TryGetValue(s.Name, out var length) ? length.Millimetres : null)),
            Lengths("finished width over all", p => Box.Around(p.Piece.Finished.Ring()).Width),
            Lengths("finished height over all", p => Box.Around(p.Piece.Finished.Ring()).Height),
            Lengths("largest pull", p => p.Pins.LayLine is null ? null : p.Pins.Marks.Max(m => m.Pull!.Value.Length)),
            Counts("pins", p => p.Pins.Marks.Count),
            Counts("mats", p => p.Mats.Mats.Count),
            .. plans[0].Guides.Select((g, i) => Counts($"sheets of {g.Paper.Name}", p => p.Guides[i].Count)),
            .. edges.Select(e => Lengths($"{e} edge, finished", p => In(p, e)?.FinishedMm)),
            .. edges.Select(e => Lengths($"{e} edge, unblocked", p => In(p, e)?.UnblockedMm)),
            .. edges.Select(e => new ComparedRow($"{e} edge, stretch", ComparedMeasure.Stretch, [.. plans.Select(p => In(p, e)?.Stretch)])),
        ];
    }
}
