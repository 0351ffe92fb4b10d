using System.Globalization;
using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Pieces;

namespace BlockingTemplates.Engine.Pins;

/// <summary>Tells what it changes that a piece was measured dry and will be pinned damp.</summary>
public static class DryAndDamp
{
    /// <summary>Adds the note for a piece that was changed from dry to damp; none for another.</summary>
    /// <param name="plan">The plan of the damp piece, not turned or shifted yet.</param>
    /// <param name="piece">The damp piece.</param>
    /// <param name="findings">Takes the note.</param>
    public static void AddNote(PinPlan plan, Piece piece, Findings findings)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(piece);
        ArgumentNullException.ThrowIfNull(findings);
        if (piece is not { MeasuredDry: { } dry, Fabric.WetChange: { } change } || plan.LayLine is null)
            return;
        var dryLay = PinPlanner.LayLine(dry, plan.Pinned, [.. plan.Edges.Select(e => e.Match)], plan.Anchor);
        var dryPull = plan.Marks.Max(m => m.At.DistanceTo(dryLay.Edges[m.Edge].Curve.At(m.RestFraction)));
        var dampPull = plan.Marks.Max(m => m.Pull?.Length ?? 0);
        var edges = plan.Edges.Select((e, i) => Text($"{e.Name} {Percent(e.Stretch!.Value)} instead of {Percent((e.PinnedMm / dry.Edges[i].Curve.Length) - 1)}"));
        findings.Note(
            "fabric.wetChange",
            Text($"The piece was measured dry; wet, it changes by {Percent(change.Along)} along the rows and {Percent(change.Across)} across, and the plan is made for that. The longest pull is {findings.Say(dampPull)} instead of {findings.Say(dryPull)}; the edges are stretched by: {string.Join(", ", edges)}."),
            "Lay it down damp: dry, it would not lie on the lay line. Edge strips are as long as the dry edges: hang the markers before wetting.");
    }

    private static string Percent(double fraction) => Text($"{100 * fraction:0.#} %");

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
