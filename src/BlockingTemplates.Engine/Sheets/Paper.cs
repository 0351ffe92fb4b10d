using BlockingTemplates.Engine.Measure;

namespace BlockingTemplates.Engine.Sheets;

/// <summary>A size of paper.</summary>
/// <param name="Name">Its name, such as A4 or Letter.</param>
/// <param name="Short">Its short side; a roll's width.</param>
/// <param name="Long">Its long side, at least the short one; of a roll the length that is cut off.</param>
public sealed record Paper(string Name, Length Short, Length Long)
{
    /// <summary>The longest page: readers open longer ones blank (14,400 units of 1/72 in, advice of ISO 32000-1, Annex C.2; 5 m here).</summary>
    public static Length MostLength { get; } = Length.FromMillimetres(5000);

    /// <summary>Whether it comes off a roll and is cut as long as needed.</summary>
    public bool IsRoll { get; init; }
}
