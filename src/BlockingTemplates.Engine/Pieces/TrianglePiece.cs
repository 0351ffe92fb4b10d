using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Pieces;

/// <summary>A triangular shawl: top edge tip to tip, foot below it at the lower end of the spine.</summary>
public sealed class TrianglePiece : PieceKind
{
    /// <inheritdoc/>
    public override string Shape => "triangle";

    /// <inheritdoc/>
    public override IReadOnlyList<SizeName> FinishedSizes { get; } =
    [
        new("wingspan", "straight from tip to tip along the top edge"),
        new("depth", "along the spine, from the middle of the top edge to the foot"),
        new("offset", "how far the foot stands right of the middle of the top edge; minus: left; depth is then taken straight down") { Reach = SizeReach.EitherWay, IsOptional = true },
        new("rightSide", "straight from the foot to the right tip") { InsteadOf = "depth" },
        new("leftSide", "straight from the left tip to the foot") { InsteadOf = "depth" },
    ];

    /// <inheritdoc/>
    public override IReadOnlyList<string> EdgeNames { get; } = ["right", "top", "left"];

    /// <inheritdoc/>
    public override IReadOnlyList<string> CornerNames { get; } = ["foot", "right tip", "left tip"];

    /// <inheritdoc/>
    public override string AcrossName => "wingspan";

    /// <inheritdoc/>
    public override string UpName => "depth";

    /// <inheritdoc/>
    public override Outline Sketch =>
        NamedRing.Of(this, [new(0, 0), new(640, 640), new(-640, 640)], (i, from, to) => CircularArc.Between(from, to, i == 1 ? -50 : 70))!;

    /// <inheritdoc/>
    public override Outline? Finished(Measurements measured, Findings findings)
    {
        ArgumentNullException.ThrowIfNull(measured);
        ArgumentNullException.ThrowIfNull(findings);
        if (MeasuredSizes.Read(FinishedSizes, measured, findings) is not { } sizes)
            return null;
        var wingspan = sizes["wingspan"];
        Point[]? corners;
        if (sizes.Has("depth"))
        {
            var (depth, foot) = (sizes["depth"], sizes["offset"]);
            corners = [new(0, 0), new((wingspan / 2) - foot, depth), new((-wingspan / 2) - foot, depth)];
        }
        else
        {
            if (sizes.Has("offset"))
                findings.Problem($"{measured.Path}.offset", "The offset stands beside three sides, which give the foot's place already.", "Take it out, or give wingspan, depth and offset.");
            corners = Closed(wingspan, sizes["leftSide"], sizes["rightSide"], measured.Path, findings);
            if (sizes.Has("offset"))
                return null;
        }

        return corners is null ? null : NamedRing.Of(this, corners, (i, from, to) => BowedEdge.Between(measured, EdgeNames[i], from, to, findings));
    }

    /// <inheritdoc/>
    public override Outline? Unblocked(Measurements measured, Findings findings)
    {
        ArgumentNullException.ThrowIfNull(measured);
        ArgumentNullException.ThrowIfNull(findings);
        if (EdgeNames.Select(name => TapedEdge.Read(measured, name, findings)).ToList() is not [{ } right, { } top, { } left])
            return null;
        TapedEdge[] taped = [right, top, left];
        return Closed(top.Side, left.Side, right.Side, $"{measured.Path}.sides", findings) is { } corners
            ? NamedRing.Of(this, corners, (i, from, to) => CircularArc.Between(from, to, taped[i].Bow))
            : null;
    }

    /// <summary>The corners of three sides, the top edge level and the foot at the origin below it; null after adding a problem.</summary>
    private static Point[]? Closed(double top, double left, double right, string path, Findings findings)
    {
        if (Triangulation.Apex(left, right, top) is { } apex)
            return [new(0, 0), new(top - apex.X, apex.Y), new(-apex.X, apex.Y)];
        findings.Problem(path, $"The sides cannot close: top {findings.Say(top)}, left {findings.Say(left)}, right {findings.Say(right)}; the longest must be shorter than the other two together.", "Measure the three sides again, straight from corner to corner.");
        return null;
    }
}
