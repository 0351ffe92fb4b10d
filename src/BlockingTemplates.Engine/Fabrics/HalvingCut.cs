using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Fabrics;

/// <summary>Cuts a set of nodes in half by a line and finds the fewest nodes that part the halves.</summary>
internal sealed class HalvingCut
{
    private readonly IReadOnlyList<Point> _at;
    private readonly int[] _start;
    private readonly int[] _neighbour;
    private readonly int[] _order;
    private readonly int[] _side;
    private readonly double[] _key;
    private readonly int[] _mate;
    private readonly int[] _seen;
    private int _mark;
    private int _stamp;

    /// <summary>Prepares cuts of ranges of an order, which they rearrange.</summary>
    internal HalvingCut(StiffnessPattern pattern, IReadOnlyList<Point> places, int[] order)
    {
        (_at, _order) = (places, order);
        (_start, _neighbour) = pattern.Neighbours();
        _side = new int[order.Length];
        _key = new double[order.Length];
        _mate = new int[order.Length];
        _seen = new int[order.Length];
    }

    /// <summary>Whether a node parts the halves of the last cut.</summary>
    internal bool Parts(int node) => _side[node] == _mark + 1;

    /// <summary>Whether a node lies in the first half of the last cut.</summary>
    internal bool IsLeft(int node) => _side[node] == _mark - 1;

    /// <summary>Cuts a range of the order in half across a direction; gives the number of parting nodes.</summary>
    internal int Make(int from, int to, Vector across)
    {
        foreach (var i in new ArraySegment<int>(_order, from, to - from))
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
