using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Pins;
using BlockingTemplates.Engine.Pins.Wires;
using BlockingTemplates.Engine.Tests.Projects;

namespace BlockingTemplates.Engine.Tests.Pins.Settling;

// Shipped pieces with wires enough at hand, held as they say or otherwise; their pins by the spacing setting.
internal sealed record HeldExample(Piece Piece, PinSettings Settings, PinPlan Placed)
{
    public static HeldExample Of(string example, Holding? way = null, Func<PinSettings, PinSettings>? change = null)
    {
        var project = Reading.Reader.Read(File.ReadAllBytes(Path.Combine(Reading.Shared, "examples", example + ".jsonc"))).Project!;
        WireForm stiff = new(WireKind.Stiff, Length.FromMillimetres(1.5)), flexible = new(WireKind.Flexible, Length.FromMillimetres(1.2));
        var settings = project.Pins with
        {
            Owned = null,
            Wires = project.Pins.Wires with { Owned = [new(Length.FromCentimetres(150), 9, stiff), new(Length.FromCentimetres(90), 9, stiff), new(Length.FromCentimetres(110), 9, flexible)] },
        };
        var request = new PieceRequest(project.Kind, project.Finished, project.Unblocked, project.Edges, project.FaceUp, project.MeasuredFaceUp, project.EvenOut, project.Fabric);
        var piece = DampPiece.Of(PieceMaker.Make(request, new())!, new());
        if (way is { } all)
            piece = piece with { Edges = [.. piece.Edges.Select(e => e with { Hold = all })] };
        return Of(piece, change?.Invoke(settings) ?? settings);
    }

    // The same with one edge, and its mirror image, held in another way.
    public HeldExample With(int edge, Holding way) => Of(
        Piece with { Edges = [.. Piece.Edges.Select((e, i) => i == edge || Placed.Mirror?.Partner[i] == edge ? e with { Hold = way } : e)] }, Settings);

    private static HeldExample Of(Piece piece, PinSettings settings)
    {
        var placed = PinPlanner.Placed(piece, settings, new())!;
        return new(piece, settings with { Anchor = placed.Anchor.Name }, placed);
    }
}
