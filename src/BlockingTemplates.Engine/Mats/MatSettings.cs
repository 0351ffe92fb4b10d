using BlockingTemplates.Engine.Measure;

namespace BlockingTemplates.Engine.Mats;

/// <summary>The mats a maker has and how they are used.</summary>
/// <param name="Width">Pitch along x before any turn: what one more mat adds to a joined row.</param>
/// <param name="Height">Pitch along y before any turn.</param>
/// <param name="Border">Mat wanted outside the pinned outline, at least 0.</param>
/// <param name="SeamClearance">How far a pin should stay from a seam, at least 0.</param>
/// <param name="Turns">Allowed turns of the mats, in degrees: 0, 90 or both.</param>
/// <param name="Owned">Mats at hand, or null if not said.</param>
public sealed record MatSettings(
    Length Width,
    Length Height,
    Length Border,
    Length SeamClearance,
    IReadOnlyList<int> Turns,
    int? Owned)
{
    /// <summary>Square mats of 30 cm, 5 cm border, 8 mm from seams, both turns.</summary>
    public static MatSettings Default { get; } = new(
        Length.FromCentimetres(30), Length.FromCentimetres(30), Length.FromCentimetres(5), Length.FromCentimetres(0.8), [0, 90], null);
}
