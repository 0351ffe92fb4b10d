namespace BlockingTemplates.Engine.Measure;

/// <summary>Finds the known name that an unknown one was probably meant to be.</summary>
/// <remarks>
/// Names are compared without regard to case. A known name is near if the unknown one is its beginning (three letters or
/// more), or if at most a third of the longer name's letters (at least one) have to be put in, left out, changed or
/// swapped with their neighbour. Source of the distance: optimal string alignment, after Damerau, A technique for computer
/// detection and correction of spelling errors, Communications of the ACM 7 (1964), 171-176.
/// </remarks>
public static class NearestName
{
    private const int LongestName = 64;
    private const int ShortestBeginning = 3;

    /// <summary>The nearest known name (the first of equally near ones), or null if none is near.</summary>
    public static string? Of(string unknown, IEnumerable<string> known)
    {
        ArgumentNullException.ThrowIfNull(unknown);
        ArgumentNullException.ThrowIfNull(known);
        var wanted = unknown.Trim().ToUpperInvariant();
        if (wanted.Length is 0 or > LongestName)
            return null;
        string? best = null;
        var least = int.MaxValue;
        foreach (var name in known)
        {
            var upper = name.ToUpperInvariant();
            if (upper.Length is 0 or > LongestName)
                continue;
            var distance = Distance(wanted, upper);
            var isBeginning = wanted.Length >= ShortestBeginning && upper.StartsWith(wanted, StringComparison.Ordinal);
            var longer = Math.Max(wanted.Length, upper.Length);
            if ((isBeginning || distance <= Math.Max(1, longer / 3)) && distance < longer && distance < least)
            {
                best = name;
                least = distance;
            }
        }

        return best;
    }

    private static int Distance(string a, string b)
    {
        var rows = new int[a.Length + 1, b.Length + 1];
        for (var i = 0; i <= a.Length; i++)
            rows[i, 0] = i;
        for (var j = 0; j <= b.Length; j++)
            rows[0, j] = j;
        for (var i = 1; i <= a.Length; i++)
        {
            for (var j = 1; j <= b.Length; j++)
            {
                var changed = rows[i - 1, j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1);
                rows[i, j] = Math.Min(changed, Math.Min(rows[i - 1, j], rows[i, j - 1]) + 1);
                if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                    rows[i, j] = Math.Min(rows[i, j], rows[i - 2, j - 2] + 1);
            }
        }

        return rows[a.Length, b.Length];
    }
}
