using BlockingTemplates.Engine.Measure;

namespace BlockingTemplates.Engine.Fabrics;

/// <summary>What the maker said of the cloth.</summary>
/// <param name="Kind">The kind of cloth, or null if not said.</param>
/// <param name="Fibre">Its fibre, the most delicate one under the maker's name where the catalogue has it not, or null if not said.</param>
/// <param name="GrainDegrees">Degrees from x to the rows, counter-clockwise, in the unblocked outline.</param>
/// <param name="Stitch">Unblocked size of one stitch, along and across the rows, or null if not said.</param>
/// <param name="Measured">How the piece was when measured, or null if not said.</param>
/// <param name="SpringBack">How much more it is pinned than it keeps.</param>
public sealed record FabricSettings(
    FabricKind? Kind,
    Fibre? Fibre,
    double GrainDegrees,
    (Length Along, Length Across)? Stitch,
    Dampness? Measured,
    SpringBack SpringBack)
{
    /// <summary>How the cloth changes from dry to wet, or null if not said.</summary>
    public WetChange? WetChange { get; init; }

    /// <summary>A swatch measured before and after blocking, or null.</summary>
    public Swatch? Swatch { get; init; }

    /// <summary>Three damp strips pulled by a weight, such as cloth can have, or null.</summary>
    public StripTest? Strips { get; init; }

    /// <summary>Nothing said.</summary>
    public static FabricSettings Unsaid { get; } = new(null, null, 0, null, null, default);
}
