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
    private readonly int[] _start;
    private readonly int[] _neighbour;
    private readonly int[] _order;
    private readonly int[] _side;
    private readonly double[] _key;
    private readonly int[] _mate;
    private readonly int[] _seen;
    private readonly List<int> _frontStart = [];
    private readonly List<int> _parent = [];
    private int _mark;
    private int _stamp;

    /// <summary>The order for a pattern whose nodes stand at given places.</summary>
    public NestedDissection(StiffnessPattern pattern, IReadOnlyList<Point> places)
    {
        ArgumentNullException.ThrowIfNull(pattern);
        ArgumentNullException.ThrowIfNull(places);
        if (places.Count != pattern.Nodes)
            throw new ArgumentException("Each node needs a place.", nameof(places));
        _at = places;
        (_start, _neighbour) = pattern.Neighbours();
        var n = places.Count;
        _order = [.. Enumerable.Range(0, n)];
        _side = new int[n];
        _key = new double[n];
        _mate = new int[n];
        _seen = new int[n];
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
            across = ways.MinBy(way => Cut(from, to, way))!;
        }

        Cut(from, to, across);
        var (left, separator) = (_mark - 1, _mark + 1);
        int l = from, r = 0, s = 0;
        var rights = new int[to - from];
        var separators = new int[to - from];
        for (var k = from; k < to; k++)
        {
            var node = _order[k];
            if (_side[node] == separator)
                separators[s++] = node;
            else if (_side[node] == left)
                _order[l++] = node;
            else
                rights[r++] = node;
        }

        rightFrom = l;
        separatorFrom = l + r;
        Array.Copy(rights, 0, _order, rightFrom, r);
        Array.Copy(separators, 0, _order, separatorFrom, s);
    }

    /// <summary>Marks sides (mark - 1 left, mark right, mark + 1 parting) for a halving cut and gives the number of parting nodes.</summary>
    private int Cut(int from, int to, Vector across)
    {
        foreach (var i in Range(from, to))
            _key[i] = (_at[i].X * across.X) + (_at[i].Y * across.Y);
        var middle = (from + to) / 2;
        Halve(from, to - 1, middle);
        _mark += 4;
        var (left, right, parting) = (_mark - 1, _mark, _mark + 1);
        for (var k = from; k < to; k++)
        {
            _side[_order[k]] = k < middle ? left : right;
            _mate[_order[k]] = -1;
        }

        var facing = new List<int>();
        for (var k = from; k < middle; k++)
        {
            if (Touches(_order[k], right))
                facing.Add(_order[k]);
        }

        var matched = 0;
        foreach (var node in facing)
        {
            _stamp++;
            matched += Augment(node, right) ? 1 : 0;
        }

        // Koenig: of the nodes reached from unmatched left ones by alternating ways, the rights part; of the others, the lefts.
        _stamp++;
        foreach (var node in facing)
        {
            if (_mate[node] < 0)
                Reach(node, right);
        }

        foreach (var node in facing)
        {
            for (var k = _start[node]; k < _start[node + 1]; k++)
            {
                var other = _neighbour[k];
                if (_side[other] == right && _seen[other] == _stamp)
                    _side[other] = parting;
            }
        }

        foreach (var node in facing)
        {
            if (_seen[node] != _stamp)
                _side[node] = parting;
        }

        return matched;
    }

    private bool Touches(int node, int side)
    {
        for (var k = _start[node]; k < _start[node + 1]; k++)
        {
            if (_side[_neighbour[k]] == side)
                return true;
        }

        return false;
    }

    private bool Augment(int node, int right)
    {
        for (var k = _start[node]; k < _start[node + 1]; k++)
        {
            var other = _neighbour[k];
            if (_side[other] != right || _mate[other] >= 0)
                continue;
            (_mate[other], _mate[node]) = (node, other);
            return true;
        }

        for (var k = _start[node]; k < _start[node + 1]; k++)
        {
            var other = _neighbour[k];
            if (_side[other] != right || _seen[other] == _stamp)
                continue;
            _seen[other] = _stamp;
            if (!Augment(_mate[other], right))
                continue;
            (_mate[other], _mate[node]) = (node, other);
            return true;
        }

        return false;
    }

    private void Reach(int node, int right)
    {
        var open = new Stack<int>([node]);
        while (open.TryPop(out var next))
        {
            if (_seen[next] == _stamp)
                continue;
            _seen[next] = _stamp;
            for (var k = _start[next]; k < _start[next + 1]; k++)
            {
                var other = _neighbour[k];
                if (_side[other] != right || _seen[other] == _stamp)
                    continue;
                _seen[other] = _stamp;
                if (_mate[other] >= 0)
                    open.Push(_mate[other]);
            }
        }
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

    /// <summary>Hoare's selection: the nodes before the middle have no greater key than those after it.</summary>
    private void Halve(int low, int high, int middle)
    {
        while (low < high)
        {
            var pivot = _key[_order[(low + high) / 2]];
            int i = low, j = high;
            while (i <= j)
            {
                while (_key[_order[i]] < pivot)
                    i++;
                while (_key[_order[j]] > pivot)
                    j--;
                if (i <= j)
                {
                    (_order[i], _order[j]) = (_order[j], _order[i]);
                    i++;
                    j--;
                }
            }

            if (middle <= j)
                high = j;
            else if (middle >= i)
                low = i;
            else
                return;
        }
    }
}
