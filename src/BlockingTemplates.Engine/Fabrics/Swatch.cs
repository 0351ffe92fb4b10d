using BlockingTemplates.Engine.Measure;

namespace BlockingTemplates.Engine.Fabrics;

/// <summary>A swatch measured along and across the rows.</summary>
/// <param name="Before">As it came off the needles or hook, above 0.</param>
/// <param name="After">Once dry and unpinned, above 0.</param>
/// <param name="Pinned">While pinned, where that was measured.</param>
public sealed record Swatch((Length Along, Length Across) Before, (Length Along, Length Across) After, (Length Along, Length Across)? Pinned)
{
    /// <summary>The stretch it took: pinned where that was measured, else after.</summary>
    public TakenStretch Took => new(
        ((Pinned ?? After).Along.Millimetres / Before.Along.Millimetres) - 1,
        ((Pinned ?? After).Across.Millimetres / Before.Across.Millimetres) - 1);
}
