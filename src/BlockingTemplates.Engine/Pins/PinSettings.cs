using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Pins.Combs;
using BlockingTemplates.Engine.Pins.Wires;

namespace BlockingTemplates.Engine.Pins;

/// <summary>How the maker wants the edge pinned.</summary>
/// <param name="Scallop">Greatest distance of the free edge from the pinned outline between neighbouring pins, above 0.</param>
/// <param name="Spacing">Distance between neighbouring pins that the maker asks for, or null: <see cref="UsualSpacing"/> until the cloth decides.</param>
/// <param name="MinSpacing">Least distance between neighbouring pins, above 0.</param>
/// <param name="MaxSpacing">Greatest distance between neighbouring pins, at least the least one, or null for no cap.</param>
/// <param name="Anchor">A corner's name, an edge's name, <c>middle of EDGE</c> or <see cref="NoAnchor"/>, spelled as the piece spells it; null if not said.</param>
/// <param name="Owned">Pins at hand, or null if not said.</param>
public sealed record PinSettings(
    Length Scallop,
    Length? Spacing,
    Length MinSpacing,
    Length? MaxSpacing,
    string? Anchor,
    int? Owned)
{
    /// <summary>How <see cref="Anchor"/> says that there is none.</summary>
    public const string NoAnchor = "none";

    /// <summary>How <see cref="Anchor"/> begins where it is the middle of an edge; the edge's name follows.</summary>
    public const string MiddleOf = "middle of ";

    /// <summary>The blocking wires, for edges held by them.</summary>
    public WireSettings Wires { get; init; } = WireSettings.Default;

    /// <summary>The comb pins, for edges held by them.</summary>
    public CombSettings Combs { get; init; } = CombSettings.Default;

    /// <summary>The distance between neighbouring pins where the maker asks for none: 5 cm (common practice).</summary>
    public static Length UsualSpacing { get; } = Length.FromCentimetres(5);

    /// <summary>Width of a stitch where neither count nor size is said: 5 mm (common practice).</summary>
    public static Length StitchUnsaid { get; } = Length.FromMillimetres(5);

    /// <summary>Scallop of 5 mm, pins at least 1.5 cm and at most 8 cm apart.</summary>
    public static PinSettings Default { get; } = new(
        Length.FromCentimetres(0.5), null, Length.FromCentimetres(1.5), Length.FromCentimetres(8), null, null);
}
