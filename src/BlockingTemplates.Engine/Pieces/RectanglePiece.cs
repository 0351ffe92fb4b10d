using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Pieces;

/// <summary>A rectangular piece: scarf, stole, blanket.</summary>
public sealed class RectanglePiece : FourSidedPiece
{
    /// <inheritdoc/>
    public override string Shape => "rectangle";

    /// <inheritdoc/>
    public override IReadOnlyList<SizeName> FinishedSizes { get; } =
    [
        new("width", "along the lower edge, from corner to corner"),
        new("length", "along a side edge, from the lower to the upper corner"),
    ];

    /// <inheritdoc/>
    public override string UpName => "length";

    /// <inheritdoc/>
    public override Outline Sketch =>
        NamedRing.Of(this, [new(0, 0), new(500, 0), new(520, 900), new(-15, 880)], (i, from, to) => CircularArc.Between(from, to, i % 2 == 0 ? 25 : -40))!;

    /// <inheritdoc/>
    protected override (Point[] Corners, string As)? Assumed(IReadOnlyList<double> side) => Squared(side);

    /// <inheritdoc/>
    protected override IReadOnlyList<Point> Corners(MeasuredSizes sizes, Measurements measured, Findings findings) =>
        [new(0, 0), new(sizes["width"], 0), new(sizes["width"], sizes["length"]), new(0, sizes["length"])];
}
