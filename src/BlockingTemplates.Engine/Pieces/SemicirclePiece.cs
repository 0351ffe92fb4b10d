using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Pieces;

/// <summary>A half-circle shawl: a straight top edge and half a circle below it.</summary>
/// <remarks>Unblocked it is measured by wingspan and depth, straight across and straight down: the lower edge is then half an ellipse.</remarks>
public sealed class SemicirclePiece : PieceKind
{
    /// <inheritdoc/>
    public override string Shape => "semicircle";

    /// <inheritdoc/>
    public override IReadOnlyList<SizeName> FinishedSizes { get; } = [new("wingspan", "straight from tip to tip along the top edge; the depth is half of it")];

    /// <inheritdoc/>
    public override IReadOnlyList<SizeName> UnblockedSizes { get; } =
    [
        new("wingspan", "straight from tip to tip"),
        new("depth", "from the middle of the straight line between the tips down to the lower edge"),
    ];

    /// <inheritdoc/>
    public override IReadOnlyList<string> EdgeNames { get; } = ["lower", "top"];

    /// <inheritdoc/>
    public override IReadOnlyList<string> CornerNames { get; } = ["left tip", "right tip"];

    /// <inheritdoc/>
    public override IReadOnlyList<string> StraightEdges { get; } = ["top"];

    /// <inheritdoc/>
    public override string AcrossName => "wingspan";

    /// <inheritdoc/>
    public override string UpName => "depth";

    /// <inheritdoc/>
    public override Outline Sketch => Ring(1200, 560, (from, to) => CircularArc.Between(from, to, -60))!;

    /// <inheritdoc/>
    public override IReadOnlyList<TapeLine> TapeLines { get; } = [new("wingspan", new(-600, 0), new(600, 0)), new("depth", new(0, -560), new(0, 0))];

    /// <inheritdoc/>
    public override Outline? Finished(Measurements measured, Findings findings) => Read(FinishedSizes, measured, findings);

    /// <inheritdoc/>
    public override Outline? Unblocked(Measurements measured, Findings findings) => Read(UnblockedSizes, measured, findings);

    private Outline? Read(IReadOnlyList<SizeName> names, Measurements measured, Findings findings)
    {
        ArgumentNullException.ThrowIfNull(measured);
        ArgumentNullException.ThrowIfNull(findings);
        return MeasuredSizes.Read(names, measured, findings) is { } sizes
            ? Ring(sizes["wingspan"], sizes.Has("depth") ? sizes["depth"] : sizes["wingspan"] / 2, (from, to) => BowedEdge.Between(measured, "top", from, to, findings))
            : null;
    }

    private Outline? Ring(double wingspan, double depth, Func<Point, Point, EdgeCurve?> top)
    {
        var half = wingspan / 2;
        return NamedRing.Of(this, [new(-half, 0), new(half, 0)], (i, from, to) => i == 0 ? EllipticArc.About(Point.Origin, half, depth, Math.PI, Math.PI) : top(from, to));
    }
}
