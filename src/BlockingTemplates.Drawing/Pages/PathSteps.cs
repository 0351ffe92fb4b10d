using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Drawing.Pages;

/// <summary>The steps of common paths, in millimetres. Closed ones run counter-clockwise.</summary>
public static class PathSteps
{
    /// <summary>
    /// Control arm of a quarter circle of radius 1 whose middle lies on the circle, 4/3 (√2 − 1).
    /// </summary>
    /// <remarks>Found by asking for the middle of the cubic to lie at 45° on the circle; greatest error of the radius 0.00027.</remarks>
    private static readonly double QuarterArm = 4.0 / 3.0 * (Math.Sqrt(2) - 1);

    /// <summary>A straight line.</summary>
    public static IReadOnlyList<PathStep> Line(Point from, Point to) => [new(PathStepKind.Move, from), new(PathStepKind.Line, to)];

    /// <summary>Straight lines from point to point; at least one point.</summary>
    /// <param name="points">The points in order.</param>
    /// <param name="closed">Whether a line leads back to the first.</param>
    public static IReadOnlyList<PathStep> Polyline(IEnumerable<Point> points, bool closed)
    {
        var steps = points.Select((p, i) => new PathStep(i == 0 ? PathStepKind.Move : PathStepKind.Line, p)).ToList();
        if (steps.Count == 0) throw new ArgumentException("A path needs a point.", nameof(points));
        if (closed) steps.Add(new(PathStepKind.Close));
        return steps;
    }

    /// <summary>An upright rectangle.</summary>
    public static IReadOnlyList<PathStep> Rectangle(Box box) => Polyline(
        [new(box.Left, box.Lower), new(box.Right, box.Lower), new(box.Right, box.Upper), new(box.Left, box.Upper)], closed: true);

    /// <summary>A circle as four cubics; its radius is right to 0.00027 of itself.</summary>
    /// <param name="centre">The middle.</param>
    /// <param name="radiusMm">Radius in millimetres, above 0.</param>
    public static IReadOnlyList<PathStep> Circle(Point centre, double radiusMm)
    {
        if (!double.IsFinite(radiusMm) || radiusMm <= 0) throw new ArgumentOutOfRangeException(nameof(radiusMm), "A radius is a finite number above 0.");
        var steps = new List<PathStep> { new(PathStepKind.Move, centre + new Vector(radiusMm, 0)) };
        var from = new Vector(radiusMm, 0);
        for (var quarter = 0; quarter < 4; quarter++)
        {
            var to = from.TurnedLeft;
            steps.Add(new(PathStepKind.Cubic, centre + to, centre + (from + (QuarterArm * to)), centre + (to + (QuarterArm * from))));
            from = to;
        }

        steps.Add(new(PathStepKind.Close));
        return steps;
    }
}
