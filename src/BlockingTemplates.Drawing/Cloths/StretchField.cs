using BlockingTemplates.Engine.Pins.Settling;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Drawing.Cloths;

/// <summary>A stretch at every place: between the middles of cells by their share, beyond the cloth as at its nearest cells.</summary>
internal sealed class StretchField
{
    private readonly double[,] _values;
    private readonly Point _origin;
    private readonly double _cellMm;

    /// <summary>A field of one value of the cells.</summary>
    /// <param name="map">The map, with a cell at least.</param>
    /// <param name="value">Which value.</param>
    public StretchField(StretchMap map, Func<StretchCell, double> value)
    {
        _cellMm = map.CellMm;
        var first = map.Cells[0];
        // Of the middle of the cell left of and below all others, so that there is a cell beyond the cloth on every side.
        _origin = first.At - new Vector((first.Column + 1) * _cellMm, (first.Row + 1) * _cellMm);
        var (columns, rows) = (map.Cells.Max(c => c.Column) + 3, map.Cells.Max(c => c.Row) + 3);
        _values = new double[columns, rows];
        var known = new bool[columns, rows];
        foreach (var cell in map.Cells)
        {
            _values[cell.Column + 1, cell.Row + 1] = value(cell);
            known[cell.Column + 1, cell.Row + 1] = true;
        }

        Spread(known);
    }

    /// <summary>The value at a place of the frame.</summary>
    public double At(Point p)
    {
        var (u, v) = ((p.X - _origin.X) / _cellMm, (p.Y - _origin.Y) / _cellMm);
        var (i, j) = (Math.Clamp((int)Math.Floor(u), 0, _values.GetLength(0) - 2), Math.Clamp((int)Math.Floor(v), 0, _values.GetLength(1) - 2));
        var (s, t) = (Math.Clamp(u - i, 0, 1), Math.Clamp(v - j, 0, 1));
        return ((1 - t) * (((1 - s) * _values[i, j]) + (s * _values[i + 1, j]))) + (t * (((1 - s) * _values[i, j + 1]) + (s * _values[i + 1, j + 1])));
    }

    /// <summary>Fills the cells beyond the cloth with the mean of their known neighbours, ring by ring.</summary>
    private void Spread(bool[,] known)
    {
        var (columns, rows) = (_values.GetLength(0), _values.GetLength(1));
        var isMissing = true;
        while (isMissing)
        {
            isMissing = false;
            List<(int I, int J, double Value)> found = [];
            for (var i = 0; i < columns; i++)
            {
                for (var j = 0; j < rows; j++)
                {
                    if (known[i, j])
                        continue;
                    isMissing = true;
                    var near = from a in new[] { i - 1, i, i + 1 } from b in new[] { j - 1, j, j + 1 } where a >= 0 && a < columns && b >= 0 && b < rows && known[a, b] select _values[a, b];
                    if (near.Any())
                        found.Add((i, j, near.Average()));
                }
            }

            foreach (var (i, j, value) in found)
                (_values[i, j], known[i, j]) = (value, true);
        }
    }
}
