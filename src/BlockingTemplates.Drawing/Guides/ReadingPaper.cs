using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Sheets;

namespace BlockingTemplates.Drawing.Guides;

/// <summary>The paper that is read at a table: cover, maps, tables and strips go on A4 or Letter whatever the sheets are.</summary>
public static class ReadingPaper
{
    private static readonly Paper A4 = new("A4", Length.FromMillimetres(210), Length.FromMillimetres(297));
    private static readonly Paper Letter = new("Letter", Length.FromInches(8.5), Length.FromInches(11));

    /// <summary>Letter for papers sized in whole quarter inches, A4 for all others.</summary>
    public static Paper For(Paper paper)
    {
        ArgumentNullException.ThrowIfNull(paper);
        return IsInInches(paper.Short) && IsInInches(paper.Long) ? Letter : A4;
    }

    private static bool IsInInches(Length side) => Math.Abs((4 * side.Inches) - Math.Round(4 * side.Inches)) < 1e-6;
}
