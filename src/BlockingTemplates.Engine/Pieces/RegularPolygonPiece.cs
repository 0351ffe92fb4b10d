using System.Globalization;
using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Pieces;

/// <summary>A motif or doily with equal sides and angles, standing on its lower side.</summary>
/// <remarks>
/// Unblocked it is measured by its greatest width, its height and the bows of its sides, and taken as the regular
/// polygon stretched to that width and height: corners out of place by more need shape "outline".
/// </remarks>
public sealed class RegularPolygonPiece : PieceKind
{
    private const double SketchMm = 300;

    private readonly int _sides;

    /// <summary>The kind with so many sides.</summary>
    /// <param name="shape">Its name in a project file.</param>
    /// <param name="sides">How many sides, 5 or more.</param>
    public RegularPolygonPiece(string shape, int sides)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(sides, 5);
        _sides = sides;
        Shape = shape;
        var isEven = sides % 2 == 0;
        var across = isEven ? "top side" : "top corner";
        FinishedSizes =
        [
            new("side", "along one side, from corner to corner"),
            new("height", $"from the lower side straight up to the {across}") { InsteadOf = "side" },
        ];
        UnblockedSizes =
        [
            new("width", "straight across at its widest, from left to right"),
            new("height", $"from the lower side straight up to the {across}"),
        ];
        var edges = (sides - 1) / 2;
        string[] heights = edges switch
        {
            2 => ["lower {0}", "upper {0}"],
            3 => ["lower {0}", "{0}", "upper {0}"],
            _ => [.. Enumerable.Range(1, edges).Select(i => string.Create(CultureInfo.InvariantCulture, $"{{0}} {i}"))],
        };
        EdgeNames = ["lower", .. heights.Select(h => OnThe("right", h)), .. isEven ? ["top"] : Array.Empty<string>(), .. heights.Reverse().Select(h => OnThe("left", h))];
        var corners = Enumerable.Range(1, sides / 2).Select(i => string.Create(CultureInfo.InvariantCulture, $"{{0}} corner {i}")).ToList();
        CornerNames =
        [
            OnThe("left", corners[0]),
            .. corners.Select(c => OnThe("right", c)),
            .. isEven ? Array.Empty<string>() : ["top corner"],
            .. Enumerable.Reverse(corners).SkipLast(1).Select(c => OnThe("left", c)),
        ];
    }

    /// <inheritdoc/>
    public override string Shape { get; }

    /// <inheritdoc/>
    public override IReadOnlyList<SizeName> FinishedSizes { get; }

    /// <inheritdoc/>
    public override IReadOnlyList<SizeName> UnblockedSizes { get; }

    /// <inheritdoc/>
    public override IReadOnlyList<string> EdgeNames { get; }

    /// <inheritdoc/>
    public override IReadOnlyList<string> CornerNames { get; }

    /// <inheritdoc/>
    public override Outline Sketch => Ring(Corners(SketchMm), (from, to) => CircularArc.Between(from, to, -0.06 * from.DistanceTo(to)))!;

    /// <inheritdoc/>
    public override IReadOnlyList<TapeLine> TapeLines
    {
        get
        {
            var corners = Corners(SketchMm);
            var (right, top) = (corners.MaxBy(c => Math.Round(c.X, 6)), corners.Max(c => c.Y));
            return [new("width", new(-right.X, right.Y), right), new("height", new(0, 0), new(0, top))];
        }
    }

    /// <inheritdoc/>
    public override Outline? Finished(Measurements measured, Findings findings)
    {
        ArgumentNullException.ThrowIfNull(measured);
        ArgumentNullException.ThrowIfNull(findings);
        if (MeasuredSizes.Read(FinishedSizes, measured, findings) is not { } sizes)
            return null;
        var side = sizes.Has("side") ? sizes["side"] : sizes["height"] / Corners(1).Max(c => c.Y);
        return Ring(Corners(side), (i, from, to) => BowedEdge.Between(measured, EdgeNames[i], from, to, findings));
    }

    /// <inheritdoc/>
    public override Outline? Unblocked(Measurements measured, Findings findings)
    {
        ArgumentNullException.ThrowIfNull(measured);
        ArgumentNullException.ThrowIfNull(findings);
        if (MeasuredSizes.Read(UnblockedSizes, measured, findings) is not { } sizes)
            return null;
        var unit = Corners(1);
        var (across, up) = (sizes["width"] / (2 * unit.Max(c => c.X)), sizes["height"] / unit.Max(c => c.Y));
        return Ring([.. unit.Select(c => new Point(across * c.X, up * c.Y))], (i, from, to) => BowedEdge.Between(measured, EdgeNames[i], from, to, findings));
    }

    /// <summary>The corners of a regular polygon by its side, the middle of the lower side at the origin.</summary>
    private Point[] Corners(double side)
    {
        var half = Math.PI / _sides;
        double radius = side / (2 * Math.Sin(half)), apothem = side / (2 * Math.Tan(half));
        return [.. Enumerable.Range(0, _sides).Select(i => new Point(0, apothem) + (radius * Vector.AtAngle((-Math.PI / 2) + (((2 * i) - 1) * half))))];
    }

    private Outline? Ring(IReadOnlyList<Point> corners, Func<Point, Point, EdgeCurve?> line) => Ring(corners, (_, from, to) => line(from, to));

    private Outline? Ring(IReadOnlyList<Point> corners, Func<int, Point, Point, EdgeCurve?> line) => NamedRing.Of(this, corners, line);

    private static string OnThe(string hand, string name) => name.Replace("{0}", hand, StringComparison.Ordinal);
}
