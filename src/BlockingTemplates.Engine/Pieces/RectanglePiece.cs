using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Pieces;

/// <summary>A rectangular piece: scarf, stole, blanket.</summary>
public sealed class RectanglePiece : PieceKind
{
    /// <summary>Sides this near read the same on the tape, in whatever unit they were written, in millimetres.</summary>
    private const double Agreement = 1e-6;

    /// <inheritdoc/>
    public override string Shape => "rectangle";

    /// <inheritdoc/>
    public override IReadOnlyList<SizeName> FinishedSizes { get; } =
    [
        new("width", "along the lower edge, from corner to corner"),
        new("length", "along a side edge, from the lower to the upper corner"),
    ];

    /// <inheritdoc/>
    public override IReadOnlyList<string> EdgeNames { get; } = ["lower", "right", "top", "left"];

    /// <inheritdoc/>
    public override IReadOnlyList<string> CornerNames { get; } = ["lower left", "lower right", "upper right", "upper left"];

    /// <inheritdoc/>
    public override bool TakesDiagonal => true;

    /// <inheritdoc/>
    public override string UpName => "length";

    /// <inheritdoc/>
    public override Outline Sketch =>
        NamedRing.Of(this, [new(0, 0), new(500, 0), new(520, 900), new(-15, 880)], (i, from, to) => CircularArc.Between(from, to, i % 2 == 0 ? 25 : -40))!;

    /// <inheritdoc/>
    public override Outline? Finished(Measurements measured, Findings findings)
    {
        if (FinishedSize.Read(this, measured, findings) is not [var width, var length])
            return null;
        return NamedRing.Of(this, [new(0, 0), new(width, 0), new(width, length), new(0, length)], (i, from, to) => FinishedSize.Edge(measured, EdgeNames[i], from, to, findings));
    }

    /// <inheritdoc/>
    public override Outline? Unblocked(Measurements measured, Findings findings)
    {
        if (EdgeNames.Select(name => TapedEdge.Read(measured, name, findings)).ToList() is not [{ } lower, { } right, { } top, { } left])
            return null;
        var corners = Corners(measured, lower.Side, right.Side, top.Side, left.Side, findings);
        TapedEdge[] taped = [lower, right, top, left];
        return corners is null ? null : NamedRing.Of(this, corners, (i, from, to) => CircularArc.Between(from, to, taped[i].Bow));
    }

    private Point[]? Corners(Measurements measured, double lower, double right, double top, double left, Findings findings)
    {
        var path = $"{measured.Path}.diagonal";
        if (measured.Diagonal is not { } diagonal)
        {
            if (measured.Unreadable.Contains(path) || measured.Unreadable.Contains($"{path}.length"))
                return null;
            if (Math.Abs(lower - top) < Agreement && Math.Abs(left - right) < Agreement)
            {
                findings.Note(path, "No diagonal was measured and opposite sides agree: the piece is taken as square at its corners.", "Measure one diagonal if it lies askew.");
                return [new(0, 0), new(lower, 0), new(lower, left), new(0, left)];
            }

            findings.Problem(path, "Opposite sides differ and no diagonal was measured: four sides alone do not give the shape.", "Lay the tape from one corner straight to the opposite one and write { \"from\": \"lower left\", \"to\": \"upper right\", \"length\": ... }.");
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
        var near = Triangulation.Apex(rises ? across : left, rises ? right : across, lower);
        if (near is { } placed)
        {
            // The corner on the diagonal is placed over the lower side; the last one over the diagonal or the other side.
            Point start = rises ? new(0, 0) : placed, end = rises ? placed : new(lower, 0);
            var apex = Triangulation.Apex(rises ? left : top, rises ? top : right, start.DistanceTo(end));
            if (apex is { } over)
            {
                var x = (end - start).Unit;
                var last = start + (over.X * x) + (over.Y * x.TurnedLeft);
                return rises ? [new(0, 0), new(lower, 0), placed, last] : [new(0, 0), new(lower, 0), last, placed];
            }
        }

        findings.Problem(path, $"The sides and the diagonal cannot close: lower {findings.Say(lower)}, right {findings.Say(right)}, top {findings.Say(top)}, left {findings.Say(left)}, diagonal {findings.Say(across)}.", "Measure the four sides and the diagonal again, straight from corner to corner.");
        return null;
    }

    private int Corner(string name) => CornerNames.ToList().FindIndex(c => c.Equals(name, StringComparison.OrdinalIgnoreCase));
}
