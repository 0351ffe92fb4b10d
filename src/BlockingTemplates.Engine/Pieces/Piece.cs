using BlockingTemplates.Engine.Fabrics;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Pieces;

/// <summary>A piece of work: what it should become and what it is now. Immutable.</summary>
/// <param name="Finished">The finished outline.</param>
/// <param name="Unblocked">The unblocked outline as it lies with the same side up, same edges in the same order; or null.</param>
/// <param name="Edges">What was said of each edge, in order.</param>
/// <param name="FaceUp">The side that lies up when the piece is pinned.</param>
/// <param name="Fabric">Its cloth.</param>
public sealed record Piece(
    Outline Finished,
    Outline? Unblocked,
    IReadOnlyList<EdgeTreatment> Edges,
    WorkSide FaceUp,
    FabricSettings Fabric)
{
    /// <summary>The unblocked outline as it was measured, where that was dry and <see cref="Unblocked"/> is the damp one; else null.</summary>
    public Outline? MeasuredDry { get; init; }

    /// <summary>For each edge which point of its smooth line belongs where; even where the maker measured no stitches.</summary>
    public IReadOnlyList<Correspondence> Stations { get; init; } = [.. Edges.Select(_ => Correspondence.Even)];

    /// <summary>The other piece of a pair: its mirror image with the same side up, the words left and right exchanged in its names.</summary>
    public Piece Mirrored() => new(
        LeftAndRight.Renamed(Finished.SeenFromBehind()),
        Unblocked is null ? null : LeftAndRight.Renamed(Unblocked.SeenFromBehind()),
        [.. Edges.Reverse()],
        FaceUp,
        Fabric with { GrainDegrees = -Fabric.GrainDegrees })
    {
        Stations = [.. Stations.Reverse().Select(s => s.Reversed())],
    };
}
