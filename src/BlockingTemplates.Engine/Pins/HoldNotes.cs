using System.Globalization;
using BlockingTemplates.Engine.Fabrics;
using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Pins.Wires;

namespace BlockingTemplates.Engine.Pins;

/// <summary>What has to be told of edges held by wires and combs.</summary>
public static class HoldNotes
{
    /// <summary>Adds the notes of a plan.</summary>
    public static void Add(PinPlan plan, Piece piece, PinSettings settings, Findings findings)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(piece);
        ArgumentNullException.ThrowIfNull(settings);
        ArgumentNullException.ThrowIfNull(findings);
        foreach (var wired in plan.Wired)
            Wire(plan, wired, findings);
        for (var i = 0; i < plan.Edges.Count; i++)
        {
            var treatment = plan.Edges[i].Treatment;
            if (treatment.HeldBy == Holding.Comb)
                Combs(plan, i, settings, findings);
            else if (treatment.HasSetPlaces && treatment.Hold is Holding.Wire or Holding.Comb)
                findings.Note($"piece.edges.{plan.Edges[i].Name}.hold", $"The marks of the {plan.Edges[i].Name} edge stand where you said, at its points or stitches, so single pins hold it.", "Leave out \"points\" or \"every\" to have it held by wires or combs.");
        }
    }

    private static void Wire(PinPlan plan, WiredEdge wired, Findings findings)
    {
        var edge = plan.Edges[wired.Edge];
        var place = $"piece.edges.{edge.Name}.hold";
        if (!wired.Follows)
        {
            findings.Note(
                place,
                Text($"The {edge.Name} edge turns within a radius of {findings.Say(wired.Tightest.RadiusMm)} about {findings.Say(wired.Tightest.Fraction * edge.PinnedMm)} from {plan.Pinned.Corners[wired.Edge].Name}{Stitch(edge, wired.Tightest.Fraction)}; {Name(wired.Form)} stays bent where it is bent tighter than {findings.Say(wired.Form.TightestRadiusMm)}."),
                "Use a thinner flexible wire there, or end the wire before the turn and hold the turn by pins.");
        }

        if (wired.IsLimp)
        {
            findings.Note(place, $"On the {edge.Name} edge {Name(wired.Form)} is too limp to save a pin under this pull: it is held as often as the edge would be pinned.", "Use a thicker wire, or hold the edge by pins.");
            return;
        }

        var range = wired.MarksIfSoft == wired.Marks.Count
            ? Text($"{wired.Marks.Count} pins, corners included, hold it at both ends of that range")
            : Text($"the {wired.Marks.Count} pins planned hold it at the stiff end, {wired.MarksIfSoft} would do at the soft end");
        var from = wired.Pull.IsMeasured ? "" : " (the piece was not measured, so the habitual stretch of its kind is taken)";
        var (least, most) = (1000 * wired.Pull.Least, 1000 * wired.Pull.Most);
        var known = wired.Pull.IsKnown ? "By your strips" : "How stiff this cloth is is not known. " + Published;
        // Once the cloth was computed, the pull is the one under which a beam sags as the wire does in it.
        findings.Note(
            place,
            plan.Pulls?.ContainsKey(wired.Edge) == true
            ? Text($"{known} the wire of the {edge.Name} edge bears, by the computed cloth, as a beam under {least:0.#} to {most:0.#} N a metre: {range}.")
            : Text($"{known} the cloth, stretched by {100 * wired.Pull.Stretch:0} % across the {edge.Name} edge{from}, pulls at its wire with {least:0.#} to {most:0.#} N a metre: {range}."),
            "Leave out a pin only where the wire stays straight by itself.");
    }

    private static void Combs(PinPlan plan, int index, PinSettings settings, Findings findings)
    {
        var edge = plan.Edges[index];
        var on = plan.Marks.Where(m => m.Edge == index && m.Fraction > 0).ToList();
        var singles = on.Where(m => m.Kind == PinKind.Pin && !m.IsAnchor).OrderBy(m => m.Fraction).ToList();
        if (on.Count > 0 && singles.Count == 0)
            return;
        var place = $"piece.edges.{edge.Name}.hold";
        if (on.TrueForAll(m => m.Kind != PinKind.Comb))
        {
            findings.Note(place, $"No comb of {findings.Say(settings.Combs.Length.Millimetres)} fits the {edge.Name} edge: it is too short, or it turns too tightly for a straight bar to stay within {findings.Say(settings.Scallop.Millimetres)} of it.", "It is planned with single pins; shorter combs may fit.");
            return;
        }

        findings.Note(
            place,
            Text($"Where the {edge.Name} edge turns too tightly for a straight bar of {findings.Say(settings.Combs.Length.Millimetres)} to stay within {findings.Say(settings.Scallop.Millimetres)} of it, or a gap is too short for one, single pins stand: marks {string.Join(", ", singles.Select(m => m.Number))}."),
            "Use single pins there, or shorter combs.");
    }

    private static string Published => Text($"If it is like a published knit ({PublishedCloth.Softest:0.000} to {PublishedCloth.Stiffest:0.000} N/mm; Singal and others 2024),");

    private static string Name(WireForm form) =>
        Text($"a {(form.Kind == WireKind.Stiff ? "stiff" : "flexible")} wire of {form.Diameter.Millimetres:0.##} mm");

    private static string Stitch(EdgePlan edge, double fraction) => edge.Treatment.Count is { } count
        ? Text($" ({(edge.Treatment.Of == CountedIn.Rows ? "row" : "stitch")} {fraction * count:0})")
        : "";

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
