using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Sheets;

/// <summary>The full-size guide on one paper. Immutable.</summary>
/// <param name="Paper">The paper as sold; the layout's own paper is as large as it comes out of the maker's printer.</param>
/// <param name="Check">What the printer makes of lengths.</param>
/// <param name="Layout">The sheets, in true millimetres of the frame.</param>
/// <param name="Crosses">Middles of the crosses on the cut lines.</param>
/// <param name="Numbers">Where the printed numbers stand, in their order.</param>
/// <param name="CutLine">The line along which the inside is cut away, or null where it is not.</param>
/// <param name="Half">The half that is printed, or null for the whole.</param>
public sealed record Guide(
    Paper Paper,
    PrinterCheck Check,
    SheetLayout Layout,
    IReadOnlyList<Point> Crosses,
    IReadOnlyList<NumberPlace> Numbers,
    IReadOnlyList<Point>? CutLine,
    HalfGuide? Half)
{
    /// <summary>Sheets that show a mark or a stretch of the outline by themselves.</summary>
    public int Count => Layout.Sheets.Count - Layout.JoiningCount;

    /// <summary>Where a mark's number stands; on half a guide, its own place or its partner's.</summary>
    public NumberPlace PlaceOf(int number) => Numbers.FirstOrDefault(n => n.Number == number) ?? Numbers.First(n => n.Partner == number);
}
