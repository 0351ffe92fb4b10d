using BlockingTemplates.Engine.Measure;

namespace BlockingTemplates.Engine.Pins.Combs;

/// <summary>The comb pins: several prongs on one bar.</summary>
/// <param name="Prongs">Prongs of one comb, at least 2.</param>
/// <param name="Length">From its first prong to its last, above 0.</param>
/// <param name="Owned">Combs at hand, or null if not said.</param>
public sealed record CombSettings(int Prongs, Length Length, int? Owned)
{
    /// <summary>Eight prongs over 9 cm (common practice).</summary>
    public static CombSettings Default { get; } = new(8, Length.FromCentimetres(9), null);
}
