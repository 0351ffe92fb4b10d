using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Fabrics;

/// <summary>Compares the edge of a pinned cloth with the outline it was pinned to.</summary>
public sealed class FreeEdge
{
    private const int SamplesPerStretch = 8;

    private readonly TriangleMesh _mesh;
    private readonly List<List<Point>> _pinned = [];
    private readonly List<List<int>> _sampleOf = [];
    private readonly int[] _firstOfEdge;

    /// <summary>Prepares comparison with a pinned outline.</summary>
    /// <param name="mesh">The unblocked cloth.</param>
    /// <param name="pinned">The outline the pins stand on, with the same edges as the meshed one.</param>
    public FreeEdge(TriangleMesh mesh, Outline pinned)
    {
        ArgumentNullException.ThrowIfNull(mesh);
        ArgumentNullException.ThrowIfNull(pinned);
        if (mesh.Rim.Count == 0 || mesh.Rim.Max(r => r.Edge) >= pinned.Edges.Count)
            throw new ArgumentException("The pinned outline has other edges than the mesh.", nameof(pinned));
        _mesh = mesh;
        _firstOfEdge = new int[pinned.Edges.Count];
        for (int e = 0, node = 0; e < pinned.Edges.Count; e++)
        {
            _firstOfEdge[e] = node;
            var fractions = new List<double>();
            for (; node < mesh.Rim.Count && mesh.Rim[node].Edge == e; node++)
                fractions.Add(mesh.Rim[node].Fraction);
            fractions.Add(1);
            List<Point> line = [pinned.Edges[e].Curve.At(0)];
            List<int> samples = [0];
            for (var i = 1; i < fractions.Count; i++)
            {
                for (var k = 1; k <= SamplesPerStretch; k++)
                    line.Add(pinned.Edges[e].Curve.At(fractions[i - 1] + ((fractions[i] - fractions[i - 1]) * k / SamplesPerStretch)));
                samples.Add(line.Count - 1);
            }

            _pinned.Add(line);
            _sampleOf.Add(samples);
        }
    }

    /// <summary>The gaps between neighbouring pins, once round in the order of the edge.</summary>
    /// <param name="support">The pins; at least one.</param>
    /// <param name="rest">Where the cloth came to rest under them.</param>
    public IReadOnlyList<EdgeGap> Gaps(MembraneSupport support, Equilibrium rest)
    {
        ArgumentNullException.ThrowIfNull(support);
        ArgumentNullException.ThrowIfNull(rest);
        var arcs = support.Pins.Select((p, i) => (Arc: RimStitches.ArcOf(_mesh, p.Edge, p.Fraction), Pin: i)).ToList();
        arcs.Sort();
        return [.. arcs.Select((from, i) => Gap(from, arcs[(i + 1) % arcs.Count], rest))];
    }

    /// <summary>Distance of a place from the pinned line of an edge near rim node i, inside positive, in millimetres.</summary>
    /// <param name="node">A rim node; the line is searched near the place that belongs to it.</param>
    /// <param name="place">The place.</param>
    public double Inside(int node, Point place)
    {
        var edge = _mesh.Rim[node].Edge;
        var line = _pinned[edge];
        var middle = _sampleOf[edge][node - _firstOfEdge[edge]];

        // The nearest point of the line lies no farther along it than twice the way to the node's own point.
        var reach = 2 * place.DistanceTo(line[middle]);
        var (from, to) = (middle, middle);
        while (from > 0 && line[from].DistanceTo(line[middle]) <= reach)
            from--;
        while (to < line.Count - 1 && line[to].DistanceTo(line[middle]) <= reach)
            to++;
        var (nearest, inside) = (double.PositiveInfinity, 0.0);
        for (var k = Math.Max(1, from); k <= Math.Min(line.Count - 1, Math.Max(to, from + 1)); k++)
        {
            var side = line[k] - line[k - 1];
            var along = (place - line[k - 1]).Dot(side) / side.Dot(side);
            along = Math.Clamp(along, k == 1 ? double.NegativeInfinity : 0, k == line.Count - 1 ? double.PositiveInfinity : 1);
            var foot = line[k - 1] + (along * side);
            var distance = place.DistanceTo(foot);
            if (distance >= nearest)
                continue;
            nearest = distance;
            var travel = side.Unit;
            if (along == 0 && k > 1)
                travel += (line[k - 1] - line[k - 2]).Unit;
            else if (along == 1 && k < line.Count - 1)
                travel += (line[k + 1] - line[k]).Unit;
            inside = travel.Cross(place - foot) < 0 ? -distance : distance;
        }

        return inside;
    }

    private EdgeGap Gap((double Arc, int Pin) from, (double Arc, int Pin) to, Equilibrium rest)
    {
        var worst = Worst(from.Arc, to.Arc, rest.Places);
        bool? determined = rest.SlackTried ? true : null;
        if (rest.OtherPlaces is { } other)
        {
            var change = Math.Abs(Worst(from.Arc, to.Arc, other).Inside - worst.Inside);
            determined = change <= EdgeGap.SameMm + (EdgeGap.SameShare * Math.Abs(worst.Inside));
        }

        var node = _mesh.Rim[worst.Node];
        return new(from.Pin, to.Pin, worst.Inside, node.Edge, node.Fraction, determined);
    }

    /// <summary>The rim node between two arc lengths whose place lies farthest from the pinned line.</summary>
    private (int Node, double Inside) Worst(double from, double to, IReadOnlyList<Point> places)
    {
        var n = _mesh.Rim.Count;
        var length = to > from ? to - from : to - from + _mesh.RimLengthMm;
        var first = 0;
        while (first < n && _mesh.Rim[first].ArcMm < from)
            first++;
        (int Node, double Inside)? worst = null;
        for (var k = 0; k < n; k++)
        {
            var i = (first + k) % n;
            var along = _mesh.Rim[i].ArcMm - from;
            if ((along < 0 ? along + _mesh.RimLengthMm : along) > length)
                break;
            var inside = Inside(i, places[i]);
            if (worst is null || Math.Abs(inside) > Math.Abs(worst.Value.Inside))
                worst = (i, inside);
        }

        return worst ?? (first % n, Inside(first % n, places[first % n]));
    }
}
