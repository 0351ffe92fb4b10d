using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Pieces;

/// <summary>The front or back of a garment, laid flat: hem below, side seams, armholes, shoulders, a round neckline.</summary>
/// <remarks>
/// The measurements are those of a knitting pattern's schematic, finished and unblocked alike. Between them the lines are
/// common practice: an inset armhole is a quarter of an ellipse over its lower half, then straight; the neckline is half
/// an ellipse. Other lines need shape "outline".
/// </remarks>
public sealed class PanelPiece : PieceKind
{
    /// <inheritdoc/>
    public override string Shape => "panel";

    /// <inheritdoc/>
    public override IReadOnlyList<SizeName> FinishedSizes { get; } =
    [
        new("hem", "straight across along the hem"),
        new("chest", "straight across from underarm to underarm"),
        new("length", "from the hem straight up to the shoulder beside the neck"),
        new("armhole", "from the underarm straight up to the height of the shoulder tip"),
        new("shoulders", "straight across from shoulder tip to shoulder tip"),
        new("shoulderSlope", "how far the shoulder tip lies below the shoulder beside the neck") { Reach = SizeReach.FromZero },
        new("neckWidth", "straight across the neck between the shoulders"),
        new("neckDepth", "from the shoulders beside the neck straight down to the lowest point of the neck") { Reach = SizeReach.FromZero },
    ];

    /// <inheritdoc/>
    public override IReadOnlyList<SizeName> UnblockedSizes => FinishedSizes;

    /// <inheritdoc/>
    public override IReadOnlyList<string> EdgeNames { get; } =
        ["hem", "right side", "right armhole", "right shoulder", "neckline", "left shoulder", "left armhole", "left side"];

    /// <inheritdoc/>
    public override IReadOnlyList<string> CornerNames { get; } =
        ["lower left", "lower right", "right underarm", "right shoulder tip", "right neck", "left neck", "left shoulder tip", "left underarm"];

    /// <inheritdoc/>
    public override IReadOnlyList<string> StraightEdges { get; } = ["hem", "right side", "right shoulder", "left shoulder", "left side"];

    /// <inheritdoc/>
    public override string UpName => "length";

    /// <inheritdoc/>
    public override Outline Sketch =>
        Ring(new(500, 540, 640, 190, 400, 35, 190, 90), (i, from, to) => CircularArc.Between(from, to, i is 0 ? 15 : i is 1 or 7 ? -8 : 0))!;

    /// <inheritdoc/>
    public override IReadOnlyList<TapeLine> TapeLines { get; } =
    [
        new("hem", new(-250, 0), new(250, 0)),
        new("chest", new(-270, 415), new(270, 415)),
        new("length", new(95, 0), new(95, 640)),
        new("armhole", new(-300, 415), new(-300, 605)),
        new("shoulders", new(-200, 740), new(200, 740)),
        new("shoulder slope", new(225, 605), new(225, 640)),
        new("neck width", new(-95, 690), new(95, 690)),
        new("neck depth", new(0, 550), new(0, 640)),
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
        var panel = new Schematic(
            sizes["hem"], sizes["chest"], sizes["length"], sizes["armhole"], sizes["shoulders"], sizes["shoulderSlope"], sizes["neckWidth"], sizes["neckDepth"]);
        return IsWhole(panel, measured.Path, findings)
            ? Ring(panel, (i, from, to) => BowedEdge.Between(measured, EdgeNames[i], from, to, findings))
            : null;
    }

    private static bool IsWhole(Schematic panel, string path, Findings findings)
    {
        var isWhole = true;
        void Problem(string name, string what, string @do)
        {
            findings.Problem($"{path}.{name}", what, @do);
            isWhole = false;
        }

        if (panel.Armhole + panel.ShoulderSlope >= panel.Length)
            Problem("armhole", $"Armhole {findings.Say(panel.Armhole)} and shoulder slope {findings.Say(panel.ShoulderSlope)} together take up the whole length of {findings.Say(panel.Length)}: nothing is left for the side seam.", "Measure the armhole straight up from the underarm, not along its curve, and the length from the hem to the shoulder beside the neck.");
        if (panel.NeckWidth >= panel.Shoulders)
            Problem("neckWidth", $"The neck width of {findings.Say(panel.NeckWidth)} is not less than the {findings.Say(panel.Shoulders)} across the shoulders: no shoulder seam is left.", "Measure the neck between the shoulders and the shoulders from tip to tip.");
        if (panel.NeckDepth >= panel.Length)
            Problem("neckDepth", $"The neck depth of {findings.Say(panel.NeckDepth)} is not less than the length of {findings.Say(panel.Length)}: the neckline would cut the piece in two.", "Measure the neck depth straight down from the shoulders; a front in two halves needs shape \"outline\".");
        return isWhole;
    }

    private Outline? Ring(Schematic panel, Func<int, Point, Point, EdgeCurve?> line)
    {
        double tipHeight = panel.Length - panel.ShoulderSlope, underarm = tipHeight - panel.Armhole;
        Point[] right = [new(panel.Hem / 2, 0), new(panel.Chest / 2, underarm), new(panel.Shoulders / 2, tipHeight), new(panel.NeckWidth / 2, panel.Length)];
        return NamedRing.Of(
            this,
            [Mirrored(right[0]), .. right, .. right.Skip(1).Reverse().Select(Mirrored)],
            (i, from, to) => i switch
            {
                2 => Armhole(from, to),
                6 => Armhole(Mirrored(to), Mirrored(from)).Mapped(Affine.MirrorLeftRight).Reversed(),
                4 => panel.NeckDepth > 0 ? EllipticArc.About(new(0, panel.Length), panel.NeckWidth / 2, panel.NeckDepth, 0, -Math.PI) : new StraightEdge(from, to),
                _ => line(i, from, to),
            });
    }

    /// <summary>The right armhole: where it is inset, level at the underarm and upright from half its height.</summary>
    private static EdgeCurve Armhole(Point underarm, Point tip)
    {
        var inset = underarm.X - tip.X;
        var rise = (tip.Y - underarm.Y) / 2;
        if (inset <= 0)
            return new StraightEdge(underarm, tip);
        var curve = EllipticArc.About(new(underarm.X, underarm.Y + rise), inset, rise, -Math.PI / 2, -Math.PI / 2);
        return new JoinedEdge([curve, new StraightEdge(curve.End, tip)]);
    }

    private static Point Mirrored(Point p) => new(-p.X, p.Y);

    private readonly record struct Schematic(
        double Hem, double Chest, double Length, double Armhole, double Shoulders, double ShoulderSlope, double NeckWidth, double NeckDepth);
}
