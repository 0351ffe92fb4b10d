using BlockingTemplates.Engine.Measure;

namespace BlockingTemplates.Engine.Sheets;

/// <summary>What the maker's printer makes of the printer check's bars, and how the guide makes up for it.</summary>
/// <param name="AlongShort">Printed length over true length along the paper's short side.</param>
/// <param name="AlongLong">Printed length over true length along the paper's long side.</param>
public sealed record PrinterCheck(double AlongShort, double AlongLong)
{
    private const double FittedLeast = 0.02;
    private const double FittedMost = 0.08;
    private const double SameFactor = 0.005;
    private const double MostOff = 0.03;

    /// <summary>A printer that prints true.</summary>
    public static PrinterCheck True { get; } = new(1, 1);

    /// <summary>A paper as large as its print comes out of the printer: lengths of the frame are true ones.</summary>
    public Paper Printed(Paper paper)
    {
        ArgumentNullException.ThrowIfNull(paper);
        return paper with
        {
            Short = Length.FromMillimetres(paper.Short.Millimetres * AlongShort),
            Long = Length.FromMillimetres(paper.Long.Millimetres * AlongLong),
        };
    }

    /// <summary>The check of a paper from what its two bars measured, or null after adding a problem.</summary>
    /// <remarks>
    /// Both 2 to 8 % short by the same factor (within 0.5 %): set to fit the page, a note and no correction. More than
    /// 3 % off otherwise: a problem. Else each paper side is made up for by itself.
    /// </remarks>
    public static PrinterCheck? Of(Paper paper, (Length Short, Length Long)? measured, Findings findings)
    {
        ArgumentNullException.ThrowIfNull(findings);
        if (measured is not { } said)
            return True;
        var bars = CheckBars.Of(paper);
        var check = new PrinterCheck(said.Short.Millimetres / bars.ShortMm, said.Long.Millimetres / bars.LongMm);
        double shortBy = 1 - check.AlongShort, longBy = 1 - check.AlongLong;
        if (shortBy is >= FittedLeast and <= FittedMost && longBy is >= FittedLeast and <= FittedMost && Math.Abs(shortBy - longBy) <= SameFactor)
        {
            findings.Note("sheets.measured", FormattableString.Invariant($"Both bars of the printer check came out {100 * (shortBy + longBy) / 2:0.0} % short: the printer is set to fit the page. The guide is not corrected for that."), "Choose \"actual size\" or 100 % in the print dialogue, print the check again and write what it measures then.");
            return True;
        }

        if (Math.Abs(shortBy) <= MostOff && Math.Abs(longBy) <= MostOff)
            return check;
        findings.Problem("sheets.measured", FormattableString.Invariant($"The printer check's bars should be {bars.ShortMm:0.#} mm and {bars.LongMm:0.#} mm but measured {said.Short.Millimetres:0.#} mm and {said.Long.Millimetres:0.#} mm: more than 3 % off."), "Print the check page at actual size and measure again; first the bar along the paper's short side, then the one along its long side.");
        return null;
    }
}
