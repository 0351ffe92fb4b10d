using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Pieces;

/// <summary>One edge as taped: straight side and bow, in millimetres.</summary>
/// <param name="Side">Straight from corner to corner, above 0.</param>
/// <param name="Bow">Greatest distance from that line, outward positive.</param>
public sealed record TapedEdge(double Side, double Bow)
{
    /// <summary>How far side, bow and tape along may disagree: 5 mm or 1 % of the edge, the reading of a tape (common practice).</summary>
    public static double Agreement(double edgeMm) => Math.Max(5, 0.01 * edgeMm);

    /// <summary>The edge from any two of side, bow and tape along, or null after adding at least one problem.</summary>
    /// <remarks>A side alone is a straight edge; a side with a tape along bows outward unless a bow says otherwise.</remarks>
    public static TapedEdge? Read(Measurements measured, string edge, Findings findings)
    {
        var path = measured.Path;
        var side = Of(measured.Sides, edge);
        var bow = Of(measured.Bows, edge);
        var along = Of(measured.Along, edge);
        if (IsUnreadable(measured, "sides", edge) || IsUnreadable(measured, "bows", edge) || IsUnreadable(measured, "along", edge))
            return null;
        if (bow is { } tooFar && (side ?? along) is { } least && Math.Abs(tooFar) > (side is null ? least / Math.PI : least / 2))
        {
            findings.Problem($"{path}.bows.{edge}", $"The {edge} edge bows by more than half its length from corner to corner: an arc past the half circle.", "Measure the bow again, or use shape \"outline\" with a corner on the arc.");
            return null;
        }

        if (side is { } chord && along is { } arc)
            return FromSideAndAlong(path, edge, chord, bow, arc, findings);
        if (side is { } straight)
            return new(straight, bow ?? 0);
        if (along is not { } taped)
        {
            findings.Problem($"{path}.sides.{edge}", $"The {edge} side is missing.", "Lay the tape straight from corner to corner and write what it reads.");
            return null;
        }

        if (bow is not { } b)
        {
            findings.Problem($"{path}.sides.{edge}", $"The {edge} edge has a tape along it but neither its straight side nor its bow.", "Add the straight length from corner to corner, or the bow.");
            return null;
        }

        return new(CircularSegment.ChordFromArc(taped, Math.Abs(b))!.Value, b);
    }

    private static TapedEdge? FromSideAndAlong(string path, string edge, double side, double? bow, double along, Findings findings)
    {
        if (bow is { } said)
        {
            var gives = CircularSegment.Arc(side, Math.Abs(said));
            if (Math.Abs(gives - along) > Agreement(gives))
            {
                findings.Problem($"{path}.along.{edge}", $"On the {edge} edge side, bow and the tape along it disagree: side and bow give {findings.Say(gives)} along, the tape read {findings.Say(along)}.", "Measure them again, or leave out the one you trust least.");
                return null;
            }

            return new(side, said);
        }

        if (along < side - Agreement(side))
        {
            findings.Problem($"{path}.along.{edge}", $"The tape along the {edge} edge reads {findings.Say(along)}, shorter than the straight side of {findings.Say(side)}.", "Measure both again: along the edge is never shorter than straight across.");
            return null;
        }

        if (along <= side)
        {
            if (along < side)
                findings.Note($"{path}.along.{edge}", $"The tape along the {edge} edge reads {findings.Say(along)}, the straight side {findings.Say(side)}: the edge is taken as straight.", "Measure both again if the edge bows.");
            return new(side, 0);
        }

        if (CircularSegment.BowFromArc(side, along) is { } found)
            return new(side, found);
        findings.Problem($"{path}.along.{edge}", $"The {edge} edge is {along / side:0.00} times as long as its straight side: an arc past the half circle.", "Measure again, or use shape \"outline\" with a corner on the arc.");
        return null;
    }

    private static bool IsUnreadable(Measurements measured, string group, string edge) => measured.Unreadable.Contains($"{measured.Path}.{group}.{edge}") || measured.Unreadable.Contains($"{measured.Path}.{group}");

    private static double? Of(IReadOnlyDictionary<string, Length> lengths, string edge) =>
        lengths.TryGetValue(edge, out var length) ? length.Millimetres : null;
}
