namespace BlockingTemplates.Engine.Shapes;

/// <summary>How many cells of a lattice a shape meets, for every shift of the lattice by whole millimetres. Immutable.</summary>
/// <remarks>
/// Shifts run from 0 up to but not including the pitch, also where the pitch is no whole number of millimetres; with
/// shift 0 a corner of the lattice stands at the origin. Method: for one shift along x and one column, a cell is met
/// exactly when its lower side lies above the lower end of a stretch of the column's shadow less the pitch and not above
/// its upper end. Those ranges of lower sides, joined where they overlap, give the column's count as a step function of
/// the shift along y, added up for all columns.
/// </remarks>
public sealed class LatticeCover
{
    /// <summary>What is taken off stretches that several shifts have in common, so that rounding never adds a cell, in millimetres.</summary>
    private const double RoundingMm = 1e-6;

    private readonly int _together;
    private readonly Extent[][][] _starts;
    private readonly int[] _firstColumn;
    private readonly int[] _counts;

    /// <summary>Counts for every shift.</summary>
    /// <param name="shape">The shape.</param>
    /// <param name="origin">Where a corner of the lattice stands with no shift.</param>
    /// <param name="pitchX">Width of a cell, in millimetres, above 0.</param>
    /// <param name="pitchY">Height of a cell, in millimetres, above 0.</param>
    public LatticeCover(Shadow shape, Point origin, double pitchX, double pitchY)
        : this(shape, origin, pitchX, pitchY, 1)
    {
    }

    /// <summary>Counts for every shift along y and so many shifts along x together, by what their columns have in common.</summary>
    private LatticeCover(Shadow shape, Point origin, double pitchX, double pitchY, int together)
    {
        ArgumentNullException.ThrowIfNull(shape);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(pitchX);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(pitchY);
        (Origin, PitchX, PitchY) = (origin, pitchX, pitchY);
        _together = together;
        (ShiftsX, ShiftsY) = ((WholeShifts(pitchX) + together - 1) / together, WholeShifts(pitchY));
        _starts = new Extent[ShiftsX][][];
        _firstColumn = new int[ShiftsX];
        _counts = new int[ShiftsX * ShiftsY];
        var heights = new List<Extent>();
        var steps = new int[ShiftsY + 2];
        for (var x = 0; x < ShiftsX; x++)
        {
            FindStarts(shape, x, heights);
            CountRow(x, steps);
        }

        Least = _counts.Min();
    }

    /// <summary>Where a corner stands with no shift.</summary>
    public Point Origin { get; }

    /// <summary>Width of a cell, in millimetres.</summary>
    public double PitchX { get; }

    /// <summary>Height of a cell, in millimetres.</summary>
    public double PitchY { get; }

    /// <summary>Number of shifts along x: 0 to one less.</summary>
    public int ShiftsX { get; }

    /// <summary>Number of shifts along y: 0 to one less.</summary>
    public int ShiftsY { get; }

    /// <summary>The least count of all shifts.</summary>
    public int Least { get; }

    /// <summary>Cells met under a shift.</summary>
    public int Count(int shiftX, int shiftY) => _counts[(shiftX * ShiftsY) + shiftY];

    /// <summary>A count that no shift stays under, found many times quicker than the least one.</summary>
    /// <remarks>
    /// Shifts along x are taken several together: a cell whose part common to all of them meets the shape is met under each.
    /// </remarks>
    /// <param name="shape">The shape.</param>
    /// <param name="origin">Where a corner of the lattice stands with no shift.</param>
    /// <param name="pitchX">Width of a cell, in millimetres, above 0.</param>
    /// <param name="pitchY">Height of a cell, in millimetres, above 0.</param>
    /// <param name="together">Shifts along x taken together, at least 1; more are quicker and tell less.</param>
    public static int LowerBound(Shadow shape, Point origin, double pitchX, double pitchY, int together)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(together, 1);
        return together < pitchX ? new LatticeCover(shape, origin, pitchX, pitchY, together).Least : 0;
    }

    /// <summary>All shifts with the least count, by x, then by y.</summary>
    public IEnumerable<(int X, int Y)> LeastShifts() => Shifts(Least);

    /// <summary>All shifts with a count, by x, then by y.</summary>
    public IEnumerable<(int X, int Y)> Shifts(int count)
    {
        for (var i = 0; i < _counts.Length; i++)
        {
            if (_counts[i] == count)
                yield return (i / ShiftsY, i % ShiftsY);
        }
    }

    /// <summary>The least count of the shifts whose box is as wanted and whose count is not above the most, or null.</summary>
    /// <param name="most">The most cells.</param>
    /// <param name="isWanted">Asked with columns and rows of the box of the cells met.</param>
    public int? LeastWhere(int most, Func<int, int, bool> isWanted)
    {
        ArgumentNullException.ThrowIfNull(isWanted);
        int? least = null;
        for (var i = 0; i < _counts.Length; i++)
        {
            if (_counts[i] > most || _counts[i] >= least)
                continue;
            var (columns, rows) = FieldBox(i / ShiftsY, i % ShiftsY);
            if (isWanted(columns, rows))
                least = _counts[i];
        }

        return least;
    }

    /// <summary>Lower left of a cell under a shift.</summary>
    public Point At(int shiftX, int shiftY, Cell cell) =>
        new(Origin.X + shiftX + (cell.Column * PitchX), Origin.Y + shiftY + (cell.Row * PitchY));

    /// <summary>Whether a cell is met under a shift.</summary>
    public bool Meets(int shiftX, int shiftY, Cell cell)
    {
        var columns = _starts[shiftX];
        var column = cell.Column - _firstColumn[shiftX];
        if (column < 0 || column >= columns.Length)
            return false;
        foreach (var start in columns[column])
        {
            if (cell.Row > RowBelow(start.From, shiftY) && cell.Row <= RowBelow(start.To, shiftY))
                return true;
        }

        return false;
    }

    /// <summary>The cells met under a shift, by column, then by row.</summary>
    public IEnumerable<Cell> Cells(int shiftX, int shiftY)
    {
        for (var column = 0; column < _starts[shiftX].Length; column++)
        {
            foreach (var start in _starts[shiftX][column])
            {
                for (var row = RowBelow(start.From, shiftY) + 1; row <= RowBelow(start.To, shiftY); row++)
                    yield return new(_firstColumn[shiftX] + column, row);
            }
        }
    }

    /// <summary>Columns times rows of the box of the cells met under a shift.</summary>
    public int BoxSize(int shiftX, int shiftY)
    {
        var (columns, rows) = FieldBox(shiftX, shiftY);
        return columns * rows;
    }

    /// <summary>Columns and rows of the box of the cells met under a shift.</summary>
    public (int Columns, int Rows) FieldBox(int shiftX, int shiftY)
    {
        var (left, right, lower, upper) = (int.MaxValue, int.MinValue, int.MaxValue, int.MinValue);
        for (var column = 0; column < _starts[shiftX].Length; column++)
        {
            foreach (var start in _starts[shiftX][column])
            {
                var (first, last) = (RowBelow(start.From, shiftY) + 1, RowBelow(start.To, shiftY));
                if (first > last)
                    continue;
                (left, right) = (Math.Min(left, column), column);
                (lower, upper) = (Math.Min(lower, first), Math.Max(upper, last));
            }
        }

        return left > right ? (0, 0) : (right - left + 1, upper - lower + 1);
    }

    private static int WholeShifts(double pitch) => Math.Max(1, (int)Math.Ceiling(pitch - 1e-9));

    /// <summary>The last row whose lower side is not above a height.</summary>
    private int RowBelow(double height, int shiftY) => (int)Math.Floor((height - Origin.Y - shiftY) / PitchY);

    private void FindStarts(Shadow shape, int shiftX, List<Extent> heights)
    {
        var left = Origin.X + (shiftX * _together);
        var first = (int)Math.Floor((shape.Bounds.Left - left) / PitchX);
        var last = (int)Math.Floor((shape.Bounds.Right - left) / PitchX);
        _firstColumn[shiftX] = first;
        _starts[shiftX] = new Extent[last - first + 1][];
        for (var column = first; column <= last; column++)
        {
            heights.Clear();
            shape.AddStrip(left + (column * PitchX) + _together - 1, left + ((column + 1) * PitchX), heights);
            _starts[shiftX][column - first] = Joined(heights);
        }
    }

    private Extent[] Joined(List<Extent> heights)
    {
        if (heights.Count == 0)
            return [];
        heights.Sort((a, b) => a.From.CompareTo(b.From));
        var joined = new List<Extent>(heights.Count);
        foreach (var height in heights)
        {
            var start = _together == 1 ? new Extent(height.From - PitchY, height.To) : new(height.From - PitchY + RoundingMm, height.To - RoundingMm);
            if (start.To < start.From)
                continue;
            if (joined.Count > 0 && start.From <= joined[^1].To)
                joined[^1] = new(joined[^1].From, Math.Max(joined[^1].To, start.To));
            else
                joined.Add(start);
        }

        return [.. joined];
    }

    private void CountRow(int shiftX, int[] steps)
    {
        Array.Clear(steps);
        foreach (var column in _starts[shiftX])
        {
            foreach (var start in column)
            {
                steps[0] += RowBelow(start.To, 0) - RowBelow(start.From, 0);
                steps[FirstShiftAbove(start.From)]++;
                steps[FirstShiftAbove(start.To)]--;
            }
        }

        var count = 0;
        for (var y = 0; y < ShiftsY; y++)
        {
            count += steps[y];
            _counts[(shiftX * ShiftsY) + y] = count;
        }
    }

    /// <summary>The first whole shift that lifts the last row not above a height over it.</summary>
    private int FirstShiftAbove(double height)
    {
        var above = height - Origin.Y - (RowBelow(height, 0) * PitchY);
        return Math.Min((int)Math.Floor(above) + 1, ShiftsY);
    }
}
