using BlockingTemplates.Engine.Pieces;

namespace BlockingTemplates.Engine.Pins;

/// <summary>Where the marks of an edge stand that has them at its points, or at every so many stitches.</summary>
internal static class SetPlaces
{
    /// <summary>Fractions of the pinned edge, increasing, its corners left out.</summary>
    /// <param name="edge">The edge; one whose marks stand where the maker said.</param>
    /// <param name="isOwnMirror">Whether it is symmetric about its middle: stitches are then counted off from both its corners.</param>
    public static IEnumerable<double> On(EdgePlan edge, bool isOwnMirror) => edge.Treatment switch
    {
        { Points: { } points } => Enumerable.Range(1, (2 * points.Count) - 1)
            .Where(k => k % 2 == 1 || points.Valleys == Valleys.Pinned)
            .Select(k => edge.Match.PinnedAt(k / (2.0 * points.Count))),
        { Count: { } count, Every: { } every } => Stitches(count, every, isOwnMirror).Select(k => edge.Match.PinnedAt((double)k / count)),
        _ => [],
    };

    /// <summary>Whether a smooth corner before or after the edge gets a mark of its own.</summary>
    public static bool HoldsSmoothCorners(EdgeTreatment edge) => edge is not { Points.Valleys: Valleys.Free };

    private static IEnumerable<int> Stitches(int count, int every, bool isOwnMirror)
    {
        if (!isOwnMirror)
            return Enumerable.Range(1, (count - 1) / every).Select(k => k * every);
        List<int> half = [.. Enumerable.Range(1, count / 2 / every).Select(k => k * every)];
        var last = half.Count > 0 ? half[^1] : 0;
        // What is left over lies in the middle; where it is more than one step it is shared out in two or, if odd, in three.
        var over = count - (2 * last);
        if (over > every)
            half.Add(over % 2 == 0 ? count / 2 : last + ((over + 1) / 3));
        return half.Concat(half.Select(k => count - k).Reverse()).Distinct();
    }
}
