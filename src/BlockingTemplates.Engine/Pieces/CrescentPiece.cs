using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Pieces;

/// <summary>A crescent: two arcs of circles from tip to tip.</summary>
/// <remarks>Unblocked it is measured by the same three straight tapes, which a floor and a tape give at once; both edges are taken as arcs.</remarks>
public sealed class CrescentPiece : PieceKind
{
    /// <inheritdoc/>
    public override string Shape => "crescent";

    /// <inheritdoc/>
    public override IReadOnlyList<SizeName> FinishedSizes { get; } =
    [
        new("wingspan", "straight from tip to tip"),
        new("depth", "along the spine, from the middle of the top edge to the lower edge"),
        new("rise", "how far the tips stand above the middle of the top edge; 0: straight; minus: below") { Reach = SizeReach.EitherWay },
    ];

    /// <inheritdoc/>
    public override IReadOnlyList<SizeName> UnblockedSizes => FinishedSizes;

    /// <inheritdoc/>
    public override IReadOnlyList<string> EdgeNames { get; } = ["lower", "top"];

    /// <inheritdoc/>
    public override IReadOnlyList<string> CornerNames { get; } = ["left tip", "right tip"];

    /// <inheritdoc/>
    public override IReadOnlyList<string> StraightEdges { get; } = [];

    /// <inheritdoc/>
    public override string AcrossName => "wingspan";

    /// <inheritdoc/>
    public override Outline Sketch => Ring(1200, 380, 130);

    /// <inheritdoc/>
    public override IReadOnlyList<TapeLine> TapeLines { get; } =
    [
        new("wingspan", new(-600, 0), new(600, 0)),
        new("rise", new(0, -130), new(0, 0)),
        new("depth", new(0, -510), new(0, -130)),
    ];

    /// <inheritdoc/>
    public override Outline? Finished(Measurements measured, Findings findings) => Read(measured, findings);

    /// <inheritdoc/>
    public override Outline? Unblocked(Measurements measured, Findings findings) => Read(measured, findings);

    private Outline? Read(Measurements measured, Findings findings)
    {
        ArgumentNullException.ThrowIfNull(measured);
        ArgumentNullException.ThrowIfNull(findings);
        if (MeasuredSizes.Read(FinishedSizes, measured, findings) is not { } sizes)
            return null;
        var (wingspan, depth, rise) = (sizes["wingspan"], sizes["depth"], sizes["rise"]);
        var half = wingspan / 2;
        if (Math.Abs(rise) > half)
            findings.Problem($"{measured.Path}.rise", $"A rise of {findings.Say(rise)} is more than half the wingspan of {findings.Say(wingspan)}: the top edge would be an arc past the half circle.", "Measure the tips' height over the middle of the top edge again, or use shape \"outline\" with a corner on the arc.");
        else if (Math.Abs(depth + rise) > half)
            findings.Problem($"{measured.Path}.depth", $"Depth {findings.Say(depth)} and rise {findings.Say(rise)} together are more than half the wingspan of {findings.Say(wingspan)}: the lower edge would be an arc past the half circle.", "Measure the three again, straight and at right angles, or use shape \"outline\" with a corner on the arc.");
        else
            return Ring(wingspan, depth, rise);
        return null;
    }

    private Outline Ring(double wingspan, double depth, double rise) =>
        NamedRing.Of(this, [new(-wingspan / 2, 0), new(wingspan / 2, 0)], (i, from, to) => CircularArc.Between(from, to, i == 0 ? depth + rise : -rise))!;
}
