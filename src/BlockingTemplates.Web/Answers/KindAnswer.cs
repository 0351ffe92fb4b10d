namespace BlockingTemplates.Web.Answers;

/// <summary>A kind of piece with its measurements.</summary>
internal sealed record KindAnswer(
    string Shape,
    IReadOnlyList<SizeAnswer> Finished,
    IReadOnlyList<SizeAnswer> Unblocked,
    IReadOnlyList<string> Edges,
    IReadOnlyList<string> Corners,
    IReadOnlyList<string> BowedEdges,
    bool BySides,
    bool ByCorners,
    bool TakesDiagonal);
