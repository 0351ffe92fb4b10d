using System.Globalization;
using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Pieces;

/// <summary>A collar or yoke: a sector of a ring, its inner (neck) edge at the top.</summary>
/// <remarks>
/// With both edges taped along and the depth between them, the sector turns through (outer - inner) / depth radians
/// about a centre at inner / angle from the inner edge. Unblocked it is measured by the same three tapes.
/// </remarks>
public sealed class CollarPiece : PieceKind
{
    /// <summary>How near the ends may come to each other, in millimetres: one square's width of a measuring tape.</summary>
    private const double LeastGapMm = 10;

    /// <inheritdoc/>
    public override string Shape => "collar";

    /// <inheritdoc/>
    public override IReadOnlyList<SizeName> FinishedSizes { get; } =
    [
        new("innerEdge", "tape laid along the inner edge, the neck, from end to end"),
        new("outerEdge", "tape laid along the outer edge, from end to end"),
        new("depth", "straight from the inner edge to the outer one, the same all along"),
    ];

    /// <inheritdoc/>
    public override IReadOnlyList<SizeName> UnblockedSizes => FinishedSizes;

    /// <inheritdoc/>
    public override IReadOnlyList<string> EdgeNames { get; } = ["outer", "right", "inner", "left"];

    /// <inheritdoc/>
    public override IReadOnlyList<string> CornerNames { get; } = ["outer left", "outer right", "inner right", "inner left"];

    /// <inheritdoc/>
    public override IReadOnlyList<string> StraightEdges { get; } = ["right", "left"];

    /// <inheritdoc/>
    public override Outline Sketch => Ring(420, 780, 170, (_, from, to) => new StraightEdge(from, to))!;

    /// <inheritdoc/>
    public override IReadOnlyList<TapeLine> TapeLines
    {
        get
        {
            var (ring, middle) = (Sketch, 0.5);
            Point outer = ring.Edges[0].Curve.At(middle), inner = ring.Edges[2].Curve.At(middle);
            return
            [
                new("depth", outer, inner),
                new("outer edge", outer + new Vector(-60, 12), outer + new Vector(60, 12)),
                new("inner edge", inner + new Vector(-60, 12), inner + new Vector(60, 12)),
            ];
        }
    }

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
        var (inner, outer, depth) = (sizes["innerEdge"], sizes["outerEdge"], sizes["depth"]);
        if (outer <= inner)
        {
            findings.Problem($"{measured.Path}.outerEdge", $"The outer edge of {findings.Say(outer)} is not longer than the inner edge of {findings.Say(inner)}: the collar would not bend.", "Measure both along the edge. A straight strip is a rectangle.");
            return null;
        }

        var angle = (outer - inner) / depth;
        if (angle < 2 * Math.PI && 2 * inner / angle * Math.Sin(angle / 2) is var gap && (angle < Math.PI || gap >= LeastGapMm))
            return Ring(inner, outer, depth, (i, from, to) => BowedEdge.Between(measured, EdgeNames[i], from, to, findings));
        var degrees = (angle * 180 / Math.PI).ToString("0", CultureInfo.InvariantCulture);
        findings.Problem($"{measured.Path}.depth", $"Edges of {findings.Say(inner)} and {findings.Say(outer)} with {findings.Say(depth)} between them turn through {degrees} degrees: the ends would meet.", "Measure the three again, or pin a closed ring in two pieces.");
        return null;
    }

    private Outline? Ring(double inner, double outer, double depth, Func<int, Point, Point, EdgeCurve?> end)
    {
        var angle = (outer - inner) / depth;
        double near = inner / angle, far = near + depth, from = (-Math.PI - angle) / 2;
        Point At(double radius, double turn) => Point.Origin + (radius * Vector.AtAngle(turn));
        return NamedRing.Of(
            this,
            [At(far, from), At(far, from + angle), At(near, from + angle), At(near, from)],
            (i, start, to) => i switch
            {
                0 => Arc(far, from, angle),
                2 => Arc(near, from + angle, -angle),
                _ => end(i, start, to),
            });
    }

    /// <summary>An arc about the origin, in two halves where it goes past the half circle.</summary>
    private static EdgeCurve Arc(double radius, double start, double sweep) => Math.Abs(sweep) <= Math.PI
        ? EllipticArc.About(Point.Origin, radius, radius, start, sweep)
        : new JoinedEdge([EllipticArc.About(Point.Origin, radius, radius, start, sweep / 2), EllipticArc.About(Point.Origin, radius, radius, start + (sweep / 2), sweep / 2)]);
}
