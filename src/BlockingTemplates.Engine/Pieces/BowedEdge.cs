using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Pieces;

/// <summary>An edge that is straight unless a bow is given for it.</summary>
public static class BowedEdge
{
    /// <summary>The edge between two corners with the bow given for it, or null after adding a problem.</summary>
    public static EdgeCurve? Between(Measurements measured, string edge, Point from, Point to, Findings findings)
    {
        ArgumentNullException.ThrowIfNull(measured);
        ArgumentNullException.ThrowIfNull(findings);
        if (measured.Unreadable.Contains($"{measured.Path}.bows.{edge}") || measured.Unreadable.Contains($"{measured.Path}.bows"))
            return null;
        var bow = measured.Bows.TryGetValue(edge, out var length) ? length.Millimetres : 0;
        if (Math.Abs(bow) <= from.DistanceTo(to) / 2)
            return CircularArc.Between(from, to, bow);
        findings.Problem($"{measured.Path}.bows.{edge}", $"The {edge} edge would bow by more than half its length from corner to corner: an arc past the half circle.", "Give a smaller bow, or use shape \"outline\" with a corner on the arc.");
        return null;
    }
}
