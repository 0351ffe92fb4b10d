using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Pieces;

/// <summary>A triangular shawl: top edge tip to tip, foot below its middle at the lower end of the spine.</summary>
public sealed class TrianglePiece : PieceKind
{
    /// <inheritdoc/>
    public override string Shape => "triangle";

    /// <inheritdoc/>
    public override IReadOnlyList<SizeName> FinishedSizes { get; } =
    [
        new("wingspan", "straight from tip to tip along the top edge"),
        new("depth", "along the spine, from the middle of the top edge to the foot"),
    ];

    /// <inheritdoc/>
    public override IReadOnlyList<string> EdgeNames { get; } = ["right", "top", "left"];

    /// <inheritdoc/>
    public override IReadOnlyList<string> CornerNames { get; } = ["foot", "right tip", "left tip"];

    /// <inheritdoc/>
    public override string AcrossName => "wingspan";

    /// <inheritdoc/>
    public override string UpName => "depth";

    /// <inheritdoc/>
    public override Outline Sketch =>
        NamedRing.Of(this, [new(0, 0), new(640, 640), new(-640, 640)], (i, from, to) => CircularArc.Between(from, to, i == 1 ? -50 : 70))!;

    /// <inheritdoc/>
    public override Outline? Finished(Measurements measured, Findings findings)
    {
        if (FinishedSize.Read(this, measured, findings) is not [var wingspan, var depth])
            return null;
        return Ring(new(0, 0), new(wingspan / 2, depth), new(-wingspan / 2, depth), (i, from, to) => FinishedSize.Edge(measured, EdgeNames[i], from, to, findings));
    }

    /// <inheritdoc/>
    public override Outline? Unblocked(Measurements measured, Findings findings)
    {
        if (EdgeNames.Select(name => TapedEdge.Read(measured, name, findings)).ToList() is not [{ } right, { } top, { } left])
            return null;
        var tip = Triangulation.Apex(left.Side, right.Side, top.Side);
        if (tip is not { } apex)
        {
            findings.Problem($"{measured.Path}.sides", $"The sides cannot close: top {findings.Say(top.Side)}, left {findings.Say(left.Side)}, right {findings.Say(right.Side)}; the longest must be shorter than the other two together.", "Measure the three sides again, straight from corner to corner.");
            return null;
        }

        // The top edge lies level, the foot at the origin below it.
        Point leftTip = new(-apex.X, apex.Y), rightTip = new(top.Side - apex.X, apex.Y);
        TapedEdge[] taped = [right, top, left];
        return Ring(new(0, 0), rightTip, leftTip, (i, from, to) => CircularArc.Between(from, to, taped[i].Bow));
    }

    private Outline? Ring(Point foot, Point rightTip, Point leftTip, Func<int, Point, Point, EdgeCurve?> line) =>
        NamedRing.Of(this, [foot, rightTip, leftTip], line);
}
