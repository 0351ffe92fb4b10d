using BlockingTemplates.Engine.Fabrics;
using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Tests.Pieces;

/// <summary>What a maker might write, in millimetres.</summary>
internal static class Given
{
    public static IReadOnlyDictionary<string, Length> Mm(params (string Name, double Mm)[] lengths) =>
        lengths.ToDictionary(l => l.Name, l => Length.FromMillimetres(l.Mm));

    public static Measurements Finished(params (string Name, double Mm)[] sizes) => new() { Path = "piece.finished", Sizes = Mm(sizes) };

    public static Measurements Unblocked(params (string Name, double Mm)[] sides) => new() { Path = "piece.unblocked", Sides = Mm(sides) };

    public static Measurements Corners(string path, IReadOnlyList<CornerEntry> corners, IReadOnlyList<EdgeEntry>? edges = null) =>
        new() { Path = path, Corners = corners, Edges = edges };

    public static CornerEntry Corner(double x, double y, string? name = null, bool smooth = false) =>
        new(Length.FromMillimetres(x), Length.FromMillimetres(y), name, smooth);

    public static EdgeEntry Bowed(string name, double bow) => new(name, Length.FromMillimetres(bow));

    public static (Length First, Length Second) Pair(double a, double b) => (Length.FromMillimetres(a), Length.FromMillimetres(b));

    public static PieceRequest Request(PieceKind kind, Measurements finished, Measurements? unblocked) =>
        new(kind, finished, unblocked, new Dictionary<string, EdgeTreatment>(), WorkSide.RightSide, WorkSide.RightSide, false, FabricSettings.Unsaid);

    /// <summary>The piece, which must be made without a problem.</summary>
    public static Piece Made(PieceRequest request, Findings? findings = null)
    {
        findings ??= new(LengthUnit.Centimetres);
        var piece = PieceMaker.Make(request, findings);
        Assert.True(findings.IsClean, string.Join("; ", findings.Problems));
        return Assert.IsType<Piece>(piece);
    }

    /// <summary>The problems of a piece that cannot be made.</summary>
    public static IReadOnlyList<Problem> Problems(PieceRequest request, LengthUnit units = LengthUnit.Centimetres)
    {
        var findings = new Findings(units);
        Assert.Null(PieceMaker.Make(request, findings));
        Assert.NotEmpty(findings.Problems);
        Assert.All(findings.Problems, p => Assert.True(p.Path.StartsWith("piece.", StringComparison.Ordinal) && p.What.EndsWith('.') && p.Do.Length > 0, p.ToString()));
        return findings.Problems;
    }

    /// <summary>Corner by name.</summary>
    public static Point At(this Outline outline, string corner) => outline.CornerAt(outline.Corners.ToList().FindIndex(c => c.Name == corner));

    /// <summary>Edge by name.</summary>
    public static EdgeCurve Line(this Outline outline, string edge) => outline.Edges.Single(e => e.Name == edge).Curve;
}
