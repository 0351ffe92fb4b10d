using BlockingTemplates.Engine.Fabrics;

namespace BlockingTemplates.Engine.Pieces;

/// <summary>All that the maker said of one piece, before any of it is judged.</summary>
/// <param name="Kind">The kind of piece.</param>
/// <param name="Finished">Its finished measurements.</param>
/// <param name="Unblocked">Its unblocked measurements, or null.</param>
/// <param name="Edges">What was said of edges, by name.</param>
/// <param name="FaceUp">The side that lies up when the piece is pinned.</param>
/// <param name="MeasuredFaceUp">The side that lay up when it was measured unblocked.</param>
/// <param name="EvenOut">Whether left and right measurements are averaged.</param>
/// <param name="Fabric">Its cloth.</param>
public sealed record PieceRequest(
    PieceKind Kind,
    Measurements Finished,
    Measurements? Unblocked,
    IReadOnlyDictionary<string, EdgeTreatment> Edges,
    WorkSide FaceUp,
    WorkSide MeasuredFaceUp,
    bool EvenOut,
    FabricSettings Fabric)
{
    /// <summary>Whether the mirror image of the piece is wanted: left and right exchanged, the same side up.</summary>
    public bool IsMirrored { get; init; }
}
