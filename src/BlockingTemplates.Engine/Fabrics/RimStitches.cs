namespace BlockingTemplates.Engine.Fabrics;

/// <summary>How stitches of edge lie on the rim nodes of a mesh.</summary>
internal static class RimStitches
{
    /// <summary>Groups of rim nodes that some stitch of a width, wherever it stands, lies on together.</summary>
    internal static List<int[]> Groups(TriangleMesh mesh, double widthMm)
    {
        var n = mesh.Rim.Count;
        var groups = new List<int[]>();
        for (var i = 0; i < n; i++)
        {
            // Nodes i to j carry one stitch if it can reach into both the stretch after i and the one before j.
            var count = 2;
            while (count < n && Arc(mesh, i + count - 1) - Arc(mesh, i + 1) < widthMm)
                count++;
            groups.Add([.. Enumerable.Range(i, count).Select(k => k % n)]);
        }

        return groups;
    }

    /// <summary>The nodes a stitch lies on and their parts in its mean place; parts sum to 1.</summary>
    internal static List<(int Node, double Part)> Parts(TriangleMesh mesh, int edge, double fraction, double widthMm)
    {
        var n = mesh.Rim.Count;
        if (n == 0)
            throw new ArgumentException("A mesh without a rim has no stitches to hold.");
        var middle = ArcOf(mesh, edge, fraction);
        var (from, to) = (middle - (widthMm / 2), middle + (widthMm / 2));
        var parts = new SortedDictionary<int, double>();
        for (var i = FirstBefore(mesh, from); Arc(mesh, i) < to; i++)
        {
            var (start, end) = (Arc(mesh, i), Arc(mesh, i + 1));
            var low = Math.Max(0, (from - start) / (end - start));
            var high = Math.Min(1, (to - start) / (end - start));
            var second = ((high * high) - (low * low)) / 2;
            var scale = (end - start) / widthMm;
            Add(i, ((high - low) - second) * scale);
            Add(i + 1, second * scale);
        }

        return [.. parts.Select(p => (p.Key, p.Value))];

        void Add(int i, double part)
        {
            var node = ((i % n) + n) % n;
            parts[node] = parts.GetValueOrDefault(node) + part;
        }
    }

    /// <summary>Arc length from the first corner to a fraction of an edge.</summary>
    internal static double ArcOf(TriangleMesh mesh, int edge, double fraction)
    {
        var start = EdgeStart(mesh, edge);
        return start + (fraction * (EdgeStart(mesh, edge + 1) - start));
    }

    private static double EdgeStart(TriangleMesh mesh, int edge)
    {
        var (low, high) = (0, mesh.Rim.Count);
        while (low < high)
        {
            var middle = (low + high) / 2;
            if (mesh.Rim[middle].Edge < edge)
                low = middle + 1;
            else
                high = middle;
        }

        return low < mesh.Rim.Count ? mesh.Rim[low].ArcMm : mesh.RimLengthMm;
    }

    /// <summary>Arc length of rim node i, counted on past the last and before the first.</summary>
    private static double Arc(TriangleMesh mesh, int i)
    {
        var n = mesh.Rim.Count;
        var turns = (int)Math.Floor((double)i / n);
        return mesh.Rim[i - (turns * n)].ArcMm + (turns * mesh.RimLengthMm);
    }

    private static int FirstBefore(TriangleMesh mesh, double arc)
    {
        var i = (int)Math.Floor(arc / mesh.RimLengthMm) * mesh.Rim.Count;
        var (low, high) = (i, i + mesh.Rim.Count);
        while (high - low > 1)
        {
            var middle = (low + high) / 2;
            if (Arc(mesh, middle) <= arc)
                low = middle;
            else
                high = middle;
        }

        return low;
    }
}
