using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Pieces;

/// <summary>A square piece: a square shawl, a motif.</summary>
public sealed class SquarePiece : FourSidedPiece
{
    /// <inheritdoc/>
    public override string Shape => "square";

    /// <inheritdoc/>
    public override IReadOnlyList<SizeName> FinishedSizes { get; } = [new("side", "along one edge, from corner to corner")];

    /// <inheritdoc/>
    public override Outline Sketch =>
        NamedRing.Of(this, [new(0, 0), new(600, 0), new(610, 590), new(-10, 600)], (_, from, to) => CircularArc.Between(from, to, -35))!;

    /// <inheritdoc/>
    protected override (Point[] Corners, string As)? Assumed(IReadOnlyList<double> side) => Squared(side);

    /// <inheritdoc/>
    protected override IReadOnlyList<Point> Corners(MeasuredSizes sizes, Measurements measured, Findings findings) =>
        [new(0, 0), new(sizes["side"], 0), new(sizes["side"], sizes["side"]), new(0, sizes["side"])];
}
