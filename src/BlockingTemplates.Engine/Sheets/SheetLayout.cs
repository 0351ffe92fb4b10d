using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Sheets;

/// <summary>The sheets of one guide and how they lie over each other once taped. Immutable.</summary>
/// <remarks>
/// Sheets are taped in the order of their names, row by row from the lower left. Each is trimmed at its cut line (the left
/// or lower side of its own window) where it has a neighbour there, and laid over that neighbour; sides that are not
/// trimmed keep their margin, and may cover a sheet taped earlier.
/// </remarks>
public sealed record SheetLayout
{
    private readonly Sheet?[,] _places;

    /// <summary>Sheets of one page grid, each row and column once; at least one.</summary>
    public SheetLayout(
        Paper paper, bool landscape, IReadOnlyList<Sheet> sheets, double pitchX, double pitchY, double overlap, double margin)
    {
        ArgumentNullException.ThrowIfNull(sheets);
        (Paper, Landscape, PitchX, PitchY, Overlap, Margin) = (paper, landscape, pitchX, pitchY, overlap, margin);
        Sheet[] inOrder = [.. sheets];
        Array.Sort(inOrder, (a, b) => (a.Row, a.Column).CompareTo((b.Row, b.Column)));
        Sheets = inOrder;
        _places = new Sheet?[Sheets[^1].Row, Sheets.Max(s => s.Column)];
        foreach (var sheet in inOrder)
            _places[sheet.Row - 1, sheet.Column - 1] = sheet;
        JoiningCount = Sheets.Count(s => s.Joining);
    }

    /// <summary>The paper.</summary>
    public Paper Paper { get; }

    /// <summary>Whether the paper's long side runs along x.</summary>
    public bool Landscape { get; }

    /// <summary>All sheets, joining ones included, in the order of taping.</summary>
    public IReadOnlyList<Sheet> Sheets { get; }

    /// <summary>How many of them are printed only to join others.</summary>
    public int JoiningCount { get; }

    /// <summary>Width of an own window, in millimetres.</summary>
    public double PitchX { get; }

    /// <summary>Height of an own window, in millimetres.</summary>
    public double PitchY { get; }

    /// <summary>How far the print runs past the own window on the right and upper side, in millimetres.</summary>
    public double Overlap { get; }

    /// <summary>Unprinted margin on all sides, in millimetres.</summary>
    public double Margin { get; }

    /// <summary>The sheet of a row and column, from 1, or null.</summary>
    public Sheet? At(int row, int column) =>
        row >= 1 && row <= _places.GetLength(0) && column >= 1 && column <= _places.GetLength(1) ? _places[row - 1, column - 1] : null;

    /// <summary>What is printed: the own window and the overlap on its right and upper side.</summary>
    public Box PrintedBox(Sheet sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        var w = sheet.Window;
        return new(w.Left, w.Lower, w.Right + Overlap, w.Upper + Overlap);
    }

    /// <summary>The paper after trimming.</summary>
    public Box PaperBox(Sheet sheet)
    {
        var print = PrintedBox(sheet);
        return new(
            print.Left - (At(sheet.Row, sheet.Column - 1) is null ? Margin : 0),
            print.Lower - (At(sheet.Row - 1, sheet.Column) is null ? Margin : 0),
            print.Right + Margin,
            print.Upper + Margin);
    }

    /// <summary>Whether a box can be seen whole on a sheet of the taped guide: printed, and under no sheet taped later.</summary>
    public bool ShowsWhole(Sheet sheet, Box box)
    {
        if (!PrintedBox(sheet).Grown(PageGrid.OnLineMm).Holds(box))
            return false;
        var seen = box.Grown(-PageGrid.OnLineMm);
        var (beside, above) = (Reach(Overlap + Margin, PitchX), Reach(Overlap + Margin, PitchY));
        for (var row = sheet.Row; row <= sheet.Row + above; row++)
        {
            for (var column = row == sheet.Row ? sheet.Column + 1 : sheet.Column - beside; column <= sheet.Column + beside; column++)
            {
                if (At(row, column) is { } later && PaperBox(later).Overlaps(seen))
                    return false;
            }
        }

        return true;
    }

    /// <summary>The first sheet, in the order of taping, that shows a box whole, or null.</summary>
    public Sheet? SheetHolding(Box box)
    {
        // Prints run past their window to the right and up, so the sheets in question lie to the left and below.
        var (ownRow, ownColumn) = PlaceOf(new(box.Left, box.Lower));
        for (var row = ownRow - Reach(Overlap, PitchY); row <= ownRow; row++)
        {
            for (var column = ownColumn - Reach(Overlap, PitchX); column <= ownColumn; column++)
            {
                if (At(row, column) is { } sheet && ShowsWhole(sheet, box))
                    return sheet;
            }
        }

        return null;
    }

    /// <summary>The sheet whose own window holds a place, or null where none is printed.</summary>
    public Sheet? Owner(Point place)
    {
        var (row, column) = PlaceOf(place);
        return At(row, column);
    }

    /// <summary>The sheets whose print holds a place, in the order of taping.</summary>
    public IReadOnlyList<Sheet> SheetsShowing(Point place)
    {
        var (ownRow, ownColumn) = PlaceOf(place);
        var showing = new List<Sheet>(4);
        for (var row = ownRow - Reach(Overlap, PitchY); row <= ownRow; row++)
        {
            for (var column = ownColumn - Reach(Overlap, PitchX); column <= ownColumn; column++)
            {
                if (At(row, column) is { } sheet && PrintedBox(sheet).Grown(PageGrid.OnLineMm).Holds(place))
                    showing.Add(sheet);
            }
        }

        return showing;
    }

    /// <summary>Over how many windows a length may run from the end of one.</summary>
    private static int Reach(double length, double pitch) => (int)Math.Ceiling((length + PageGrid.OnLineMm) / pitch);

    private (int Row, int Column) PlaceOf(Point place)
    {
        var known = Sheets[0];
        var past = place - new Point(known.Window.Left - PageGrid.OnLineMm, known.Window.Lower - PageGrid.OnLineMm);
        return (known.Row + (int)Math.Floor(past.Y / PitchY), known.Column + (int)Math.Floor(past.X / PitchX));
    }
}
