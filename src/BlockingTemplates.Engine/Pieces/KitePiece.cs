using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Pieces;

/// <summary>A kite: two tips at one height, a foot below and a top corner above them on the spine.</summary>
public sealed class KitePiece : FourSidedPiece
{
    /// <inheritdoc/>
    public override string Shape => "kite";

    /// <inheritdoc/>
    public override IReadOnlyList<SizeName> FinishedSizes { get; } =
    [
        new("wingspan", "straight from tip to tip"),
        new("depth", "along the spine, from the top corner to the foot"),
        new("peak", "how far the top corner stands above the straight line from tip to tip"),
    ];

    /// <inheritdoc/>
    public override IReadOnlyList<string> EdgeNames { get; } = ["lower right", "upper right", "upper left", "lower left"];

    /// <inheritdoc/>
    public override IReadOnlyList<string> CornerNames { get; } = ["foot", "right tip", "top", "left tip"];

    /// <inheritdoc/>
    public override string AcrossName => "wingspan";

    /// <inheritdoc/>
    public override string UpName => "depth";

    /// <inheritdoc/>
    public override Outline Sketch =>
        NamedRing.Of(this, [new(0, 0), new(450, 600), new(0, 840), new(-450, 600)], (i, from, to) => CircularArc.Between(from, to, i % 3 == 0 ? 30 : -25))!;

    /// <inheritdoc/>
    protected override IReadOnlyList<Point>? Corners(MeasuredSizes sizes, Measurements measured, Findings findings)
    {
        var (wingspan, depth, peak) = (sizes["wingspan"], sizes["depth"], sizes["peak"]);
        if (peak < depth)
            return [new(0, 0), new(wingspan / 2, depth - peak), new(0, depth), new(-wingspan / 2, depth - peak)];
        findings.Problem($"{measured.Path}.peak", $"The peak of {findings.Say(peak)} is not less than the whole depth of {findings.Say(depth)}: the tips would lie at the foot or below it.", "Measure the depth along the spine from the top corner to the foot, and the peak from the line between the tips up to the top corner.");
        return null;
    }

    /// <inheritdoc/>
    protected override IReadOnlyList<Point> Upright(IReadOnlyList<Point> corners)
    {
        var spine = corners[2] - corners[0];
        var turn = Affine.Turn((Math.PI / 2) - Math.Atan2(spine.Y, spine.X));
        return [.. corners.Select(turn.Map)];
    }
}
