using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Pins;

/// <summary>Edges in a row from one corner with a forced pin to the next, or the whole ring where there is none.</summary>
/// <remarks>A position is the arc length from the run's start, in millimetres.</remarks>
public sealed class EdgeRun
{
    private readonly double[] _start;
    private readonly double _first;

    private EdgeRun(Outline outline, IReadOnlyList<int> edges, double first, bool isClosed)
    {
        Edges = edges;
        IsClosed = isClosed;
        _first = first;
        _start = new double[edges.Count + 1];
        for (var i = 0; i < edges.Count; i++)
            _start[i + 1] = _start[i] + outline.Edges[edges[i]].Curve.Length;
    }

    /// <summary>The edges in order.</summary>
    public IReadOnlyList<int> Edges { get; }

    /// <summary>Whether the run goes all round and ends where it starts.</summary>
    public bool IsClosed { get; }

    /// <summary>Its length, in millimetres.</summary>
    public double Length => _start[^1];

    /// <summary>The runs of an outline.</summary>
    /// <param name="outline">The outline.</param>
    /// <param name="isForced">Whether corner i has a forced pin.</param>
    /// <param name="closedStart">Where a run that goes all round starts: edge and fraction.</param>
    public static IReadOnlyList<EdgeRun> Of(Outline outline, Func<int, bool> isForced, (int Edge, double Fraction) closedStart)
    {
        ArgumentNullException.ThrowIfNull(outline);
        ArgumentNullException.ThrowIfNull(isForced);
        var n = outline.Edges.Count;
        var forced = Enumerable.Range(0, n).Where(isForced).ToList();
        if (forced.Count == 0)
        {
            int[] all = [.. Enumerable.Range(0, n).Select(i => (closedStart.Edge + i) % n)];
            return [new(outline, all, closedStart.Fraction * outline.Edges[closedStart.Edge].Curve.Length, true)];
        }

        return [.. forced.Select((corner, k) =>
        {
            var until = forced[(k + 1) % forced.Count];
            var count = ((until - corner + n - 1) % n) + 1;
            return new EdgeRun(outline, [.. Enumerable.Range(0, count).Select(i => (corner + i) % n)], 0, false);
        })];
    }

    /// <summary>The edge and fraction at a position.</summary>
    public (int Edge, double Fraction) Locate(double position)
    {
        var at = position + _first;
        if (IsClosed && at >= Length)
            at -= Length;
        var i = 0;
        while (i < Edges.Count - 1 && at >= _start[i + 1])
            i++;
        return (Edges[i], Math.Clamp((at - _start[i]) / (_start[i + 1] - _start[i]), 0, 1));
    }

    /// <summary>The position of a fraction of an edge of the run, or null where the edge is not in it.</summary>
    public double? PositionOf(int edge, double fraction)
    {
        for (var i = 0; i < Edges.Count; i++)
        {
            if (Edges[i] != edge)
                continue;
            var at = _start[i] + (fraction * (_start[i + 1] - _start[i])) - _first;
            return IsClosed && at < -1e-9 ? at + Length : Math.Max(at, 0);
        }

        return null;
    }
}
