using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Pieces;

/// <summary>A round piece: a circular shawl, a doily; smooth all round.</summary>
/// <remarks>Unblocked it is measured by two diameters at a right angle: its outline is then an ellipse.</remarks>
public sealed class CirclePiece : PieceKind
{
    /// <inheritdoc/>
    public override string Shape => "circle";

    /// <inheritdoc/>
    public override IReadOnlyList<SizeName> FinishedSizes { get; } = [new("diameter", "straight across through the middle")];

    /// <inheritdoc/>
    public override IReadOnlyList<SizeName> UnblockedSizes { get; } =
    [
        new("width", "straight across through the middle, from left to right"),
        new("height", "straight up through the middle, from the lower edge to the top edge"),
    ];

    /// <inheritdoc/>
    public override IReadOnlyList<string> EdgeNames { get; } = ["lower", "top"];

    /// <inheritdoc/>
    public override IReadOnlyList<string> CornerNames { get; } = ["left", "right"];

    /// <inheritdoc/>
    public override IReadOnlyList<string> StraightEdges { get; } = [];

    /// <inheritdoc/>
    public override bool IsRound => true;

    /// <inheritdoc/>
    public override string AcrossName => "diameter";

    /// <inheritdoc/>
    public override string UpName => "diameter";

    /// <inheritdoc/>
    public override Outline Sketch => Ring(600, 560);

    /// <inheritdoc/>
    public override IReadOnlyList<TapeLine> TapeLines { get; } = [new("width", new(-300, 0), new(300, 0)), new("height", new(0, -280), new(0, 280))];

    /// <inheritdoc/>
    public override Outline? Finished(Measurements measured, Findings findings) =>
        MeasuredSizes.Read(FinishedSizes, measured, findings) is { } sizes ? Ring(sizes["diameter"], sizes["diameter"]) : null;

    /// <inheritdoc/>
    public override Outline? Unblocked(Measurements measured, Findings findings) =>
        MeasuredSizes.Read(UnblockedSizes, measured, findings) is { } sizes ? Ring(sizes["width"], sizes["height"]) : null;

    private Outline Ring(double width, double height) =>
        NamedRing.Of(this, [new(-width / 2, 0), new(width / 2, 0)], (i, _, _) => EllipticArc.About(Point.Origin, width / 2, height / 2, i == 0 ? Math.PI : 0, Math.PI))!;
}
