using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Pieces;

/// <summary>The finished or the unblocked size of a piece as the maker gave it: read, not yet judged.</summary>
/// <remarks>
/// Names are as in the file. A measurement that stood in the file but could not be read is missing here and its
/// path stands in <see cref="Unreadable"/>, so that no stage reports it missing a second time.
/// </remarks>
public sealed record Measurements
{
    /// <summary>Where it stands in the file: <c>piece.finished</c> or <c>piece.unblocked</c>.</summary>
    public required string Path { get; init; }

    /// <summary>Which size it is, in a word: finished or unblocked.</summary>
    public string State => Path[(Path.LastIndexOf('.') + 1)..];

    /// <summary>The kind's own measurements by name, such as wingspan and depth.</summary>
    public IReadOnlyDictionary<string, Length> Sizes { get; init; } = new Dictionary<string, Length>();

    /// <summary>Straight tape from corner to corner, by edge.</summary>
    public IReadOnlyDictionary<string, Length> Sides { get; init; } = new Dictionary<string, Length>();

    /// <summary>Greatest distance of an edge from its chord, outward positive, by edge.</summary>
    public IReadOnlyDictionary<string, Length> Bows { get; init; } = new Dictionary<string, Length>();

    /// <summary>Tape laid along the edge itself, by edge.</summary>
    public IReadOnlyDictionary<string, Length> Along { get; init; } = new Dictionary<string, Length>();

    /// <summary>The diagonal of a four-sided piece, or null.</summary>
    public DiagonalEntry? Diagonal { get; init; }

    /// <summary>Corners of a general outline, counter-clockwise, or null.</summary>
    public IReadOnlyList<CornerEntry>? Corners { get; init; }

    /// <summary>Edges of a general outline, edge i from corner i to corner i+1, or null.</summary>
    public IReadOnlyList<EdgeEntry>? Edges { get; init; }

    /// <summary>Lines of a general outline's edges where they were read from a file, one for each corner; or null.</summary>
    public IReadOnlyList<EdgeCurve>? Lines { get; init; }

    /// <summary>Paths of values that stood in the file but could not be read.</summary>
    public IReadOnlySet<string> Unreadable { get; init; } = new HashSet<string>();
}
