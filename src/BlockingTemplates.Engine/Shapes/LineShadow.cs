namespace BlockingTemplates.Engine.Shapes;

/// <summary>The shadow of closed lines and single points, without what they enclose. Immutable.</summary>
/// <remarks>
/// For cells with their left and lower side and without their right and upper side. Ends of the lines' straight pieces and
/// single points that lie no further from a line of the lattice than <see cref="OnLineMm"/> lie on it, and a line that
/// passes a corner of the lattice no further away passes through it: rounding never moves an edge that runs along a line of
/// the lattice, or through its corners, to a cell that it does not belong to.
/// </remarks>
public sealed class LineShadow : Shadow
{
    /// <summary>How near to a line of the lattice a point counts as lying on it, in millimetres.</summary>
    public const double OnLineMm = 1e-6;

    private readonly List<RightwardRun> _runs = [];
    private readonly Point[] _points;

    /// <summary>Closed lines and single points.</summary>
    /// <param name="rings">Rings, the first point not repeated; they may cross; millimetres.</param>
    /// <param name="points">Further points.</param>
    public LineShadow(IEnumerable<IReadOnlyList<Point>> rings, IEnumerable<Point> points)
    {
        ArgumentNullException.ThrowIfNull(rings);
        _points = [.. points.OrderBy(p => p.X)];
        var held = new List<IReadOnlyList<Point>>(rings);
        foreach (var ring in held)
            _runs.AddRange(RightwardRun.Split(ring));
        Bounds = Box.Around(held.SelectMany(r => r).Concat(_points)).Grown(OnLineMm);
    }

    /// <inheritdoc/>
    public override Box Bounds { get; }

    /// <inheritdoc/>
    public override void AddStrip(double left, double right, ICollection<Extent> heights)
    {
        ArgumentNullException.ThrowIfNull(heights);
        foreach (var run in _runs)
        {
            if (run.InStrip(left, right, OnLineMm) is { } height)
                heights.Add(height);
        }

        var first = Array.BinarySearch(_points, new Point(left - OnLineMm, 0), Comparer<Point>.Create((a, b) => a.X < b.X ? -1 : 1));
        for (var i = ~first; i < _points.Length && _points[i].X < right - OnLineMm; i++)
            heights.Add(new(_points[i].Y + OnLineMm, _points[i].Y + OnLineMm));
    }
}
