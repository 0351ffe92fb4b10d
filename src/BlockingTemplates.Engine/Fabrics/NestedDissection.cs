using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Fabrics;

/// <summary>An order of elimination by halving the piece: left half, right half, then the nodes that part them.</summary>
/// <remarks>
/// A. George, Nested dissection of a regular finite element mesh, SIAM J. Numer. Anal. 10 (1973) 345-363, with cuts by
/// coordinates; the parting nodes are a least cover of the couples across the cut (Koenig's theorem on bipartite graphs).
/// </remarks>
public sealed class NestedDissection
{
    private const int LeafNodes = 10;

    private readonly IReadOnlyList<Point> _at;
    private readonly int[] _order;
    private readonly double[] _key;
    private readonly HalvingCut _cut;
    private readonly List<int> _frontStart = [];
    private readonly List<int> _parent = [];

    /// <summary>The order for a pattern whose nodes stand at given places.</summary>
    public NestedDissection(StiffnessPattern pattern, IReadOnlyList<Point> places)
    {
        ArgumentNullException.ThrowIfNull(pattern);
        ArgumentNullException.ThrowIfNull(places);
        if (places.Count != pattern.Nodes)
            throw new ArgumentException("Each node needs a place.", nameof(places));
        _at = places;
        var n = places.Count;
        _order = [.. Enumerable.Range(0, n)];
        _key = new double[n];
        _cut = new(pattern, places, _order);
        Dissect(0, n);
        _frontStart.Add(n);
    }

    /// <summary>The nodes in order of elimination.</summary>
    public IReadOnlyList<int> Order => _order;

    /// <summary>Where each front's own nodes begin in the order; one more entry than fronts. Children come before parents.</summary>
    internal IReadOnlyList<int> FrontStart => _frontStart;

    /// <summary>The front that takes over each front's rest, or -1 for the last one.</summary>
    internal IReadOnlyList<int> Parent => _parent;

    private int Dissect(int from, int to)
    {
        if (to - from <= LeafNodes)
            return AddFront(from);
        Part(from, to, out var rightFrom, out var separatorFrom);
        if (separatorFrom == from || (rightFrom == from && separatorFrom == to))
            return AddFront(from);
        var left = rightFrom > from ? Dissect(from, rightFrom) : -1;
        var right = separatorFrom > rightFrom ? Dissect(rightFrom, separatorFrom) : -1;
        SortAlong(separatorFrom, to);
        var own = AddFront(separatorFrom);
        if (left >= 0)
            _parent[left] = own;
        if (right >= 0)
            _parent[right] = own;
        return own;
    }

    private int AddFront(int from)
    {
        _frontStart.Add(from);
        _parent.Add(-1);
        return _parent.Count - 1;
    }

    /// <summary>Brings the nodes of a range into the order left, right, separator.</summary>
    private void Part(int from, int to, out int rightFrom, out int separatorFrom)
    {
        var box = Box.Around(Range(from, to).Select(i => _at[i]));
        Vector across = box.Width >= box.Height ? new(1, 0) : new(0, 1);
        var slanted = box.Width > 0.6 * box.Height && box.Height > 0.6 * box.Width && to - from > 200;
        if (slanted)
        {
            Vector[] ways = [new(1, 0), new(0, 1), new(0.8, 0.6), new(0.6, -0.8)];
            across = ways.MinBy(way => _cut.Make(from, to, way))!;
        }

        _cut.Make(from, to, across);
        int l = from, r = 0, s = 0;
        var rights = new int[to - from];
        var separators = new int[to - from];
        for (var k = from; k < to; k++)
        {
            var node = _order[k];
            if (_cut.Parts(node))
                separators[s++] = node;
            else if (_cut.IsLeft(node))
                _order[l++] = node;
            else
                rights[r++] = node;
        }

        rightFrom = l;
        separatorFrom = l + r;
        Array.Copy(rights, 0, _order, rightFrom, r);
        Array.Copy(separators, 0, _order, separatorFrom, s);
    }

    private void SortAlong(int from, int to)
    {
        if (to - from < 2)
            return;
        var box = Box.Around(Range(from, to).Select(i => _at[i]));
        for (var k = from; k < to; k++)
            _key[k] = box.Width >= box.Height ? _at[_order[k]].X : _at[_order[k]].Y;
        Array.Sort(_key, _order, from, to - from);
    }

    private ArraySegment<int> Range(int from, int to) => new(_order, from, to - from);
}
