using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Fabrics;

/// <summary>Points sorted into square cells, to find those near a place.</summary>
internal sealed class PointGrid
{
    private readonly IReadOnlyList<Point> _points;
    private readonly double _cell;
    private readonly Box _box;
    private readonly int _columns;
    private readonly int[] _start;
    private readonly int[] _index;

    /// <summary>Sorts points into cells of a width, or wider where there would be many more cells than points.</summary>
    internal PointGrid(IReadOnlyList<Point> points, double cellMm)
    {
        _points = points;
        _box = Box.Around(points);
        _cell = Math.Max(cellMm, Math.Max(_box.Width, _box.Height) / (2 * Math.Sqrt(points.Count) + 1));
        _columns = (int)(_box.Width / _cell) + 1;
        var rows = (int)(_box.Height / _cell) + 1;
        _start = new int[(_columns * rows) + 1];
        foreach (var p in points)
            _start[Cell(p) + 1]++;
        for (var c = 1; c < _start.Length; c++)
            _start[c] += _start[c - 1];
        _index = new int[points.Count];
        var next = _start[..^1];
        for (var i = 0; i < points.Count; i++)
            _index[next[Cell(points[i])]++] = i;
    }

    /// <summary>Numbers of the points nearer than a distance.</summary>
    internal IEnumerable<int> Within(Point centre, double distance)
    {
        var (left, right) = (Column(centre.X - distance - _box.Left), Column(centre.X + distance - _box.Left));
        var rows = (_start.Length - 1) / _columns;
        var lower = Math.Clamp((int)((centre.Y - distance - _box.Lower) / _cell), 0, rows - 1);
        var upper = Math.Clamp((int)((centre.Y + distance - _box.Lower) / _cell), 0, rows - 1);
        for (var r = lower; r <= upper; r++)
        {
            for (var k = _start[(r * _columns) + left]; k < _start[(r * _columns) + right + 1]; k++)
            {
                if (_points[_index[k]].DistanceTo(centre) < distance)
                    yield return _index[k];
            }
        }
    }

    private int Column(double x) => Math.Clamp((int)(x / _cell), 0, _columns - 1);

    private int Cell(Point p) => ((int)((p.Y - _box.Lower) / _cell) * _columns) + (int)((p.X - _box.Left) / _cell);
}
