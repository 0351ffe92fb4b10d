namespace BlockingTemplates.Engine.Shapes;

/// <summary>The shadow of closed lines and single points, without what they enclose. Immutable.</summary>
public sealed class LineShadow : Shadow
{
    private readonly List<(Box Box, Profile Up, Profile Down)> _runs = [];
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
            AddRuns(ring);
        Bounds = Box.Around(held.SelectMany(r => r).Concat(_points));
    }

    /// <inheritdoc/>
    public override Box Bounds { get; }

    /// <inheritdoc/>
    public override void AddStrip(double left, double right, ICollection<Extent> heights)
    {
        ArgumentNullException.ThrowIfNull(heights);
        foreach (var (box, up, down) in _runs)
        {
            if (box.Left <= right && box.Right >= left)
                heights.Add(new(-down.Highest(left, right), up.Highest(left, right)));
        }

        var first = Array.BinarySearch(_points, new Point(left, 0), Comparer<Point>.Create((a, b) => a.X < b.X ? -1 : 1));
        for (var i = ~first; i < _points.Length && _points[i].X <= right; i++)
            heights.Add(new(_points[i].Y, _points[i].Y));
    }

    /// <summary>Splits a ring where it turns back along x; each run then crosses a strip in one go.</summary>
    private void AddRuns(IReadOnlyList<Point> ring)
    {
        var run = new List<Point> { ring[0] };
        var heading = 0;
        for (var i = 1; i <= ring.Count; i++)
        {
            var next = ring[i % ring.Count];
            var step = Math.Sign(next.X - run[^1].X);
            if (step * heading < 0)
            {
                Keep(run, heading);
                run = [run[^1]];
                heading = 0;
            }

            heading = step == 0 ? heading : step;
            run.Add(next);
        }

        Keep(run, heading);
    }

    private void Keep(List<Point> run, int heading)
    {
        if (heading < 0)
            run.Reverse();
        _runs.Add((Box.Around(run), new(run), new(run, upsideDown: true)));
    }
}
