using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Mats;

/// <summary>The lattice at one turn under the piece, for every shift.</summary>
internal sealed class TurnedLattice
{
    /// <summary>Shifts taken together for the lower bound: a fifteenth of a usual mat; more bound less well, fewer take longer.</summary>
    private const int Together = 20;

    private readonly IReadOnlyList<Point> _marks;
    private readonly MatFloor? _floor;
    private readonly double _clearance;
    private readonly RegionShadow _shape;
    private readonly Point _origin;
    private readonly double _pitchX;
    private readonly double _pitchY;

    /// <summary>A turn of the lattice.</summary>
    /// <param name="turn">The turn.</param>
    /// <param name="ring">The pinned outline before any turn.</param>
    /// <param name="marks">The marks before any turn.</param>
    /// <param name="settings">The mats.</param>
    /// <param name="floor">What the field has to fit on, or null.</param>
    public TurnedLattice(MatTurn turn, IReadOnlyList<Point> ring, IReadOnlyList<Point> marks, MatSettings settings, MatFloor? floor)
    {
        (Turn, _floor, _clearance) = (turn, floor, settings.SeamClearance.Millimetres);
        if (turn.PieceDegrees != 0)
        {
            var map = Affine.Turn(turn.PieceDegrees * Math.PI / 180);
            (ring, marks) = ([.. ring.Select(map.Map)], [.. marks.Select(map.Map)]);
        }

        _marks = marks;
        var (width, height) = (settings.Width.Millimetres, settings.Height.Millimetres);
        (_pitchX, _pitchY) = turn.IsQuarter ? (height, width) : (width, height);
        var border = settings.Border.Millimetres;
        _shape = new(ring, border, MatSearch.ContactMm);
        var box = Box.Around(ring).Grown(border);
        _origin = new(box.Left, box.Lower);
    }

    public MatTurn Turn { get; }

    /// <summary>A number of mats that no shift stays under; more than any where no field fits the floor.</summary>
    public int FewestMats() => _floor is null || _floor.Holds(_shape.Bounds.Width, _shape.Bounds.Height)
        ? LatticeCover.LowerBound(_shape, _origin, _pitchX, _pitchY, Together)
        : int.MaxValue;

    /// <summary>The best shift, or null where each takes more mats than the best way known, or does not fit the floor.</summary>
    public MatPlacing? Best(MatPlacing? known)
    {
        var cover = Cover();
        if (Least(cover, known?.Mats ?? int.MaxValue) is not { } least)
            return null;
        var near = new MarksNearSeams(cover, _marks, _clearance);
        var fewestNear = known is not null && known.Mats == least ? known.NearMarks : int.MaxValue;
        MatPlacing? best = null;
        foreach (var (x, y) in cover.Shifts(least))
        {
            var count = near.Count(x, y, fewestNear == int.MaxValue ? int.MaxValue : fewestNear + 1);
            if (count > fewestNear)
                continue;
            var (columns, rows) = cover.FieldBox(x, y);
            var placing = new MatPlacing(least, count, columns * rows, Turn.Degrees, x, y);
            if (!placing.IsBetterThan(best) || !Fits(columns, rows))
                continue;
            (best, fewestNear) = (placing, count);
        }

        return best;
    }

    /// <summary>The mats of one shift.</summary>
    public LaidMats Laid(MatPlacing placing)
    {
        var cover = Cover();
        var cells = cover.Cells(placing.ShiftX, placing.ShiftY).ToArray();
        var first = new Cell(cells.Min(c => c.Column), cells.Min(c => c.Row));
        return new(
            cells.Select(c => new Cell(c.Column - first.Column, c.Row - first.Row)),
            cover.At(placing.ShiftX, placing.ShiftY, first),
            _pitchX,
            _pitchY);
    }

    private LatticeCover Cover() => new(_shape, _origin, _pitchX, _pitchY);

    private int? Least(LatticeCover cover, int most) =>
        cover.Least > most ? null : _floor is null ? cover.Least : cover.LeastWhere(most, Fits);

    private bool Fits(int columns, int rows) => _floor is null || _floor.Holds(columns * _pitchX, rows * _pitchY);
}
