using BlockingTemplates.Engine.Measure;

namespace BlockingTemplates.Engine.Mats;

/// <summary>The mats a maker has and how they are used.</summary>
/// <param name="Width">Pitch along x before any turn: what one more mat adds to a joined row.</param>
/// <param name="Height">Pitch along y before any turn.</param>
/// <param name="Border">Mat wanted outside the pinned outline, at least 0.</param>
/// <param name="SeamClearance">How far a pin should stay from a seam, at least 0.</param>
/// <param name="Turns">Allowed turns of the mats under the piece, whole degrees from 0 to 179, counter-clockwise; at least one.</param>
/// <param name="Owned">Mats at hand, or null if not said.</param>
/// <param name="Floor">The floor that the field has to fit on, or null if not said.</param>
public sealed record MatSettings(
    Length Width,
    Length Height,
    Length Border,
    Length SeamClearance,
    IReadOnlyList<int> Turns,
    int? Owned,
    MatFloor? Floor = null)
{
    /// <summary>Mats free to turn: every whole degree, after which they lie as before.</summary>
    public static IReadOnlyList<int> EveryDegree { get; } = [.. Enumerable.Range(0, 180)];

    /// <summary>Square mats of 30 cm, 5 cm border, 8 mm from seams, both turns.</summary>
    public static MatSettings Default { get; } = new(
        Length.FromCentimetres(30), Length.FromCentimetres(30), Length.FromCentimetres(5), Length.FromCentimetres(0.8), [0, 90], null);
}
