using BlockingTemplates.Engine.Fabrics;
using BlockingTemplates.Engine.Mats;
using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Pins;
using BlockingTemplates.Engine.Sheets;

namespace BlockingTemplates.Engine.Projects;

/// <summary>A project file as read, with the defaults where it says nothing. Immutable.</summary>
public sealed record Project
{
    /// <summary>Its title, in one line; empty if not said.</summary>
    public string Title { get; init; } = "";

    /// <summary>The units the maker reads and writes.</summary>
    public LengthUnit Units { get; init; }

    /// <summary>The kind of piece.</summary>
    public required PieceKind Kind { get; init; }

    /// <summary>The side that is up while the piece dries.</summary>
    public WorkSide FaceUp { get; init; }

    /// <summary>The side that was up when it was measured.</summary>
    public WorkSide MeasuredFaceUp { get; init; }

    /// <summary>Whether left and right measurements are averaged.</summary>
    public bool EvenOut { get; init; }

    /// <summary>Names of a mirrored pair, the one that was measured first; null where there is one piece.</summary>
    public PairNames? Pair { get; init; }

    /// <summary>The name of its size, where the file lists several; else empty.</summary>
    public string Size { get; init; } = "";

    /// <summary>Which of a pair it is; else empty.</summary>
    public string PieceName { get; init; } = "";

    /// <summary>Whether the piece is the mirror image of what is measured here.</summary>
    public bool IsMirrored { get; init; }

    /// <summary>Size and piece in words, such as "size M, left front"; empty where there is one plan.</summary>
    public string Part => string.Join(", ", new[] { Size.Length > 0 ? $"size {Size}" : "", PieceName }.Where(w => w.Length > 0));

    /// <summary>The finished measurements.</summary>
    public required Measurements Finished { get; init; }

    /// <summary>The unblocked measurements, or null where the file has none.</summary>
    public Measurements? Unblocked { get; init; }

    /// <summary>What was said of single edges, by the edge's name.</summary>
    public IReadOnlyDictionary<string, EdgeTreatment> Edges { get; init; } = new Dictionary<string, EdgeTreatment>();

    /// <summary>What was said of the cloth.</summary>
    public FabricSettings Fabric { get; init; } = FabricSettings.Unsaid;

    /// <summary>How the edge is pinned.</summary>
    public PinSettings Pins { get; init; } = PinSettings.Default;

    /// <summary>The mats.</summary>
    public MatSettings Mats { get; init; } = MatSettings.Default;

    /// <summary>The sheets.</summary>
    public required SheetSettings Sheets { get; init; }

    /// <summary>How the shape is set.</summary>
    public SetSettings Set { get; init; } = SetSettings.Unsaid;

    /// <summary>The maker's own text for the cover, lines apart by \n; empty if not said.</summary>
    public string Notes { get; init; } = "";

    /// <summary>Time after which the computation of the cloth ends with the best so far, or null for none.</summary>
    public TimeSpan? TimeLimit { get; init; }

    /// <summary>What was said of an edge, or that nothing was.</summary>
    public EdgeTreatment Treatment(string edge) => Edges.GetValueOrDefault(edge, EdgeTreatment.Unsaid);
}
