using BlockingTemplates.Engine.Fabrics;
using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Pieces;

namespace BlockingTemplates.Engine.Tests.Pins;

/// <summary>The triangle of the shipped example (invented data), by hand.</summary>
internal static class DemoTriangle
{
    public static PieceRequest Request { get; } = new(
        new TrianglePiece(),
        new Measurements { Path = "piece.finished", Sizes = Cm(("wingspan", 148), ("depth", 74)) },
        new Measurements
        {
            Path = "piece.unblocked",
            Sides = Cm(("top", 128), ("left", 92), ("right", 92)),
            Bows = Cm(("left", 5), ("right", 5), ("top", -3)),
        },
        new Dictionary<string, EdgeTreatment> { ["top"] = new(180, CountedIn.Stitches, Holding.Pins) },
        WorkSide.RightSide,
        WorkSide.RightSide,
        true,
        FabricSettings.Unsaid with { Kind = FabricKind.Lace, Stitch = (Length.FromCentimetres(0.71), Length.FromCentimetres(0.6)), SpringBack = new(0.03, 0.03) });

    public static IReadOnlyDictionary<string, Length> Cm(params (string Name, double Cm)[] lengths) =>
        lengths.ToDictionary(l => l.Name, l => Length.FromCentimetres(l.Cm));
}
