using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Sheets;

namespace BlockingTemplates.Drawing.Guides;

/// <summary>The paper that is read at a table: cover, maps, tables and strips go on A4 or Letter whatever the sheets are.</summary>
public static class ReadingPaper
{
    private static readonly Paper A4 = new("A4", Length.FromMillimetres(210), Length.FromMillimetres(297));
    private static readonly Paper Letter = new("Letter", Length.FromInches(8.5), Length.FromInches(11));

    /// <summary>The guide's own paper if it is one of the two; else Letter for makers who read inches, A4 for all others.</summary>
    public static Paper For(Paper paper, LengthUnit units)
    {
        ArgumentNullException.ThrowIfNull(paper);
        if (paper.Name == A4.Name || paper.Name == Letter.Name)
            return paper;
        return units == LengthUnit.Inches ? Letter : A4;
    }
}
