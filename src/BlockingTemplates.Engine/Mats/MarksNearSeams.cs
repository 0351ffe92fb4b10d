using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Mats;

/// <summary>Counts the marks near seams, for many shifts of one lattice.</summary>
/// <remarks>
/// A mark is near a seam when it is near a line of the lattice and there are mats on both sides of it: on its own side,
/// and on the other. (The seams of other mats are never nearer than the nearest seam of its own, as long as the clearance
/// is less than the mats' shorter side.) Which marks are near upright lines depends on the shift along x alone, near level
/// lines on the shift along y alone: both lists are made once for each shift.
/// </remarks>
internal sealed class MarksNearSeams
{
    private readonly LatticeCover _cover;
    private readonly IReadOnlyList<Point> _marks;
    private readonly double _clearance;
    private readonly int[][] _columns;
    private readonly int[][] _rows;
    private readonly List<(int Mark, int Beside)>[] _nearUpright;
    private readonly List<(int Mark, int Beside)>[] _nearLevel;
    private readonly int[] _countedIn;
    private int _counts;

    public MarksNearSeams(LatticeCover cover, IReadOnlyList<Point> marks, double clearance)
    {
        (_cover, _marks, _clearance) = (cover, marks, clearance);
        _countedIn = new int[marks.Count];
        var (o, px, py) = (cover.Origin, cover.PitchX, cover.PitchY);
        (_columns, _nearUpright) = Near(cover.ShiftsX, px, clearance, [.. marks.Select(m => m.X - o.X)]);
        (_rows, _nearLevel) = Near(cover.ShiftsY, py, clearance, [.. marks.Select(m => m.Y - o.Y)]);
    }

    /// <summary>Marks near seams under a shift, or any number from <paramref name="enough"/> on if there are so many.</summary>
    public int Count(int shiftX, int shiftY, int enough)
    {
        var (near, stamp) = (0, ++_counts);
        foreach (var (mark, beside) in _nearUpright[shiftX])
        {
            if (near < enough && _countedIn[mark] != stamp && IsNear(shiftX, shiftY, mark, beside, 0))
                (near, _countedIn[mark]) = (near + 1, stamp);
        }

        foreach (var (mark, beside) in _nearLevel[shiftY])
        {
            if (near < enough && _countedIn[mark] != stamp && IsNear(shiftX, shiftY, mark, 0, beside))
                (near, _countedIn[mark]) = (near + 1, stamp);
        }

        return near;
    }

    private bool IsNear(int shiftX, int shiftY, int mark, int right, int up)
    {
        var own = Own(shiftX, shiftY, mark);
        return _cover.Meets(shiftX, shiftY, own)
            ? _cover.Meets(shiftX, shiftY, new(own.Column + right, own.Row + up))
            : IsNearFromOutside(shiftX, shiftY, mark);
    }

    /// <summary>For a mark whose own cell holds no mat (no border, contact only): as seen from the mats it touches.</summary>
    private bool IsNearFromOutside(int shiftX, int shiftY, int mark)
    {
        var own = Own(shiftX, shiftY, mark);
        foreach (var cell in own.Beside.Concat(own.Beside.SelectMany(c => c.Beside)).Where(c => _cover.Meets(shiftX, shiftY, c)))
        {
            var at = _cover.At(shiftX, shiftY, cell);
            var past = _marks[mark] - at;
            var (pitchX, pitchY) = (_cover.PitchX, _cover.PitchY);
            if (!new Box(0, 0, pitchX, pitchY).Grown(2 * MatSearch.ContactMm).Holds(Point.Origin + past))
                continue;
            double[] sides = [past.X, pitchX - past.X, past.Y, pitchY - past.Y];
            if (cell.Beside.Zip(sides).Any(s => LaidMats.IsNear(s.Second, _clearance) && _cover.Meets(shiftX, shiftY, s.First)))
                return true;
        }

        return false;
    }

    private Cell Own(int shiftX, int shiftY, int mark) => new(_columns[shiftX][mark], _rows[shiftY][mark]);

    private static (int[][] Cells, List<(int, int)>[] Near) Near(int shifts, double pitch, double clearance, double[] places)
    {
        var cells = new int[shifts][];
        var near = new List<(int, int)>[shifts];
        for (var shift = 0; shift < shifts; shift++)
        {
            cells[shift] = new int[places.Length];
            near[shift] = [];
            for (var mark = 0; mark < places.Length; mark++)
            {
                var cell = (int)Math.Floor((places[mark] - shift + LaidMats.RoundingMm) / pitch);
                cells[shift][mark] = cell;
                var past = places[mark] - shift - (cell * pitch);
                if (LaidMats.IsNear(past, clearance))
                    near[shift].Add((mark, -1));
                if (LaidMats.IsNear(pitch - past, clearance))
                    near[shift].Add((mark, 1));
            }
        }

        return (cells, near);
    }
}
