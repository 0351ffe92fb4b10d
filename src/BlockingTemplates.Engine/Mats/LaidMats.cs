using System.Globalization;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Mats;

/// <summary>Mats laid on a lattice, and the seams between them.</summary>
internal sealed class LaidMats
{
    /// <summary>A mark this much short of the clearance is not near: rounding only.</summary>
    public const double RoundingMm = 1e-6;

    private readonly HashSet<Cell> _cells;
    private readonly Point _at;

    /// <summary>Mats by their cells, counted from the lower left of their box.</summary>
    /// <param name="cells">The cells; columns and rows from 0.</param>
    /// <param name="at">Lower left of the box.</param>
    /// <param name="pitchX">Pitch along x.</param>
    /// <param name="pitchY">Pitch along y.</param>
    public LaidMats(IEnumerable<Cell> cells, Point at, double pitchX, double pitchY)
    {
        (_at, PitchX, PitchY) = (at, pitchX, pitchY);
        Cells = [.. cells.OrderBy(c => c.Row).ThenBy(c => c.Column)];
        _cells = [.. Cells];
        Columns = Cells.Max(c => c.Column) + 1;
        Rows = Cells.Max(c => c.Row) + 1;
        Seams = [.. Cells.SelectMany(SeamsAfter)];
    }

    public double PitchX { get; }

    public double PitchY { get; }

    public int Columns { get; }

    public int Rows { get; }

    /// <summary>The cells by row, then by column.</summary>
    public IReadOnlyList<Cell> Cells { get; }

    /// <summary>Seams by their first mat, the upright one before the level one.</summary>
    public IReadOnlyList<Seam> Seams { get; }

    /// <summary>Column letters A to Z, AA to AZ and so on, and row number from 1.</summary>
    public static string Name(Cell cell)
    {
        var letters = "";
        for (var left = cell.Column + 1; left > 0; left = (left - 1) / 26)
            letters = (char)('A' + ((left - 1) % 26)) + letters;
        return string.Create(CultureInfo.InvariantCulture, $"{letters}{cell.Row + 1}");
    }

    /// <summary>Lower left of a cell.</summary>
    public Point Corner(Cell cell) => new(_at.X + (cell.Column * PitchX), _at.Y + (cell.Row * PitchY));

    /// <summary>The mat under a point; for a point beside all mats, the nearest one.</summary>
    public Cell Under(Point p)
    {
        var own = new Cell(
            (int)Math.Floor((p.X - _at.X + RoundingMm) / PitchX),
            (int)Math.Floor((p.Y - _at.Y + RoundingMm) / PitchY));
        return _cells.Contains(own) ? own : Cells.MinBy(c => DistanceTo(c, p));
    }

    /// <summary>Distance of a point from the nearest seam; infinite where there is none.</summary>
    public double SeamDistance(Point p) => Seams.Count == 0 ? double.PositiveInfinity : Seams.Min(s => s.DistanceTo(p));

    /// <summary>Whether a point stands nearer to a seam than the clearance.</summary>
    public static bool IsNear(double seamDistance, double clearance) => seamDistance < clearance - RoundingMm;

    private double DistanceTo(Cell cell, Point p)
    {
        var corner = Corner(cell);
        return new Vector(
            Math.Max(0, Math.Max(corner.X - p.X, p.X - corner.X - PitchX)),
            Math.Max(0, Math.Max(corner.Y - p.Y, p.Y - corner.Y - PitchY))).Length;
    }

    private IEnumerable<Seam> SeamsAfter(Cell cell)
    {
        var (right, above) = (new Cell(cell.Column + 1, cell.Row), new Cell(cell.Column, cell.Row + 1));
        var end = Corner(new(cell.Column + 1, cell.Row + 1));
        if (_cells.Contains(right))
            yield return new(cell, right, Corner(right), end);
        if (_cells.Contains(above))
            yield return new(cell, above, Corner(above), end);
    }
}
