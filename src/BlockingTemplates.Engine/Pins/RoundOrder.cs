using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Pins;

/// <summary>The order in which marks are pinned: rounds that walk along the edge.</summary>
/// <remarks>
/// Round 1: anchors. Round 2: corners, opposite ones in turn. Each later round puts a mark into every gap wider than
/// half the widest (of those that hold unset marks) and runs once round from the anchor; once no gap holds more than three unset marks, the last round
/// fills each edge in one walk. With neither anchor nor corner, round 2 is the first place. Common practice (centre and corners first, then halve each gap), no source.
/// </remarks>
public static class RoundOrder
{
    private const int LastRoundHolds = 3;

    /// <summary>Lengths this near are the same, whatever the last digit of a sum says.</summary>
    private const double SameLengthMm = 1e-6;

    /// <summary>Round and number of every place.</summary>
    /// <param name="positions">Arc length round the outline of every place, increasing, in millimetres.</param>
    /// <param name="round">Length all round, in millimetres.</param>
    /// <param name="points">Where each place lies.</param>
    /// <param name="isAnchor">Whether it is an anchor.</param>
    /// <param name="isCorner">Whether it is a corner.</param>
    public static IReadOnlyList<(int Round, int Number)> Of(
        IReadOnlyList<double> positions, double round, IReadOnlyList<Point> points, IReadOnlyList<bool> isAnchor, IReadOnlyList<bool> isCorner)
    {
        ArgumentNullException.ThrowIfNull(positions);
        var n = positions.Count;
        var order = new List<int>();
        var rounds = new int[n];
        var current = 0;
        void Set(IEnumerable<int> places)
        {
            current++;
            foreach (var p in places)
            {
                rounds[p] = current;
                order.Add(p);
            }
        }

        // The walk starts at the first mark of the anchor (an anchored edge may run through place 0), else at the first corner.
        var isAnchored = isAnchor.Contains(true);
        var first = Enumerable.Range(0, n).FirstOrDefault(i => isAnchored ? isAnchor[i] && !isAnchor[(i + n - 1) % n] : isCorner[i]);
        int[] walk = [.. Enumerable.Range(0, n).Select(i => (first + i) % n)];
        Set(walk.Where(i => isAnchor[i]));
        var corners = Corners([.. walk.Where(i => isCorner[i] && rounds[i] == 0)], points, isAnchored ? order[^1] : null);
        Set(order.Count + corners.Count > 0 ? corners : [first]);
        while (order.Count < n)
        {
            var gaps = Gaps(walk, rounds, positions, round);
            if (gaps.TrueForAll(g => g.Unset.Count <= LastRoundHolds))
            {
                Set(walk.Where(i => rounds[i] == 0));
                break;
            }

            var widest = gaps.Max(g => g.Width);
            Set(gaps.Where(g => g.Width > (widest / 2) + SameLengthMm).Select(g => Middle(g.Width, g.Unset, u => Away(positions, round, first, u))).ToList());
        }

        var numbers = new int[n];
        for (var i = 0; i < n; i++)
            numbers[order[i]] = i + 1;
        return [.. Enumerable.Range(0, n).Select(i => (rounds[i], numbers[i]))];
    }

    /// <summary>The unset mark nearest the middle of its gap; of two equally near, the one nearer the anchor round the outline.</summary>
    private static int Middle(double width, List<(int Place, double Along)> unset, Func<int, double> away) =>
        unset.OrderBy(u => Math.Round(Math.Abs(u.Along - (width / 2)), 6)).ThenBy(u => away(u.Place)).First().Place;

    private static double Away(IReadOnlyList<double> positions, double round, int anchor, int place)
    {
        var ahead = (positions[place] - positions[anchor] + round) % round;
        return Math.Round(Math.Min(ahead, round - ahead), 6);
    }

    private static List<int> Corners(List<int> left, IReadOnlyList<Point> points, int? from)
    {
        List<int> order = [];
        while (left.Count > 0)
        {
            var next = from is { } last ? left.MaxBy(c => Math.Round(points[c].DistanceTo(points[last]), 3)) : left[0];
            left.Remove(next);
            order.Add(next);
            from = next;
        }

        return order;
    }

    /// <summary>The gaps that hold unset marks, in order of the walk, whose first place is set.</summary>
    private static List<(double Width, List<(int Place, double Along)> Unset)> Gaps(int[] walk, int[] rounds, IReadOnlyList<double> positions, double round)
    {
        List<(double Width, List<(int Place, double Along)> Unset)> gaps = [];
        var unset = new List<(int Place, double Along)>();
        var from = positions[walk[0]];
        for (var k = 1; k <= walk.Length; k++)
        {
            var place = walk[k % walk.Length];
            var along = (positions[place] - from + round) % round;
            if (rounds[place] == 0)
            {
                unset.Add((place, along));
                continue;
            }

            if (unset.Count > 0)
                gaps.Add((along == 0 ? round : along, unset));
            unset = [];
            from = positions[place];
        }

        return gaps;
    }
}
