using BlockingTemplates.Engine.Measure;

namespace BlockingTemplates.Engine.Sheets;

/// <summary>How the guide is printed.</summary>
/// <param name="Papers">The papers asked for; one guide each.</param>
/// <param name="Margin">Unprinted margin on all four sides, at least 0.</param>
/// <param name="Overlap">How far one sheet lies over the next, at least 0.</param>
/// <param name="Use">How the taped guide is used.</param>
/// <param name="Measured">What the printer check's 150 mm and 240 mm bars measured, along the paper's short and long side, or null.</param>
public sealed record SheetSettings(
    IReadOnlyList<Paper> Papers,
    Length Margin,
    Length Overlap,
    GuideUse Use,
    (Length Short, Length Long)? Measured)
{
    /// <summary>Whether only one half of a symmetric piece is printed, to be turned over for the other.</summary>
    public bool Half { get; init; }

    /// <summary>Whether sheets are printed that show neither a mark nor the outline: the whole box of the page grid.</summary>
    public bool All { get; init; }
}
