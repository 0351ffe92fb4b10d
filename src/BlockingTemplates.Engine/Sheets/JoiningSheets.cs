using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Sheets;

/// <summary>Finds the fewest sheets that make printed sheets hang together side by side.</summary>
/// <remarks>
/// Method of S. E. Dreyfus and R. A. Wagner, The Steiner problem in graphs, Networks 1 (1971) 195-207, with the cost on the
/// sheets: 0 if printed, 1 if not. Exact for up to <see cref="ExactUpTo"/> separate groups; of more, the two nearest are
/// joined by a shortest way first, until so many are left. Only sheets inside the box of the printed ones are tried:
/// a way that leaves the box is no shorter than the same way pressed back into it.
/// </remarks>
internal sealed class JoiningSheets
{
    /// <summary>So many groups are joined exactly.</summary>
    public const int ExactUpTo = 10;

    private const int Far = int.MaxValue / 4;

    private readonly Cell[] _cells;
    private readonly int[][] _beside;
    private readonly int[] _cost;

    private JoiningSheets(HashSet<Cell> printed)
    {
        var (left, right) = (printed.Min(c => c.Column), printed.Max(c => c.Column));
        var (lower, upper) = (printed.Min(c => c.Row), printed.Max(c => c.Row));
        _cells = [.. from row in Enumerable.Range(lower, upper - lower + 1)
                     from column in Enumerable.Range(left, right - left + 1)
                     select new Cell(column, row)];
        var index = _cells.Select((cell, i) => (cell, i)).ToDictionary(e => e.cell, e => e.i);
        _beside = [.. _cells.Select(c => c.Beside.Where(index.ContainsKey).Select(b => index[b]).ToArray())];
        _cost = [.. _cells.Select(c => printed.Contains(c) ? 0 : 1)];
    }

    /// <summary>The sheets to add; none if the printed ones hang together.</summary>
    public static IReadOnlyList<Cell> Fewest(IReadOnlySet<Cell> printed)
    {
        if (HangTogether(printed))
            return [];
        var held = new HashSet<Cell>(printed);
        while (true)
        {
            var search = new JoiningSheets(held);
            var groups = search.Groups();
            if (groups.Count == 1)
                return [.. held.Except(printed)];
            held.UnionWith(groups.Count <= ExactUpTo ? search.Joined(groups) : search.NearestTwo(groups));
        }
    }

    private static bool HangTogether(IReadOnlySet<Cell> printed)
    {
        var (left, lower) = (int.MaxValue, int.MaxValue);
        var (right, upper) = (int.MinValue, int.MinValue);
        foreach (var (column, row) in printed)
        {
            (left, right) = (Math.Min(left, column), Math.Max(right, column));
            (lower, upper) = (Math.Min(lower, row), Math.Max(upper, row));
        }

        // A rim of unprinted places all round saves asking where the box ends.
        var width = right - left + 3;
        var unreached = new bool[width * (upper - lower + 3)];
        foreach (var (column, row) in printed)
            unreached[column - left + 1 + ((row - lower + 1) * width)] = true;
        var waiting = new Stack<int>([Array.IndexOf(unreached, true)]);
        var reached = 0;
        while (waiting.TryPop(out var place))
        {
            if (!unreached[place])
                continue;
            unreached[place] = false;
            reached++;
            waiting.Push(place - 1);
            waiting.Push(place + 1);
            waiting.Push(place - width);
            waiting.Push(place + width);
        }

        return reached == printed.Count;
    }

    private List<List<int>> Groups()
    {
        var groups = new List<List<int>>();
        var seen = new bool[_cells.Length];
        for (var i = 0; i < _cells.Length; i++)
        {
            if (seen[i] || _cost[i] > 0)
                continue;
            var group = new List<int> { i };
            seen[i] = true;
            for (var next = 0; next < group.Count; next++)
            {
                foreach (var b in _beside[group[next]].Where(b => !seen[b] && _cost[b] == 0))
                {
                    seen[b] = true;
                    group.Add(b);
                }
            }

            groups.Add(group);
        }

        return groups;
    }

    private IEnumerable<Cell> NearestTwo(List<List<int>> groups)
    {
        var best = (Cost: Far, Way: new List<int>());
        foreach (var group in groups)
        {
            var (cost, from) = Start(group);
            Grow(cost, from);
            var end = groups.Where(g => g != group).Select(g => g[0]).MinBy(c => cost[c]);
            if (cost[end] < best.Cost)
                best = (cost[end], [.. Way(end, from)]);
        }

        return best.Way.Select(i => _cells[i]);
    }

    /// <summary>Joins all groups: for each set of groups and each cell, the cheapest tree that holds both.</summary>
    private IEnumerable<Cell> Joined(List<List<int>> groups)
    {
        var sets = 1 << (groups.Count - 1);
        var cost = new int[sets][];
        var from = new int[sets][];
        var split = new int[sets][];
        for (var set = 1; set < sets; set++)
        {
            split[set] = new int[_cells.Length];
            if ((set & (set - 1)) == 0)
                (cost[set], from[set]) = Start(groups[int.Log2(set)]);
            else
                (cost[set], from[set]) = ([.. Enumerable.Repeat(Far, _cells.Length)], [.. Enumerable.Repeat(-1, _cells.Length)]);
            for (var part = (set - 1) & set; part > (set ^ part); part = (part - 1) & set)
            {
                for (var c = 0; c < _cells.Length; c++)
                {
                    var together = cost[part][c] + cost[set ^ part][c] - _cost[c];
                    if (together < cost[set][c])
                        (cost[set][c], split[set][c]) = (together, part);
                }
            }

            Grow(cost[set], from[set]);
        }

        var tree = new List<int>();
        Collect(sets - 1, groups[^1][0]);
        return tree.Select(i => _cells[i]);

        void Collect(int set, int cell)
        {
            var way = Way(cell, from[set]).ToArray();
            tree.AddRange(way);
            var part = split[set][way[^1]];
            if (part == 0)
                return;
            Collect(part, way[^1]);
            Collect(set ^ part, way[^1]);
        }
    }

    private (int[] Cost, int[] From) Start(List<int> group)
    {
        var cost = Enumerable.Repeat(Far, _cells.Length).ToArray();
        foreach (var c in group)
            cost[c] = 0;
        return (cost, [.. Enumerable.Repeat(-1, _cells.Length)]);
    }

    /// <summary>Spreads costs to the cells beside, least first.</summary>
    private void Grow(int[] cost, int[] from)
    {
        var waiting = new PriorityQueue<int, (int, int)>();
        for (var c = 0; c < _cells.Length; c++)
        {
            if (cost[c] < Far)
                waiting.Enqueue(c, (cost[c], c));
        }

        while (waiting.TryDequeue(out var c, out var at))
        {
            if (at.Item1 > cost[c])
                continue;
            foreach (var b in _beside[c])
            {
                if (cost[c] + _cost[b] >= cost[b])
                    continue;
                (cost[b], from[b]) = (cost[c] + _cost[b], c);
                waiting.Enqueue(b, (cost[b], b));
            }
        }
    }

    private static IEnumerable<int> Way(int end, int[] from)
    {
        for (var c = end; c >= 0; c = from[c])
            yield return c;
    }
}
