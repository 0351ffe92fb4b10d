using System.Buffers;
using System.Runtime.InteropServices;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Fabrics;

/// <summary>Cholesky's factor of a sparse positive definite stiffness matrix by fronts.</summary>
/// <remarks>
/// I. S. Duff and J. K. Reid, The multifrontal solution of indefinite sparse symmetric linear equations, ACM Trans. Math.
/// Softw. 9 (1983) 302-325; order of elimination as in <see cref="NestedDissection"/>. The analysis is made once for a
/// pattern; matrices of that pattern may then be factored again and again in the same memory. Not for use by several
/// threads at once; itself it may use several, with the same result. Disposing of it is optional: it leaves its memory to the
/// next one, which fresh memory from the system would cost more time than the factor itself.
/// </remarks>
public sealed class FrontalCholesky : IDisposable
{
    private readonly StiffnessPattern _pattern;
    private readonly FrontTree _tree;
    private double[] _factor;
    private readonly (double[] Stack, long At)[] _rest;
    private readonly FrontBranch _trunk;
    private readonly long _entries;
    private bool _factored;
    private bool _disposed;

    /// <summary>Analyses a pattern.</summary>
    /// <param name="pattern">The pattern of the matrices to come.</param>
    /// <param name="places">Where the nodes stand; used to find a good order.</param>
    /// <param name="threads">How many parts of the piece are factored side by side, 1 or more.</param>
    public FrontalCholesky(StiffnessPattern pattern, IReadOnlyList<Point> places, int threads = 1)
        : this(pattern, new NestedDissection(pattern, places), threads)
    {
    }

    /// <summary>Analyses a pattern with a given order of elimination.</summary>
    public FrontalCholesky(StiffnessPattern pattern, NestedDissection order, int threads = 1)
    {
        ArgumentNullException.ThrowIfNull(pattern);
        ArgumentNullException.ThrowIfNull(order);
        ArgumentOutOfRangeException.ThrowIfLessThan(threads, 1);
        _pattern = pattern;
        _tree = new(pattern, order);
        var fronts = _tree.Parent.Length;
        _entries = _tree.PanelAt[fronts];
        _factor = ArrayPool<double>.Shared.Rent(checked((int)_entries));
        _rest = new (double[], long)[fronts];
        _trunk = FrontBranch.Of(_tree, threads);
    }

    /// <summary>Number of entries of the factor, padding included.</summary>
    public long FactorEntries => _entries;

    /// <summary>Numbers in the factor and in the rests that are held beside it.</summary>
    internal long Room => _entries + _trunk.Room;

    /// <summary>Factors a matrix of the pattern.</summary>
    /// <returns>False where the matrix is not positive definite; there is then no factor.</returns>
    public bool Factor(StiffnessMatrix matrix)
    {
        ArgumentNullException.ThrowIfNull(matrix);
        ObjectDisposedException.ThrowIf(_disposed, this);
        if (matrix.Pattern != _pattern)
            throw new ArgumentException("The matrix has another pattern than the one analysed.", nameof(matrix));
        _factored = Factor(_trunk, matrix.Values);
        return _factored;
    }

    /// <summary>Solves for a right side; as many numbers as unknowns.</summary>
    /// <exception cref="InvalidOperationException">There is no factor.</exception>
    public double[] Solve(ReadOnlySpan<double> right)
    {
        ObjectDisposedException.ThrowIf(_disposed, this);
        if (!_factored)
            throw new InvalidOperationException("Factor a positive definite matrix first.");
        var n = _tree.Order.Length;
        var x = new double[2 * n];
        for (var p = 0; p < n; p++)
            (x[2 * p], x[(2 * p) + 1]) = (right[2 * _tree.Order[p]], right[(2 * _tree.Order[p]) + 1]);
        var work = new double[Enumerable.Range(0, _tree.Parent.Length).Max(_tree.Rows)];
        for (var f = 0; f < _tree.Parent.Length; f++)
            Down(f, x, work);
        for (var f = _tree.Parent.Length - 1; f >= 0; f--)
            Up(f, x, work);
        var solution = new double[2 * n];
        for (var p = 0; p < n; p++)
            (solution[2 * _tree.Order[p]], solution[(2 * _tree.Order[p]) + 1]) = (x[2 * p], x[(2 * p) + 1]);
        return solution;
    }

    /// <summary>Leaves its memory to the next one.</summary>
    public void Dispose()
    {
        if (_disposed)
            return;
        _disposed = true;
        ArrayPool<double>.Shared.Return(_factor);
        _factor = [];
        _trunk.Leave();
    }

    /// <summary>The branches above side by side, then the branch itself.</summary>
    private bool Factor(FrontBranch branch, double[] values)
    {
        Task<bool>[] others = [.. branch.Above.Skip(1).Select(b => Task.Run(() => Factor(b, values)))];
        var all = branch.Above.Count == 0 || Factor(branch.Above[0], values);
        foreach (var other in others)
            all &= other.Result;
        return all && FactorRange(values, branch.From, branch.To, branch.Stack);
    }

    private bool FactorRange(double[] values, int from, int to, double[] stack)
    {
        long top = 0;
        for (var f = from; f < to; f++)
        {
            var (pivots, rows, rest) = (_tree.Pivots(f), _tree.Rows(f), _tree.Rest(f));
            var panel = _factor.AsSpan((int)_tree.PanelAt[f], FrontKernel.Padded(pivots) * rows);
            var square = stack.AsSpan((int)top, rest * rest);
            panel.Clear();
            square.Clear();
            Enter(values, f, panel, rows);
            foreach (var child in _tree.Children[f])
                Gather(child, panel, rows, pivots, square, rest);
            if (!FrontKernel.Factor(panel, rows, pivots))
                return false;
            if (rest > 0)
                FrontKernel.Reduce(panel, rows, pivots, square, rest);
            var bottom = top;
            foreach (var child in _tree.Children[f])
                bottom = _rest[child].Stack == stack ? Math.Min(bottom, _rest[child].At) : bottom;
            if (bottom < top)
                square.CopyTo(stack.AsSpan((int)bottom));
            _rest[f] = (stack, bottom);
            top = bottom + (rest * rest);
        }

        return true;
    }

    private void Enter(double[] values, int front, Span<double> panel, int rows)
    {
        for (var e = _tree.EntryStart[front]; e < _tree.EntryStart[front + 1]; e++)
        {
            var (block, row, column) = _tree.Entries[e];
            var transpose = block < 0;
            var v = 4 * (transpose ? ~block : block);
            var at = (2 * column * rows) + (2 * row);
            panel[at] = values[v];
            panel[at + 1] = values[v + (transpose ? 1 : 2)];
            panel[at + rows] = values[v + (transpose ? 2 : 1)];
            panel[at + rows + 1] = values[v + 3];
        }
    }

    /// <summary>Adds what a child hands up.</summary>
    private void Gather(int child, Span<double> panel, int rows, int pivots, Span<double> square, int rest)
    {
        var into = _tree.InParent[child];
        var size = _tree.Rest(child);
        var (stack, start) = _rest[child];
        var source = stack.AsSpan((int)start, size * size);
        for (var j = 0; j < into.Length; j++)
        {
            var column = 2 * into[j];
            var own = column < pivots;
            var shift = own ? 0 : pivots;
            var length = own ? rows : rest;
            var target = own ? panel.Slice(column * rows, 2 * rows) : square.Slice((column - pivots) * rest, 2 * rest);
            var left = source.Slice(2 * j * size, 2 * size);
            for (var i = j; i < into.Length; i++)
            {
                var row = (2 * into[i]) - shift;
                target[row] += left[2 * i];
                target[row + 1] += left[(2 * i) + 1];
                target[length + row] += left[size + (2 * i)];
                target[length + row + 1] += left[size + (2 * i) + 1];
            }
        }
    }

    private void Down(int f, double[] x, double[] work)
    {
        var (pivots, rows) = (_tree.Pivots(f), _tree.Rows(f));
        var border = _tree.Border[f];
        var panel = _factor.AsSpan((int)_tree.PanelAt[f], pivots * rows);
        var own = x.AsSpan(2 * _tree.Start[f], pivots);
        var local = work.AsSpan(0, rows);
        own.CopyTo(local);
        local[pivots..].Clear();
        for (var k = 0; k < pivots; k++)
        {
            var column = panel.Slice(k * rows, rows);
            var value = local[k] / column[k];
            own[k] = value;
            DenseRow.AddTimes(local[(k + 1)..], column[(k + 1)..], -value);
        }

        for (var i = 0; i < border.Length; i++)
        {
            x[2 * border[i]] += local[pivots + (2 * i)];
            x[(2 * border[i]) + 1] += local[pivots + (2 * i) + 1];
        }
    }

    private void Up(int f, double[] x, double[] work)
    {
        var (pivots, rows) = (_tree.Pivots(f), _tree.Rows(f));
        var border = _tree.Border[f];
        var panel = _factor.AsSpan((int)_tree.PanelAt[f], pivots * rows);
        var own = x.AsSpan(2 * _tree.Start[f], pivots);
        var local = work.AsSpan(0, rows);
        local[pivots..].Clear();
        for (var i = 0; i < border.Length; i++)
            MemoryMarshal.CreateSpan(ref x[2 * border[i]], 2).CopyTo(local[(pivots + (2 * i))..]);
        for (var k = pivots - 1; k >= 0; k--)
        {
            var column = panel.Slice(k * rows, rows);
            local[k] = (own[k] - DenseRow.Dot(local[(k + 1)..], column[(k + 1)..])) / column[k];
        }

        local[..pivots].CopyTo(own);
    }
}
