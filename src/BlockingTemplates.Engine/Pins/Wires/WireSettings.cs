using BlockingTemplates.Engine.Measure;

namespace BlockingTemplates.Engine.Pins.Wires;

/// <summary>The blocking wires and how they are used.</summary>
/// <param name="Form">What a wire is where its stock does not say otherwise.</param>
/// <param name="Owned">Wires at hand, or null if not said.</param>
/// <param name="Overlap">How far one wire lies beside the next on the same edge.</param>
/// <param name="Every">The wire goes through every so manieth stitch or row, at least 1.</param>
public sealed record WireSettings(WireForm Form, IReadOnlyList<WireStock>? Owned, Length Overlap, int Every)
{
    /// <summary>How far a wire stands out beyond the end of its edge, so that it cannot slip in: 1 cm (common practice).</summary>
    public static Length StandsOut { get; } = Length.FromCentimetres(1);

    /// <summary>The length of wire that is bought where none is owned: 90 cm (common practice).</summary>
    public static Length UsualLength { get; } = Length.FromCentimetres(90);

    /// <summary>Stiff wires of 1.5 mm through every stitch, 5 cm over each other (common practice).</summary>
    public static WireSettings Default { get; } = new(new(WireKind.Stiff, WireForm.UsualStiff), null, Length.FromCentimetres(5), 1);

    /// <summary>What wires there are to choose from: those owned, else the form of the settings.</summary>
    public IReadOnlyList<WireForm> Forms => Owned is { Count: > 0 } owned ? [.. owned.Select(o => o.Form).Distinct()] : [Form];
}
