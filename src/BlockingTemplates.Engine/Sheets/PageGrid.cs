using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Sheets;

/// <summary>The page grids of one paper that print a piece on the fewest sheets. Immutable.</summary>
/// <remarks>
/// Pitch: paper less two margins less one overlap. A sheet is printed when its own window (a pitch cell with its left and
/// lower side, without its right and upper side) holds a point of the pinned outline, or a mark, or, if given, a point of
/// the cut line. Least over portrait and landscape and shifts of 1 mm; shift 0 puts a corner of the grid at the lower left
/// of the pinned outline's box. Points no further from a line of the grid than <see cref="OnLineMm"/> lie on it.
/// </remarks>
public sealed class PageGrid
{
    /// <summary>How near to a line of the grid a point counts as lying on it, in millimetres.</summary>
    public const double OnLineMm = LineShadow.OnLineMm;

    private readonly Paper _paper;
    private readonly double _margin;
    private readonly double _overlap;
    private readonly Dictionary<bool, LatticeCover> _covers = [];

    private PageGrid(Paper paper, Length margin, Length overlap, Shadow shape, Point corner)
    {
        (_paper, _margin, _overlap) = (paper, margin.Millimetres, overlap.Millimetres);
        foreach (var landscape in paper.Short == paper.Long ? [false] : new[] { false, true })
        {
            var (x, y) = Pitch(paper, landscape, margin, overlap);
            _covers[landscape] = new(shape, corner, x, y);
        }

        Least = _covers.Values.Min(c => c.Least);
        Tied = [.. _covers.Where(c => c.Value.Least == Least)
            .SelectMany(c => c.Value.LeastShifts().Select(s => new PagePlacing(c.Key, s.X, s.Y)))];
    }

    /// <summary>The fewest sheets that print everything, joining sheets not counted.</summary>
    public int Least { get; }

    /// <summary>All ways that need so many: portrait first, then by shift along x, then along y.</summary>
    public IReadOnlyList<PagePlacing> Tied { get; }

    /// <summary>Searches all page grids.</summary>
    /// <param name="paper">The paper; it must be larger than two margins and one overlap, else this throws.</param>
    /// <param name="margin">Unprinted margin on all sides, at least 0.</param>
    /// <param name="overlap">How far one sheet lies over the next, at least 0.</param>
    /// <param name="pinned">The pinned outline as a ring, first point not repeated, in millimetres.</param>
    /// <param name="marks">The marks.</param>
    /// <param name="cutLine">The line along which the inside is cut away, or null.</param>
    /// <param name="all">Whether the sheets inside and outside are printed too: the whole box of the grid.</param>
    public static PageGrid Search(
        Paper paper,
        Length margin,
        Length overlap,
        IReadOnlyList<Point> pinned,
        IReadOnlyList<Point> marks,
        IReadOnlyList<Point>? cutLine = null,
        bool all = false)
    {
        ArgumentNullException.ThrowIfNull(paper);
        ArgumentNullException.ThrowIfNull(pinned);
        var lines = new LineShadow(cutLine is null ? [pinned] : [pinned, cutLine], marks);
        var box = Box.Around(pinned);
        return new(paper, margin, overlap, all ? new BoxShadow(lines.Bounds) : lines, new(box.Left, box.Lower));
    }

    /// <summary>Pitch of the page grid along x and y, in millimetres; not above 0 where margins and overlap leave nothing.</summary>
    public static (double X, double Y) Pitch(Paper paper, bool landscape, Length margin, Length overlap)
    {
        ArgumentNullException.ThrowIfNull(paper);
        var taken = (2 * margin.Millimetres) + overlap.Millimetres;
        var (narrow, wide) = (paper.Short.Millimetres - taken, paper.Long.Millimetres - taken);
        return landscape ? (wide, narrow) : (narrow, wide);
    }

    /// <summary>The best of the tied ways: the lowest score, the first of those that have it.</summary>
    /// <param name="score">
    /// Rates a way, at least 0 and the lower the better; asked for the tied ways alone, in their order, until one has 0.
    /// The first tied way if left out.
    /// </param>
    public PagePlacing Best(Func<PagePlacing, int>? score = null)
    {
        var (best, bestScore) = (Tied[0], int.MaxValue);
        if (score is null)
            return best;
        foreach (var placing in Tied)
        {
            var its = score(placing);
            if (its < bestScore)
                (best, bestScore) = (placing, its);
            if (its <= 0)
                break;
        }

        return best;
    }

    /// <summary>The sheets of a way, with those that join the others.</summary>
    public SheetLayout Layout(PagePlacing placing)
    {
        var cover = _covers[placing.Landscape];
        HashSet<Cell> printed = [.. cover.Cells(placing.ShiftX, placing.ShiftY)];
        var joining = JoiningSheets.Fewest(printed);
        var (firstRow, firstColumn) = (int.MaxValue, int.MaxValue);
        foreach (var (column, row) in printed)
            (firstRow, firstColumn) = (Math.Min(firstRow, row), Math.Min(firstColumn, column));
        var sheets = new List<Sheet>(printed.Count + joining.Count);
        foreach (var cell in printed)
            sheets.Add(SheetOf(cell, false));
        foreach (var cell in joining)
            sheets.Add(SheetOf(cell, true));
        return new(_paper, placing.Landscape, sheets, cover.PitchX, cover.PitchY, _overlap, _margin);

        Sheet SheetOf(Cell cell, bool joins)
        {
            var at = cover.At(placing.ShiftX, placing.ShiftY, cell);
            var window = new Box(at.X, at.Y, at.X + cover.PitchX, at.Y + cover.PitchY);
            return new(cell.Row - firstRow + 1, cell.Column - firstColumn + 1, window, joins);
        }
    }

    /// <summary>A solid box.</summary>
    private sealed class BoxShadow(Box box) : Shadow
    {
        public override Box Bounds => box;

        public override void AddStrip(double left, double right, ICollection<Extent> heights)
        {
            // The lines' bounds are already larger by the tolerance; what lies that far under a line lies on it.
            if (box.Right >= left && box.Left + OnLineMm < right - OnLineMm)
                heights.Add(new(box.Lower + (2 * OnLineMm), box.Upper));
        }
    }
}
