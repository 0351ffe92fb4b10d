using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Pieces;

/// <summary>A sleeve laid flat: cuff below, side seams to the underarm, the cap above.</summary>
/// <remarks>
/// The measurements are those of a knitting pattern's schematic, finished and unblocked alike. The cap is taken as a bell:
/// level at the underarms and at its top, a cubic curve between (common practice). Other caps need shape "outline".
/// </remarks>
public sealed class SleevePiece : PieceKind
{
    /// <inheritdoc/>
    public override string Shape => "sleeve";

    /// <inheritdoc/>
    public override IReadOnlyList<SizeName> FinishedSizes { get; } =
    [
        new("cuff", "straight across along the cuff"),
        new("upperArm", "straight across from underarm to underarm"),
        new("length", "from the cuff straight up to the height of the underarm"),
        new("cap", "from the height of the underarm straight up to the top of the cap; 0: no cap") { Reach = SizeReach.FromZero },
    ];

    /// <inheritdoc/>
    public override IReadOnlyList<SizeName> UnblockedSizes => FinishedSizes;

    /// <inheritdoc/>
    public override IReadOnlyList<string> EdgeNames { get; } = ["cuff", "right side", "cap", "left side"];

    /// <inheritdoc/>
    public override IReadOnlyList<string> CornerNames { get; } = ["lower left", "lower right", "right underarm", "left underarm"];

    /// <inheritdoc/>
    public override IReadOnlyList<string> StraightEdges { get; } = ["cuff", "right side", "left side"];

    /// <inheritdoc/>
    public override Outline Sketch => Ring(240, 360, 430, 140, (i, from, to) => CircularArc.Between(from, to, i == 0 ? 10 : -12))!;

    /// <inheritdoc/>
    public override IReadOnlyList<TapeLine> TapeLines { get; } =
    [
        new("cuff", new(-120, 0), new(120, 0)),
        new("upper arm", new(-180, 430), new(180, 430)),
        new("length", new(-60, 0), new(-60, 430)),
        new("cap", new(0, 430), new(0, 570)),
    ];

    /// <inheritdoc/>
    public override Outline? Finished(Measurements measured, Findings findings) => Read(measured, findings);

    /// <inheritdoc/>
    public override Outline? Unblocked(Measurements measured, Findings findings) => Read(measured, findings);

    private Outline? Read(Measurements measured, Findings findings)
    {
        ArgumentNullException.ThrowIfNull(measured);
        ArgumentNullException.ThrowIfNull(findings);
        return MeasuredSizes.Read(FinishedSizes, measured, findings) is { } sizes
            ? Ring(sizes["cuff"], sizes["upperArm"], sizes["length"], sizes["cap"], (i, from, to) => BowedEdge.Between(measured, EdgeNames[i], from, to, findings))
            : null;
    }

    private Outline? Ring(double cuff, double upperArm, double length, double cap, Func<int, Point, Point, EdgeCurve?> line)
    {
        double low = cuff / 2, high = upperArm / 2;
        return NamedRing.Of(
            this,
            [new(-low, 0), new(low, 0), new(high, length), new(-high, length)],
            (i, from, to) => i != 2 ? line(i, from, to) : cap > 0 ? Bell(from, to, cap) : new StraightEdge(from, to));
    }

    private static JoinedEdge Bell(Point right, Point left, double cap)
    {
        var top = right.Toward(left, 0.5) + new Vector(0, cap);
        Point Over(Point underarm) => new((underarm.X + top.X) / 2, top.Y);
        Point At(Point underarm) => new((underarm.X + top.X) / 2, underarm.Y);
        return new([new BezierEdge(right, At(right), Over(right), top), new BezierEdge(top, Over(left), At(left), left)]);
    }
}
