using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Pins;

/// <summary>Which point of each edge belongs where on the pinned and the unblocked outline.</summary>
internal static class EdgeMatches
{
    /// <summary>For each edge: tips and valleys meet their own; else the stations that were measured, else stitches lie evenly.</summary>
    public static IReadOnlyList<Correspondence> Of(Piece piece, Outline pinned) =>
        [.. pinned.Edges.Select((e, i) => e.Curve is PointedEdge points ? OfPoints(points, piece.Unblocked?.Edges[i].Curve as PointedEdge) : piece.Stations[i])];

    private static Correspondence OfPoints(PointedEdge pinned, PointedEdge? unblocked) =>
        new([.. pinned.Places.Select((p, k) => k / (2.0 * pinned.Count) is var share ? (share, p, unblocked?.Places[k] ?? share) : default)]);
}
