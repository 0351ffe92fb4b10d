using BlockingTemplates.Engine.Pieces;

namespace BlockingTemplates.Engine.Pins;

/// <summary>Places along one run that keep a spacing profile: as few as it allows on the stitches there are, shared out evenly.</summary>
/// <remarks>
/// All places are positions: arc length from the run's start, in millimetres. Going as far as allowed from place to place
/// takes the fewest (for a rule that adds up along the way, greedy is optimal); the same walk backward tells how early each
/// place may stand, and between the two each takes the stitch nearest to its even share.
/// </remarks>
public sealed class StitchSpread
{
    private const double Contact = 1e-6;
    private const double Loosen = 1.01;

    private readonly EdgeRun _run;
    private readonly IReadOnlyList<EdgePlan> _edges;
    private readonly List<double> _forced;
    private readonly bool _isOwnMirror;
    private readonly int _fewer;
    private readonly double[] _at;
    private readonly double[] _shares;
    private double _limit = 1;
    private int _leastGaps = 1;

    /// <summary>The spread of a run.</summary>
    /// <param name="run">The run.</param>
    /// <param name="edges">What is known of all edges.</param>
    /// <param name="profile">How wide gaps may be.</param>
    /// <param name="forced">Places inside the run that get a mark wherever they lie, between stitches too.</param>
    /// <param name="isOwnMirror">Whether the run is symmetric about its middle, and its places shall be.</param>
    /// <param name="fewer">How many gaps fewer than the profile asks for: all gaps are then let out by the same share.</param>
    public StitchSpread(EdgeRun run, IReadOnlyList<EdgePlan> edges, SpacingProfile profile, IEnumerable<double> forced, bool isOwnMirror, int fewer = 0)
    {
        ArgumentNullException.ThrowIfNull(run);
        ArgumentNullException.ThrowIfNull(profile);
        (_run, _edges, _isOwnMirror, _fewer) = (run, edges, isOwnMirror, fewer);
        _forced = [.. forced.Where(p => p > Contact && p < run.Length - Contact).Order()];
        (_at, _shares) = Table(profile);
    }

    /// <summary>All places inside the run, increasing; its ends are left out, but the start of a run that goes all round is in.</summary>
    public IReadOnlyList<double> Places()
    {
        List<double> first = _run.IsClosed ? [0] : [];
        if (_run.Edges.Any(e => _edges[e].Treatment.Hold == Holding.None))
            return [.. first, .. _forced];
        var places = Filled();
        var wanted = Math.Max(0, places.Count - _fewer);

        // Stitches may leave no limit that gives just the gaps wanted: the next wider one then gives too few.
        if (_fewer > 0 && _forced.Count == 0 && !_isOwnMirror)
            _leastGaps = wanted + 1;
        while (places.Count > wanted && _limit < 8)
        {
            _limit *= Loosen;
            places = Filled();
        }

        return [.. first, .. places];
    }

    private List<double> Filled()
    {
        List<double> places = [];
        var half = _run.Length / 2;
        double[] limits = [0, .. _forced, _run.Length];
        for (var i = 1; i < limits.Length; i++)
        {
            var (from, to) = (limits[i - 1], limits[i]);
            var isCentred = _isOwnMirror && Math.Abs(from + to - _run.Length) < Contact;
            if (_isOwnMirror && !isCentred && from >= half - Contact)
                break;
            places.AddRange(isCentred ? Centred(from, half) : Even(from, to));
            if (to < _run.Length)
                places.Add(to);
        }

        if (!_isOwnMirror)
            return places;
        var before = places.Where(p => p < half - Contact).ToList();
        var middle = places.Exists(p => Math.Abs(p - half) <= Contact) ? [half] : Array.Empty<double>();
        return [.. before, .. middle, .. before.Select(p => _run.Length - p).Reverse()];
    }

    /// <summary>Places between two, as few as the profile allows.</summary>
    private List<double> Even(double from, double to)
    {
        var gaps = Math.Max(_leastGaps, Gaps(from, to));
        return Walk(from, Back(to, from), gaps - 1, (Shares(to) - Shares(from)) / gaps);
    }

    /// <summary>Places up to the middle of a symmetric stretch: with a place there or with a gap across it, whichever takes fewer.</summary>
    private List<double> Centred(double from, double half)
    {
        var across = Math.Max(from, StitchAtLeast(Position(Shares(half) - (_limit / 2))));
        if (across > half - Contact)
            across = StitchBefore(half);
        var gapsBefore = across <= from + Contact ? 0 : Gaps(from, across);
        var gapAcross = Walk(from, across, gapsBefore, (Shares(half) - Shares(from)) / (gapsBefore + 0.5));
        if (Math.Abs(StitchAtLeast(half - Contact) - half) > 2 * Contact)
            return gapAcross;
        var gaps = Gaps(from, half);
        return 2 * gaps < (2 * gapsBefore) + 1 ? [.. Even(from, half), half] : gapAcross;
    }

    /// <summary>So many places after one, each the stitch nearest to its share within what the profile allows; the last not before a place.</summary>
    private List<double> Walk(double from, double lastNotBefore, int count, double step)
    {
        var earliest = new double[count];
        for (var k = count - 1; k >= 0; k--)
            earliest[k] = k == count - 1 ? lastNotBefore : Back(earliest[k + 1], from);
        List<double> places = [];
        var at = from;
        for (var k = 0; k < count; k++)
        {
            var farthest = Ahead(at, _run.Length);
            var wish = Nearest(Position(Shares(from) + ((k + 1) * step)));
            var next = Math.Min(Math.Max(wish, earliest[k]), farthest);
            if (next <= at + Contact)
                next = farthest;
            places.Add(next);
            at = next;
        }

        return places;
    }

    private int Gaps(double from, double to)
    {
        var gaps = 1;
        for (var at = Ahead(from, to); at < to - Contact; at = Ahead(at, to))
            gaps++;
        return gaps;
    }

    /// <summary>The farthest place a gap from one may reach, a stitch at least.</summary>
    private double Ahead(double from, double to)
    {
        var reach = Position(Shares(from) + (_limit * (1 + 1e-9)));
        if (reach >= to - Contact)
            return to;
        var stitch = StitchAtMost(reach);
        return Math.Min(to, stitch > from + Contact ? stitch : StitchAfter(from));
    }

    private double Back(double to, double from)
    {
        var reach = Position(Shares(to) - (_limit * (1 + 1e-9)));
        if (reach <= from + Contact)
            return from;
        var stitch = StitchAtLeast(reach);
        return Math.Max(from, stitch < to - Contact ? stitch : StitchBefore(to));
    }

    private double Nearest(double place)
    {
        var (below, above) = (StitchAtMost(place), StitchAtLeast(place));
        return place - below < above - place ? below : above;
    }

    private double StitchAtMost(double place) => OnStitch(place, x => Math.Floor(x + Contact));

    private double StitchAtLeast(double place) => OnStitch(place, x => Math.Ceiling(x - Contact));

    private double StitchAfter(double place) => OnStitch(place, x => Math.Floor(x + Contact) + 1, 1);

    private double StitchBefore(double place) => OnStitch(place, x => Math.Ceiling(x - Contact) - 1, -1);

    private double OnStitch(double place, Func<double, double> whole, int uncounted = 0)
    {
        var (edge, fraction) = _run.Locate(Math.Clamp(place - (uncounted < 0 ? 2 * Contact : 0), 0, _run.Length));
        if (_edges[edge] is not { Treatment.Count: { } count, Match: var match })
            return Math.Clamp(place + uncounted, 0, _run.Length);
        var found = _run.PositionOf(edge, match.PinnedAt(Math.Clamp(whole(match.ShareAt(fraction) * count) / count, 0, 1))) ?? place;

        // A run that goes all round ends where it starts.
        if (_run.IsClosed && Math.Abs(found - place) > _run.Length / 2)
            found += found < place ? _run.Length : -_run.Length;
        return Math.Clamp(found, 0, _run.Length);
    }

    private double Shares(double position) => Between(_at, _shares, position);

    private double Position(double shares) => Between(_shares, _at, shares);

    private static double Between(double[] from, double[] to, double value)
    {
        if (value <= from[0])
            return to[0];
        if (value >= from[^1])
            return to[^1];
        var i = Array.BinarySearch(from, value);
        if (i >= 0)
            return to[i];
        i = ~i;
        return to[i - 1] + ((to[i] - to[i - 1]) * (value - from[i - 1]) / (from[i] - from[i - 1]));
    }

    /// <summary>The integral of ds / spacing along the run, at places a millimetre or so apart.</summary>
    private (double[] At, double[] Shares) Table(SpacingProfile profile)
    {
        var steps = Math.Clamp((int)Math.Ceiling(_run.Length), 64, 20_000);
        var at = new double[steps + 1];
        var shares = new double[steps + 1];
        for (var i = 1; i <= steps; i++)
        {
            at[i] = _run.Length * i / steps;
            var (edge, fraction) = _run.Locate((at[i] + at[i - 1]) / 2);
            shares[i] = shares[i - 1] + ((at[i] - at[i - 1]) / profile.At(profile.ArcOf(edge, fraction)));
        }

        return (at, shares);
    }
}
