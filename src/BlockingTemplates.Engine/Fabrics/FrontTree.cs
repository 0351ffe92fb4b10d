namespace BlockingTemplates.Engine.Fabrics;

/// <summary>What each front of the elimination holds, known from the pattern alone.</summary>
internal sealed class FrontTree
{
    /// <summary>The tree for a pattern in an order of elimination.</summary>
    internal FrontTree(StiffnessPattern pattern, NestedDissection order)
    {
        Order = [.. order.Order];
        Start = [.. order.FrontStart];
        Parent = [.. order.Parent];
        var fronts = Parent.Length;
        Border = new int[fronts][];
        InParent = new int[fronts][];
        Children = new int[fronts][];
        PanelAt = new long[fronts + 1];
        Entries = new (int Block, int Row, int Column)[pattern.Blocks];
        EntryStart = new int[fronts + 1];
        Find(pattern);
    }

    /// <summary>Nodes in order of elimination.</summary>
    internal int[] Order { get; }

    /// <summary>Where each front's own nodes begin in the order.</summary>
    internal int[] Start { get; }

    /// <summary>The front above, or -1.</summary>
    internal int[] Parent { get; }

    /// <summary>The fronts below.</summary>
    internal int[][] Children { get; }

    /// <summary>Places in the order of the later nodes a front touches, ascending.</summary>
    internal int[][] Border { get; }

    /// <summary>For each border node its number among the parent's nodes (own first, then border).</summary>
    internal int[][] InParent { get; }

    /// <summary>Where each front's columns begin in the factor.</summary>
    internal long[] PanelAt { get; }

    /// <summary>The matrix blocks that enter at each front, with row and column among its nodes.</summary>
    internal (int Block, int Row, int Column)[] Entries { get; }

    /// <summary>Where each front's entries begin.</summary>
    internal int[] EntryStart { get; }

    /// <summary>Pivots of a front.</summary>
    internal int Pivots(int front) => 2 * (Start[front + 1] - Start[front]);

    /// <summary>Rows and columns of the rest a front hands up, padded.</summary>
    internal int Rest(int front) => FrontKernel.Padded(2 * Border[front].Length);

    /// <summary>Rows of a front, padded.</summary>
    internal int Rows(int front) => FrontKernel.Padded(Pivots(front) + Rest(front));

    private void Find(StiffnessPattern pattern)
    {
        var (start, neighbour) = pattern.Neighbours();
        var place = new int[Order.Length];
        for (var p = 0; p < Order.Length; p++)
            place[Order[p]] = p;
        var below = new List<int>[Parent.Length];
        var local = new int[Order.Length];
        var seen = new int[Order.Length];
        var entries = 0;
        for (var f = 0; f < Parent.Length; f++)
        {
            var (from, to) = (Start[f], Start[f + 1]);
            var border = new List<int>();
            for (var p = from; p < to; p++)
            {
                for (var k = start[Order[p]]; k < start[Order[p] + 1]; k++)
                    Note(place[neighbour[k]]);
            }

            Children[f] = below[f] is { } children ? [.. children] : [];
            foreach (var child in Children[f])
            {
                foreach (var p in Border[child])
                    Note(p);
            }

            border.Sort();
            Border[f] = [.. border];
            for (var i = 0; i < border.Count; i++)
                local[border[i]] = to - from + i;
            for (var p = from; p < to; p++)
                local[p] = p - from;
            foreach (var child in Children[f])
                InParent[child] = [.. Border[child].Select(p => local[p])];
            if (Parent[f] >= 0)
                (below[Parent[f]] ??= []).Add(f);
            PanelAt[f + 1] = PanelAt[f] + ((long)FrontKernel.Padded(Pivots(f)) * Rows(f));
            EntryStart[f] = entries;
            for (var p = from; p < to; p++)
            {
                var node = Order[p];
                Entries[entries++] = (pattern.RowStart[node + 1] - 1, local[p], local[p]);
                for (var k = start[node]; k < start[node + 1]; k++)
                {
                    var other = neighbour[k];
                    if (place[other] > p)
                        Entries[entries++] = Entry(pattern.Place(node, other), node, other, local[p], local[place[other]]);
                }
            }

            void Note(int p)
            {
                if (p < to || seen[p] == f + 1)
                    return;
                seen[p] = f + 1;
                border.Add(p);
            }
        }

        EntryStart[^1] = entries;
    }

    /// <summary>An entry below the diagonal of the front; a block stored for (own, other) is marked by its complement: to be transposed.</summary>
    private static (int Block, int Row, int Column) Entry(int block, int own, int other, int ownLocal, int otherLocal) =>
        (other > own ? block : ~block, otherLocal, ownLocal);
}
