using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Tests.Projects;

// Kinds of piece with the names of the contract and no geometry: reading needs no more.
internal sealed class StandInKind(string shape, IReadOnlyList<SizeName> sizes, IReadOnlyList<string> edges, IReadOnlyList<string> corners) : PieceKind
{
    public static IReadOnlyList<PieceKind> All { get; } =
    [
        new StandInKind(
            "triangle",
            [new("wingspan", "tip to tip along the top edge"), new("depth", "middle of the top edge to the foot")],
            ["right", "top", "left"],
            ["foot", "right tip", "left tip"]),
        new StandInKind(
            "rectangle",
            [new("width", "along the lower edge"), new("length", "along a side edge")],
            ["lower", "right", "top", "left"],
            ["lower left", "lower right", "upper right", "upper left"]),
        new StandInKind("outline", [], [], []),
    ];

    public override string Shape => shape;

    public override IReadOnlyList<SizeName> FinishedSizes => sizes;

    public override IReadOnlyList<string> EdgeNames => edges;

    public override IReadOnlyList<string> CornerNames => corners;

    public override bool GivenByCorners => edges.Count == 0;

    public override bool TakesDiagonal => edges.Count == 4;

    public override Outline? Finished(Measurements measured, Findings findings) => throw new NotSupportedException();

    public override Outline? Unblocked(Measurements measured, Findings findings) => throw new NotSupportedException();
}
