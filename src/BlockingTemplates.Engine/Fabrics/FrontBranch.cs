using System.Buffers;

namespace BlockingTemplates.Engine.Fabrics;

/// <summary>A part of the elimination that one thread does: a run of fronts, after the branches it stands on are done.</summary>
/// <remarks>Which fronts go together depends on the pattern and the number of threads; what each front holds does not.</remarks>
internal sealed class FrontBranch
{
    /// <summary>A branch of fewer nodes is not worth a thread of its own.</summary>
    private const int LeastNodes = 400;

    private FrontBranch(FrontTree tree, int from, int to, IReadOnlyList<FrontBranch> above)
    {
        (From, To, Above) = (from, to, above);
        var room = StackFor(tree, from, to);
        Room = room + above.Sum(b => b.Room);
        Stack = ArrayPool<double>.Shared.Rent(checked((int)room));
    }

    /// <summary>Its first front.</summary>
    internal int From { get; }

    /// <summary>One past its last front.</summary>
    internal int To { get; }

    /// <summary>The branches to be done before it, side by side.</summary>
    internal IReadOnlyList<FrontBranch> Above { get; }

    /// <summary>Room for what its fronts hand up.</summary>
    internal double[] Stack { get; private set; }

    /// <summary>Numbers in its stack and in those of the branches before it.</summary>
    internal long Room { get; }

    /// <summary>The whole tree in at least one and at most so many branches that can go side by side.</summary>
    internal static FrontBranch Of(FrontTree tree, int threads)
    {
        var last = tree.Parent.Length - 1;
        var split = new HashSet<int>();
        var work = Work(tree);
        List<int> tips = [last];
        while (tips.Count < threads)
        {
            var heaviest = tips.Where(f => IsWorthSplitting(tree, f)).DefaultIfEmpty(-1).MaxBy(f => f < 0 ? -1 : work[f]);
            if (heaviest < 0)
                break;
            split.Add(heaviest);
            tips.Remove(heaviest);
            tips.AddRange(tree.Children[heaviest]);
        }

        return Grown(tree, last, split);
    }

    /// <summary>Leaves the room of all branches to the next.</summary>
    internal void Leave()
    {
        ArrayPool<double>.Shared.Return(Stack);
        Stack = [];
        foreach (var branch in Above)
            branch.Leave();
    }

    private static FrontBranch Grown(FrontTree tree, int front, HashSet<int> split) => split.Contains(front)
        ? new(tree, front, front + 1, [.. tree.Children[front].Select(c => Grown(tree, c, split))])
        : new(tree, First(tree, front), front + 1, []);

    private static bool IsWorthSplitting(FrontTree tree, int front) =>
        tree.Children[front].Length > 0 && tree.Start[front + 1] - tree.Start[First(tree, front)] >= LeastNodes;

    /// <summary>The first front of the run that ends with a front and holds all that lead to it.</summary>
    private static int First(FrontTree tree, int front)
    {
        while (tree.Children[front].Length > 0)
            front = tree.Children[front][0];
        return front;
    }

    /// <summary>Multiplications to factor each front and all that lead to it, about.</summary>
    private static double[] Work(FrontTree tree)
    {
        var work = new double[tree.Parent.Length];
        for (var f = 0; f < work.Length; f++)
        {
            double rows = tree.Rows(f);
            work[f] += tree.Pivots(f) * rows * rows;
            if (tree.Parent[f] >= 0)
                work[tree.Parent[f]] += work[f];
        }

        return work;
    }

    /// <summary>Greatest length of the stack while a run of fronts is factored.</summary>
    private static long StackFor(FrontTree tree, int from, int to)
    {
        long top = 0, most = 0;
        for (var f = from; f < to; f++)
        {
            most = Math.Max(most, top + Square(f));
            top += Square(f) - tree.Children[f].Where(c => c >= from).Sum(Square);
        }

        return most;

        long Square(int front) => (long)tree.Rest(front) * tree.Rest(front);
    }
}
