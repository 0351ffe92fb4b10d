using BlockingTemplates.Engine.Fabrics;
using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Pieces;

/// <summary>The piece as it lies once damp, from one that was measured dry.</summary>
public static class DampPiece
{
    /// <summary>The piece with its unblocked outline and stitch changed along and across the rows, where it was measured dry and the change is known; else the piece itself.</summary>
    /// <param name="piece">The piece as measured.</param>
    /// <param name="findings">Takes a note where it was measured dry and the change is not known, or where the change does not serve.</param>
    public static Piece Of(Piece piece, Findings findings)
    {
        ArgumentNullException.ThrowIfNull(piece);
        ArgumentNullException.ThrowIfNull(findings);
        var fabric = piece.Fabric;
        if (piece.Unblocked is not { } dry)
            return piece;
        if (fabric is { Measured: Dampness.Dry, WetChange: { } change })
        {
            var map = Affine.Stretch(Point.Origin, fabric.GrainDegrees * Math.PI / 180, 1 + change.Along, 1 + change.Across);
            return piece with
            {
                Unblocked = dry.Mapped(map),
                MeasuredDry = dry,
                Fabric = fabric with { Stitch = fabric.Stitch is var (along, across) ? (Scaled(along, change.Along), Scaled(across, change.Across)) : null },
            };
        }

        if (fabric.Measured == Dampness.Dry)
            AddLikely(fabric.Fibre, findings);
        else if (fabric.WetChange is { IsNone: false })
            findings.Note("fabric.wetChange", "The change when wet is not used: it serves only a piece that was measured dry.", "Write \"measured\": \"dry\" if it was, or take \"wetChange\" out.");
        return piece;
    }

    private static Length Scaled(Length length, double change) => Length.FromMillimetres((1 + change) * length.Millimetres);

    private static void AddLikely(Fibre? fibre, Findings findings)
    {
        const string Do = "Measure it again damp, or wet a swatch, measure it dry and wet, and write \"wetChange\".";
        if (fibre is { GrowsWhenWet: true })
        {
            findings.Note("fabric.measured", $"The piece was measured dry, and {fibre.Name} often grows once wet (common practice; how much differs from yarn to yarn). Pulls and stretch are told as measured: wet, they will be less.", Do);
            return;
        }

        var (least, most) = (WetChange.PlainWoolWetted, WetChange.PlainWoolWashed);
        findings.Note(
            "fabric.measured",
            FormattableString.Invariant($"The piece was measured dry, and plain knitted wool closes up once wet: by about {-100 * least.Along:0} % along the rows and {-100 * least.Across:0} % across, up to {-100 * most.Along:0} % and {-100 * most.Across:0} % once washed (Munden 1959, Knapton and others 1968). Superwash wool, alpaca, silk and viscose often grow instead (common practice). Pulls and stretch are told as measured: they are too small for a piece that closes up."),
            Do);
    }
}
