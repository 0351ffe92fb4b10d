using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Pieces;

/// <summary>A piece of four sides, measured unblocked by its sides and a diagonal.</summary>
public abstract class FourSidedPiece : PieceKind
{
    /// <summary>Sides this near read the same on the tape, in whatever unit they were written, in millimetres.</summary>
    private const double Agreement = 1e-6;

    /// <inheritdoc/>
    public override IReadOnlyList<string> EdgeNames { get; } = ["lower", "right", "top", "left"];

    /// <inheritdoc/>
    public override IReadOnlyList<string> CornerNames { get; } = ["lower left", "lower right", "upper right", "upper left"];

    /// <inheritdoc/>
    public override bool TakesDiagonal => true;

    /// <inheritdoc/>
    public sealed override Outline? Finished(Measurements measured, Findings findings)
    {
        ArgumentNullException.ThrowIfNull(measured);
        ArgumentNullException.ThrowIfNull(findings);
        if (MeasuredSizes.Read(FinishedSizes, measured, findings) is not { } sizes || Corners(sizes, measured, findings) is not { } corners)
            return null;
        return NamedRing.Of(this, corners, (i, from, to) => BowedEdge.Between(measured, EdgeNames[i], from, to, findings));
    }

    /// <inheritdoc/>
    public sealed override Outline? Unblocked(Measurements measured, Findings findings)
    {
        ArgumentNullException.ThrowIfNull(measured);
        ArgumentNullException.ThrowIfNull(findings);
        TapedEdge?[] taped = [.. EdgeNames.Select(name => TapedEdge.Read(measured, name, findings))];
        if (taped.Contains(null) || Placed([.. taped.Select(t => t!.Side)], measured, findings) is not { } corners)
            return null;
        return NamedRing.Of(this, Upright(corners), (i, from, to) => CircularArc.Between(from, to, taped[i]!.Bow));
    }

    /// <summary>The finished corners in order, or null after adding a problem.</summary>
    protected abstract IReadOnlyList<Point>? Corners(MeasuredSizes sizes, Measurements measured, Findings findings);

    /// <summary>Corners whose first side lies along x, turned as the piece is worked.</summary>
    protected virtual IReadOnlyList<Point> Upright(IReadOnlyList<Point> corners) => corners;

    /// <summary>The corners as they are taken where no diagonal was measured, and in what words; null where the sides do not allow it.</summary>
    protected virtual (Point[] Corners, string As)? Assumed(IReadOnlyList<double> side) => null;

    /// <summary>Corners of opposite sides that agree, square to each other; null where they differ.</summary>
    protected static (Point[] Corners, string As)? Squared(IReadOnlyList<double> side)
    {
        ArgumentNullException.ThrowIfNull(side);
        return Agree(side[0], side[2]) && Agree(side[1], side[3])
            ? ([new(0, 0), new(side[0], 0), new(side[0], side[3]), new(0, side[3])], "opposite sides agree: the piece is taken as square at its corners")
            : null;
    }

    /// <summary>Whether two sides read the same on the tape.</summary>
    protected static bool Agree(double one, double other) => Math.Abs(one - other) < Agreement;

    private Point[]? Placed(double[] side, Measurements measured, Findings findings)
    {
        var path = $"{measured.Path}.diagonal";
        if (measured.Diagonal is not { } diagonal)
        {
            if (measured.Unreadable.Contains(path) || measured.Unreadable.Contains($"{path}.length"))
                return null;
            if (Assumed(side) is var (corners, words))
            {
                findings.Note(path, $"No diagonal was measured and {words}.", "Measure one diagonal if it lies askew.");
                return corners;
            }

            findings.Problem(path, $"The diagonal is missing: the sides {Said(side, findings)} alone do not give the shape.", $"Lay the tape from one corner straight to the opposite one and write {{ \"from\": \"{CornerNames[0]}\", \"to\": \"{CornerNames[2]}\", \"length\": ... }}.");
            return null;
        }

        int from = Corner(diagonal.From), to = Corner(diagonal.To);
        if (from < 0 || to < 0 || Math.Abs(from - to) != 2)
        {
            var names = string.Join(", ", CornerNames);
            findings.Problem(path, $"A diagonal runs between opposite corners; this one runs from \"{diagonal.From}\" to \"{diagonal.To}\".", $"Use two opposite ones of: {names}.");
            return null;
        }

        var across = diagonal.Length.Millimetres;
        var rises = Math.Min(from, to) == 0;
        var near = Triangulation.Apex(rises ? across : side[3], rises ? side[1] : across, side[0]);
        if (near is { } placed)
        {
            // The corner on the diagonal is placed over the first side; the last one over the diagonal or the other side.
            Point start = rises ? new(0, 0) : placed, end = rises ? placed : new(side[0], 0);
            var apex = Triangulation.Apex(rises ? side[3] : side[2], rises ? side[2] : side[1], start.DistanceTo(end));
            if (apex is { } over)
            {
                var x = (end - start).Unit;
                var last = start + (over.X * x) + (over.Y * x.TurnedLeft);
                return rises ? [new(0, 0), new(side[0], 0), placed, last] : [new(0, 0), new(side[0], 0), last, placed];
            }
        }

        findings.Problem(path, $"The sides and the diagonal cannot close: {Said(side, findings)}, diagonal {findings.Say(across)}.", "Measure the four sides and the diagonal again, straight from corner to corner.");
        return null;
    }

    private string Said(double[] side, Findings findings) => string.Join(", ", EdgeNames.Select((e, i) => $"{e} {findings.Say(side[i])}"));

    private int Corner(string name) => CornerNames.ToList().FindIndex(c => c.Equals(name, StringComparison.OrdinalIgnoreCase));
}
