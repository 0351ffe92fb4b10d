using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Pieces;

/// <summary>A trapezoid: level lower and top edges of different widths, as a shaped shawl body, a skirt panel or a bag side has.</summary>
public sealed class TrapezoidPiece : FourSidedPiece
{
    /// <inheritdoc/>
    public override string Shape => "trapezoid";

    /// <inheritdoc/>
    public override IReadOnlyList<SizeName> FinishedSizes { get; } =
    [
        new("lowerWidth", "along the lower edge, from corner to corner"),
        new("topWidth", "along the top edge, from corner to corner"),
        new("height", "from the lower edge straight up to the top edge"),
        new("offset", "how far the middle of the top edge stands right of the middle of the lower one; minus: left") { Reach = SizeReach.EitherWay, IsOptional = true },
    ];

    /// <inheritdoc/>
    public override Outline Sketch =>
        NamedRing.Of(this, [new(0, 0), new(800, 0), new(560, 480), new(230, 480)], (i, from, to) => CircularArc.Between(from, to, i % 2 == 0 ? 25 : -35))!;

    /// <inheritdoc/>
    protected override IReadOnlyList<Point> Corners(MeasuredSizes sizes, Measurements measured, Findings findings)
    {
        var (lower, top, height, offset) = (sizes["lowerWidth"] / 2, sizes["topWidth"] / 2, sizes["height"], sizes["offset"]);
        return [new(-lower, 0), new(lower, 0), new(offset + top, height), new(offset - top, height)];
    }

    /// <inheritdoc/>
    protected override (Point[] Corners, string As)? Assumed(IReadOnlyList<double> side)
    {
        ArgumentNullException.ThrowIfNull(side);
        var (lower, right, top, left) = (side[0], side[1], side[2], side[3]);
        var inset = (lower - top) / 2;
        if (!Agree(left, right) || Math.Abs(inset) >= left)
            return null;
        var height = Math.Sqrt((left * left) - (inset * inset));
        return ([new(0, 0), new(lower, 0), new(lower - inset, height), new(inset, height)], "left and right agree: the piece is taken as symmetric");
    }
}
