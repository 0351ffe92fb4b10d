using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Pieces;

/// <summary>An oval piece, a table mat or a rug: an ellipse, smooth all round.</summary>
/// <remarks>Finished and unblocked alike it is measured by two straight tapes through the middle, at a right angle.</remarks>
public sealed class OvalPiece : PieceKind
{
    /// <inheritdoc/>
    public override string Shape => "oval";

    /// <inheritdoc/>
    public override IReadOnlyList<SizeName> FinishedSizes { get; } =
    [
        new("width", "straight across through the middle, from left to right"),
        new("height", "straight up through the middle, from the lower edge to the top edge"),
    ];

    /// <inheritdoc/>
    public override IReadOnlyList<SizeName> UnblockedSizes => FinishedSizes;

    /// <inheritdoc/>
    public override IReadOnlyList<string> EdgeNames { get; } = ["lower", "top"];

    /// <inheritdoc/>
    public override IReadOnlyList<string> CornerNames { get; } = ["left", "right"];

    /// <inheritdoc/>
    public override IReadOnlyList<string> StraightEdges { get; } = [];

    /// <inheritdoc/>
    public override bool IsRound => true;

    /// <inheritdoc/>
    public override Outline Sketch => Ring(720, 460);

    /// <inheritdoc/>
    public override IReadOnlyList<TapeLine> TapeLines { get; } = [new("width", new(-360, 0), new(360, 0)), new("height", new(0, -230), new(0, 230))];

    /// <inheritdoc/>
    public override Outline? Finished(Measurements measured, Findings findings) => Read(measured, findings);

    /// <inheritdoc/>
    public override Outline? Unblocked(Measurements measured, Findings findings) => Read(measured, findings);

    private Outline? Read(Measurements measured, Findings findings) =>
        MeasuredSizes.Read(FinishedSizes, measured, findings) is { } sizes ? Ring(sizes["width"], sizes["height"]) : null;

    private Outline Ring(double width, double height) =>
        NamedRing.Of(this, [new(-width / 2, 0), new(width / 2, 0)], (i, _, _) => EllipticArc.About(Point.Origin, width / 2, height / 2, i == 0 ? Math.PI : 0, Math.PI))!;
}
