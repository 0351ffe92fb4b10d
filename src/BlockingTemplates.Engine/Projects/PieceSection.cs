using System.ComponentModel;
using System.ComponentModel.DataAnnotations;
using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Projects.Sections;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Projects;

// The part of a project file's form that is about the piece; see ProjectFile.
internal sealed record PieceSection
{
    [Description("The kind of piece.")]
    public required ShapeValue Shape { get; init; }

    [Description("The side that is up while the piece dries; the right side unless said.")]
    public WorkSide? FaceUp { get; init; }

    [Description("The side that was up when it was measured; as faceUp unless said.")]
    public WorkSide? MeasuredFaceUp { get; init; }

    [Description("Whether left and right measurements are averaged.")]
    public bool? EvenOut { get; init; }

    [Description("Names of a mirrored pair, such as right front and left front: the first as measured, the second its mirror image."), AtMost(2)]
    public IReadOnlyList<string>? Pair { get; init; }

    [Description("The finished size.")]
    public required FinishedValue Finished { get; init; }

    [Description("The size as it came off; left out: no lay line, no pulls.")]
    public UnblockedValue? Unblocked { get; init; }

    [Description("What is said of single edges, by name.")]
    public Dictionary<string, EdgeSection>? Edges { get; init; }
}

internal sealed record SizeSection
{
    [Description("What it is called."), AtMost(Limits.LongestName)]
    public required string Name { get; init; }

    [Description("Finished measurements instead of the piece's, name by name.")]
    public FinishedValue? Finished { get; init; }

    [Description("Unblocked measurements instead of the piece's, name by name.")]
    public UnblockedValue? Unblocked { get; init; }

    [Description("What is said of single edges instead, name by name.")]
    public Dictionary<string, EdgeSection>? Edges { get; init; }
}

internal sealed record FinishedSection
{
    [Description("Greatest distance of each edge from its straight line, outward positive; 0 if left out.")]
    public Dictionary<string, LengthValue>? Bows { get; init; }
}

internal sealed record UnblockedSection
{
    [Description("Straight tape from corner to corner, by edge.")]
    public Dictionary<string, LengthValue>? Sides { get; init; }

    [Description("Greatest distance of each edge from its straight line, outward positive; 0 if left out.")]
    public Dictionary<string, LengthValue>? Bows { get; init; }

    [Description("Tape laid along the edge itself, by edge.")]
    public Dictionary<string, LengthValue>? Along { get; init; }

    [Description("Straight tape between opposite corners of a four-sided piece.")]
    public DiagonalSection? Diagonal { get; init; }
}

internal sealed record DiagonalSection
{
    [Description("The corner it starts at.")]
    public required string From { get; init; }

    [Description("The corner it ends at.")]
    public required string To { get; init; }

    [Description("What the tape read.")]
    public required LengthValue Length { get; init; }
}

internal sealed record OutlineSection
{
    [Description("Corners, counter-clockwise. With a file: those of its joints that are corners; left out, corners are where the line turns sharply."), AtMost(Limits.MostEdges)]
    public IReadOnlyList<CornerValue>? Corners { get; init; }

    [Description("Edges, edge i from corner i to corner i+1; straight lines if left out."), AtMost(Limits.MostEdges)]
    public IReadOnlyList<OutlineEdgeSection>? Edges { get; init; }

    [Description("An SVG or CSV file beside the project file that holds the line at true size."), AtMost(Limits.LongestFileName)]
    public string? File { get; init; }

    [Description("Id of the path in the SVG file, where it holds several."), AtMost(Limits.LongestFileName)]
    public string? PathId { get; init; }
}

internal sealed record CornerSection
{
    [Description("Where it stands: to the right, up.")]
    public required LengthPair At { get; init; }

    [Description("Its name."), AtMost(Limits.LongestName)]
    public string? Name { get; init; }

    [Description("Whether the outline runs through without a forced pin.")]
    public bool? Smooth { get; init; }
}

internal sealed record OutlineEdgeSection
{
    [Description("Its name."), AtMost(Limits.LongestName)]
    public string? Name { get; init; }

    [Description("A circular arc: its greatest distance from the chord, outward positive.")]
    public LengthValue? Bow { get; init; }

    [Description("Stations along the chord from the first corner and how far out the edge lies there; joined by a smooth curve."), AtMost(Limits.MostPoints)]
    public IReadOnlyList<LengthPair>? Offsets { get; init; }

    [Description("Points between the corners, joined by straight lines."), AtMost(Limits.MostPoints)]
    public IReadOnlyList<LengthPair>? Points { get; init; }
}

internal sealed record EdgeSection
{
    [Description("Stitches or rows along the edge."), Range(1, Limits.MostCounted)]
    public int? Count { get; init; }

    [Description("What was counted.")]
    public CountedIn? Of { get; init; }

    [Description("What holds the edge.")]
    public Holding? Hold { get; init; }

    [Description("A mark at every so many stitches or rows of a counted edge, whatever the spacing."), Range(1, Limits.MostCounted)]
    public int? Every { get; init; }

    [Description("Points or scallops, evenly spread between the edge's corners, which are valleys.")]
    public PointsSection? Points { get; init; }

    [Description("Known stitches or rows of a counted edge, in order, where they do not lie evenly."), AtMost(Limits.MostStations)]
    public IReadOnlyList<StationSection>? Stations { get; init; }
}

internal sealed record PointsSection
{
    [Description("How many."), Range(1, Limits.MostEdges)]
    public required int Count { get; init; }

    [Description("How far the finished tips stand out of the line through the valleys.")]
    public required LengthValue Depth { get; init; }

    [Description("How far they stand out unblocked; unless said in the measure of the edge's length.")]
    public LengthValue? UnblockedDepth { get; init; }

    [Description("Straight to a point, or a round scallop; point unless said.")]
    public PointShape? Shape { get; init; }

    [Description("Whether the valleys hang free or have a mark each; free unless said.")]
    public Valleys? Valleys { get; init; }
}

internal sealed record StationSection
{
    [Description("The stitch or row, counted from the edge's first corner."), Range(1, Limits.MostCounted)]
    public required int Stitch { get; init; }

    [Description("How far along the unblocked edge it lies from there.")]
    public LengthValue? At { get; init; }

    [Description("How far along the finished edge it shall lie; evenly unless said.")]
    public LengthValue? Finished { get; init; }
}
