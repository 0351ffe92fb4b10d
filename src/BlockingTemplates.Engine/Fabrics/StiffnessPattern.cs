namespace BlockingTemplates.Engine.Fabrics;

/// <summary>Which pairs of nodes pull on each other: the places of a symmetric matrix of 2 by 2 blocks, lower half by rows.</summary>
public sealed class StiffnessPattern
{
    private readonly int[] _start;
    private readonly int[] _column;

    private StiffnessPattern(int[] start, int[] column) => (_start, _column) = (start, column);

    /// <summary>Number of nodes; each has two unknowns.</summary>
    public int Nodes => _start.Length - 1;

    /// <summary>Number of blocks in the lower half, the diagonal included.</summary>
    public int Blocks => _column.Length;

    /// <summary>Where each row's blocks begin; one more entry than rows.</summary>
    public ReadOnlySpan<int> RowStart => _start;

    /// <summary>Column of each block, ascending in a row, the diagonal last.</summary>
    public ReadOnlySpan<int> Column => _column;

    /// <summary>The pattern in which all nodes of a group are coupled with each other, for each group.</summary>
    /// <param name="nodes">Number of nodes.</param>
    /// <param name="groups">Groups of node numbers from 0 to nodes - 1 (a triangle, the nodes under one stitch of edge).</param>
    public static StiffnessPattern Of(int nodes, IReadOnlyList<int[]> groups)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(nodes);
        ArgumentNullException.ThrowIfNull(groups);
        var start = new int[nodes + 1];
        foreach (var group in groups)
        {
            foreach (var a in group)
            {
                foreach (var b in group)
                {
                    if (b < a)
                        start[a + 1]++;
                }
            }
        }

        for (var i = 0; i < nodes; i++)
            start[i + 1] += start[i] + 1;
        var column = new int[start[nodes]];
        var next = start[..nodes];
        foreach (var group in groups)
        {
            foreach (var a in group)
            {
                foreach (var b in group)
                {
                    if (b < a)
                        column[next[a]++] = b;
                }
            }
        }

        var kept = 0;
        var from = 0;
        for (var i = 0; i < nodes; i++)
        {
            var end = start[i + 1];
            column[next[i]] = i;
            Array.Sort(column, from, end - from);
            start[i] = kept;
            for (var k = from; k < end; k++)
            {
                if (k == from || column[k] != column[k - 1])
                    column[kept++] = column[k];
            }

            from = end;
        }

        start[nodes] = kept;
        return new(start, column[..kept]);
    }

    /// <summary>The place of the block of two nodes, in either order; throws where they are not coupled.</summary>
    public int Place(int a, int b)
    {
        var (row, column) = a >= b ? (a, b) : (b, a);
        var found = Array.BinarySearch(_column, _start[row], _start[row + 1] - _start[row], column);
        return found >= 0 ? found : throw new ArgumentException($"Nodes {a} and {b} are not coupled in this pattern.");
    }

    /// <summary>The other nodes each node is coupled with, both ways: starts and neighbours.</summary>
    internal (int[] Start, int[] Neighbour) Neighbours()
    {
        var n = Nodes;
        var start = new int[n + 1];
        for (var i = 0; i < n; i++)
        {
            for (var k = _start[i]; k < _start[i + 1] - 1; k++)
            {
                start[i + 1]++;
                start[_column[k] + 1]++;
            }
        }

        for (var i = 0; i < n; i++)
            start[i + 1] += start[i];
        var neighbour = new int[start[n]];
        var next = start[..n];
        for (var i = 0; i < n; i++)
        {
            for (var k = _start[i]; k < _start[i + 1] - 1; k++)
            {
                neighbour[next[i]++] = _column[k];
                neighbour[next[_column[k]]++] = i;
            }
        }

        return (start, neighbour);
    }
}
