using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Pieces;

/// <summary>A parallelogram: a scarf worked on the bias, its ends slanted.</summary>
public sealed class ParallelogramPiece : FourSidedPiece
{
    /// <inheritdoc/>
    public override string Shape => "parallelogram";

    /// <inheritdoc/>
    public override IReadOnlyList<SizeName> FinishedSizes { get; } =
    [
        new("width", "along the lower edge, from corner to corner"),
        new("height", "from the lower edge straight up to the top edge"),
        new("offset", "how far the top edge stands farther to the right than the lower one; minus: to the left") { Reach = SizeReach.EitherWay },
    ];

    /// <inheritdoc/>
    public override Outline Sketch =>
        NamedRing.Of(this, [new(0, 0), new(800, 0), new(1090, 300), new(290, 310)], (i, from, to) => CircularArc.Between(from, to, i % 2 == 0 ? -25 : 12))!;

    /// <inheritdoc/>
    protected override IReadOnlyList<Point> Corners(MeasuredSizes sizes, Measurements measured, Findings findings)
    {
        var (width, height, offset) = (sizes["width"], sizes["height"], sizes["offset"]);
        return [new(0, 0), new(width, 0), new(width + offset, height), new(offset, height)];
    }
}
