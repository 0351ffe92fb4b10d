using BlockingTemplates.Engine.Fabrics;
using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Pins;
using BlockingTemplates.Engine.Shapes;
using BlockingTemplates.Engine.Tests.Pieces;

namespace BlockingTemplates.Engine.Tests.Pins;

// Pieces of whose edges something is said.
internal static class SaidEdges
{
    public static readonly EdgePoints Ten = new(10, Mm(30), Mm(20), PointShape.Scallop);

    public static Length Mm(double value) => Length.FromMillimetres(value);

    public static EdgeTreatment Counted(int count) => EdgeTreatment.Unsaid with { Count = count };

    public static (Piece Piece, PinPlan Plan, Findings Findings) Planned(PieceRequest request, string anchor = "none", SpringBack? springBack = null)
    {
        var findings = new Findings(LengthUnit.Centimetres);
        var piece = Given.Made(request with { Fabric = FabricSettings.Unsaid with { SpringBack = springBack ?? new(0, 0) } }, findings);
        var plan = PinPlanner.Plan(piece, PinSettings.Default with { Anchor = anchor }, findings);
        return (piece, Assert.IsType<PinPlan>(plan), findings);
    }

    public static PieceRequest Rectangle(params (string Name, EdgeTreatment Said)[] edges) =>
        Given.Request(new RectanglePiece(), Given.Finished(("width", 400), ("length", 1000)), Given.Unblocked(("lower", 350), ("right", 900), ("top", 350), ("left", 900)))
            with
        { Edges = edges.ToDictionary(e => e.Name, e => e.Said) };

    public static List<Mark> On(PinPlan plan, int edge) => [.. plan.Marks.Where(m => m.Edge == edge).OrderBy(m => m.Fraction)];
}
