using BlockingTemplates.Engine.Fabrics;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Pins.Settling;

/// <summary>What the cloth does between and at the pins of a plan, in the plan's frame. Immutable.</summary>
public sealed record ClothPlan
{
    /// <summary>How far the free edge has to lie off its line to be drawn beside it, in millimetres.</summary>
    public const double OffLineMm = 1;

    /// <summary>What the cloth was taken to be.</summary>
    public required ClothMaterial Material { get; init; }

    /// <summary>Out-of-balance force over the cloth's forces where the search ended.</summary>
    public required double Residual { get; init; }

    /// <summary>Newton steps of the last search.</summary>
    public required int Steps { get; init; }

    /// <summary>Nodes of the mesh.</summary>
    public required int Nodes { get; init; }

    /// <summary>Smallest angle of the mesh, in degrees.</summary>
    public required double SmallestAngleDegrees { get; init; }

    /// <summary>Whether the cloth decided the spacing; false where the maker gave it.</summary>
    public required bool DecidedSpacing { get; init; }

    /// <summary>Whether the time was up before all was found: then this is the best so far.</summary>
    public required bool IsBestSoFar { get; init; }

    /// <summary>The gaps between neighbouring marks, once round.</summary>
    public required IReadOnlyList<MarkGap> Gaps { get; init; }

    /// <summary>How straight each edge lies, in the order of the edges; null for an edge without a gap of its own.</summary>
    public required IReadOnlyList<EdgeStraightness?> Edges { get; init; }

    /// <summary>Load of each pin once all are set, in the order of the marks' numbers, as a share of the largest; 0 to 1.</summary>
    public required IReadOnlyList<double> LoadShares { get; init; }

    /// <summary>The largest load, in newtons, where strips gave a stiffness; else null.</summary>
    public required Spread? LargestLoadNewtons { get; init; }

    /// <summary>The pulls in turn, in the order of the marks' numbers; shorter than the marks where the time was up.</summary>
    public required IReadOnlyList<PullInTurn> InTurn { get; init; }

    /// <summary>The anchors compared, the one taken first.</summary>
    public required IReadOnlyList<AnchorTrial> Anchors { get; init; }

    /// <summary>Stretch of the cloth.</summary>
    public required StretchMap Stretch { get; init; }

    /// <summary>Regions that stay slack, largest first.</summary>
    public required IReadOnlyList<ClothRegion> Slack { get; init; }

    /// <summary>Regions stretched beyond what the swatch took, largest first; none without a swatch.</summary>
    public required IReadOnlyList<ClothRegion> Beyond { get; init; }

    /// <summary>The line of the free edge, once round.</summary>
    public required IReadOnlyList<Point> FreeEdge { get; init; }

    /// <summary>Parts of the free edge, from mark to mark, that lie more than 1 mm off the pinned outline: those of <see cref="GapsOffLine"/>.</summary>
    public required IReadOnlyList<IReadOnlyList<Point>> OffLine { get; init; }

    /// <summary>The softest that the cloth may be, or null where it was not computed.</summary>
    public ClothEnd? Soft { get; init; }

    /// <summary>The stiffest that the cloth may be, or null where it was not computed.</summary>
    public ClothEnd? Stiff { get; init; }

    /// <summary>Worst scallop of a determined gap, without sign, in millimetres; null where no line is determined.</summary>
    public double? WorstScallopMm => Gaps.Where(g => g.Determined != false).Select(g => (double?)Math.Abs(g.ScallopMm)).Max();

    /// <summary>The determined gaps whose free edge lies more than 1 mm off the pinned outline, once round.</summary>
    public IEnumerable<MarkGap> GapsOffLine => Gaps.Where(IsOffLine);

    /// <summary>Whether the free edge lies off its line in a gap, and the cloth determines it.</summary>
    internal static bool IsOffLine(MarkGap gap) => gap.Determined != false && Math.Abs(gap.ScallopMm) > OffLineMm;

    /// <summary>The pull in turn of a mark, or null where the time was up before it.</summary>
    public PullInTurn? InTurnOf(Mark mark)
    {
        ArgumentNullException.ThrowIfNull(mark);
        return mark.Number <= InTurn.Count ? InTurn[mark.Number - 1] : null;
    }

    /// <summary>The hardest pull in turn that is not approximate, in millimetres; null where there is none.</summary>
    public double? LargestPullInTurnMm(IEnumerable<Mark> marks) =>
        marks.Select(m => InTurnOf(m) is { IsApproximate: false } turn ? (double?)turn.PullMm(m) : null).Max();
}
