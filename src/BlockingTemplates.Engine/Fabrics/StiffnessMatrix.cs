namespace BlockingTemplates.Engine.Fabrics;

/// <summary>A symmetric matrix of 2 by 2 blocks over the nodes of a mesh; unknown 2i is x of node i, 2i + 1 its y.</summary>
public sealed class StiffnessMatrix
{
    /// <summary>A matrix of zeros.</summary>
    public StiffnessMatrix(StiffnessPattern pattern)
    {
        ArgumentNullException.ThrowIfNull(pattern);
        Pattern = pattern;
        Values = new double[4 * pattern.Blocks];
    }

    /// <summary>Which blocks there are.</summary>
    public StiffnessPattern Pattern { get; }

    /// <summary>Number of unknowns.</summary>
    public int Unknowns => 2 * Pattern.Nodes;

    /// <summary>The blocks in the pattern's order, four values each: xx, xy, yx, yy (row node first).</summary>
    internal double[] Values { get; }

    /// <summary>Sets all entries to 0.</summary>
    public void Clear() => Array.Clear(Values);

    /// <summary>Adds a block for the couple of nodes (a, b), and its transpose for (b, a).</summary>
    /// <param name="a">Row node.</param>
    /// <param name="b">Column node; for b = a the block must be symmetric.</param>
    /// <param name="xx">Entry in row x of a, column x of b.</param>
    /// <param name="xy">Entry in row x of a, column y of b.</param>
    /// <param name="yx">Entry in row y of a, column x of b.</param>
    /// <param name="yy">Entry in row y of a, column y of b.</param>
    public void Add(int a, int b, double xx, double xy, double yx, double yy)
    {
        var at = 4 * Pattern.Place(a, b);
        if (a < b)
            (xy, yx) = (yx, xy);
        Values[at] += xx;
        Values[at + 1] += xy;
        Values[at + 2] += yx;
        Values[at + 3] += yy;
    }

    /// <summary>Takes unknowns out: their rows and columns become those of the unit matrix.</summary>
    /// <param name="fixedUnknown">True for each unknown to take out.</param>
    public void Fix(ReadOnlySpan<bool> fixedUnknown)
    {
        var start = Pattern.RowStart;
        var column = Pattern.Column;
        for (var i = 0; i < Pattern.Nodes; i++)
        {
            for (var k = start[i]; k < start[i + 1]; k++)
            {
                var j = column[k];
                for (var e = 0; e < 4; e++)
                {
                    var (row, col) = ((2 * i) + (e >> 1), (2 * j) + (e & 1));
                    if (fixedUnknown[row] || fixedUnknown[col])
                        Values[(4 * k) + e] = row == col ? 1 : 0;
                }
            }
        }
    }

    /// <summary>The product with a vector of as many numbers as unknowns.</summary>
    public double[] Times(ReadOnlySpan<double> x)
    {
        var y = new double[Unknowns];
        var start = Pattern.RowStart;
        var column = Pattern.Column;
        var v = Values;
        for (var i = 0; i < Pattern.Nodes; i++)
        {
            var (yx, yy) = (0.0, 0.0);
            var (ix, iy) = (x[2 * i], x[(2 * i) + 1]);
            for (var k = start[i]; k < start[i + 1]; k++)
            {
                var (j, at) = (2 * column[k], 4 * k);
                yx += (v[at] * x[j]) + (v[at + 1] * x[j + 1]);
                yy += (v[at + 2] * x[j]) + (v[at + 3] * x[j + 1]);
                if (j == 2 * i)
                    continue;
                y[j] += (v[at] * ix) + (v[at + 2] * iy);
                y[j + 1] += (v[at + 1] * ix) + (v[at + 3] * iy);
            }

            y[2 * i] += yx;
            y[(2 * i) + 1] += yy;
        }

        return y;
    }
}
