using BlockingTemplates.Engine.Pieces;

namespace BlockingTemplates.Engine.Projects.Sections;

/// <summary>What <c>piece</c> says; names of corners and edges are null where they could not be read.</summary>
internal sealed record PieceAsRead(
    PieceKind Kind,
    WorkSide FaceUp,
    WorkSide MeasuredFaceUp,
    bool EvenOut,
    PairNames? Pair,
    Measurements Finished,
    Measurements? Unblocked,
    IReadOnlyDictionary<string, EdgeTreatment> Edges,
    IReadOnlyList<string>? CornerNames,
    IReadOnlyList<string>? EdgeNames);
