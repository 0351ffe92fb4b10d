using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Pins;

/// <summary>Puts marks along the edges of a pinned outline by a spacing rule, on stitches where they are counted.</summary>
public sealed class MarkPlacer
{
    private const double Contact = 1e-6;
    private readonly Outline _pinned;
    private readonly IReadOnlyList<EdgeTreatment> _edges;
    private readonly SpacingRule _rule;
    private readonly MirrorPairing? _mirror;
    private readonly List<(int Edge, double Fraction)> _forced;

    /// <summary>A placer for one outline.</summary>
    /// <param name="pinned">The pinned outline.</param>
    /// <param name="edges">What was said of its edges.</param>
    /// <param name="rule">The spacing rule.</param>
    /// <param name="mirror">Its symmetry, or null.</param>
    /// <param name="anchor">The anchor, whose place gets a mark unless it is a whole edge.</param>
    public MarkPlacer(Outline pinned, IReadOnlyList<EdgeTreatment> edges, SpacingRule rule, MirrorPairing? mirror, Anchor anchor)
    {
        ArgumentNullException.ThrowIfNull(anchor);
        (_pinned, _edges, _rule, _mirror) = (pinned, edges, rule, mirror);
        _forced = anchor is { Kind: AnchorKind.Corner or AnchorKind.MiddleOfEdge, Place: { } place } ? [place] : [];
        if (mirror is not null)
            _forced.AddRange([.. _forced.Select(Mirrored)]);
    }

    /// <summary>The marks in order round the outline from its first corner.</summary>
    public IReadOnlyList<EdgePoint> Place()
    {
        var n = _pinned.Edges.Count;
        var runs = EdgeRun.Of(_pinned, IsForcedCorner, ClosedStart());
        HashSet<(int Edge, double Fraction)> places = [];
        HashSet<int> done = [];
        for (var r = 0; r < runs.Count; r++)
        {
            var run = runs[r];
            if (!done.Add(r))
                continue;
            var partner = _mirror is null ? -1 : runs.ToList().FindIndex(o => o.Edges.Contains(_mirror.Partner[run.Edges[0]]));
            var found = Along(run, partner == r).Select(run.Locate).Select(Snapped).ToList();
            places.UnionWith(found.Select(Normal));
            if (partner >= 0 && partner != r)
            {
                done.Add(partner);
                places.UnionWith(found.Select(Mirrored));
            }
        }

        places.UnionWith(Enumerable.Range(0, n).Where(IsForcedCorner).Select(c => (c, 0.0)));
        return [.. places.Select(p => new EdgePoint(p.Edge, p.Fraction, Count(p))).OrderBy(p => p.Edge).ThenBy(p => p.Fraction)];
    }

    private bool IsForcedCorner(int corner)
    {
        var n = _pinned.Edges.Count;
        return !_pinned.Corners[corner].Smooth || Loose(corner) || Loose((corner + n - 1) % n);
        bool Loose(int edge) => _edges[edge].Hold == Holding.None;
    }

    /// <summary>A ring without forced corners starts on the axis if there is one, else at the anchor.</summary>
    private (int Edge, double Fraction) ClosedStart()
    {
        if (_mirror is null)
            return _forced.Count > 0 ? _forced[0] : (0, 0);
        var n = _pinned.Edges.Count;
        var across = Enumerable.Range(0, n).Where(i => _mirror.Partner[i] == i).Select(i => (Edge: i, Fraction: 0.5));
        var corners = Enumerable.Range(0, n).Where(i => _mirror.Partner[i] == (i + n - 1) % n).Select(i => (Edge: i, Fraction: 0.0));
        var onAxis = across.Concat(corners).ToList();
        return onAxis.Find(_forced.Contains) is var hit && _forced.Contains(hit) ? hit : onAxis[0];
    }

    /// <summary>Positions of all marks inside a run (both ends of an open one left out, the start of a closed one in).</summary>
    private List<double> Along(EdgeRun run, bool isOwnMirror)
    {
        List<double> positions = run.IsClosed ? [0] : [];
        if (run.Edges.Any(e => _edges[e].Hold == Holding.None))
            return [.. positions.Concat(ForcedIn(run))];
        var zones = Zones(run, isOwnMirror);
        for (var z = 1; z < zones.Count; z++)
        {
            if (z > 1)
                positions.Add(zones[z - 1]);
            var middle = run.Locate((zones[z - 1] + zones[z]) / 2);
            var centred = isOwnMirror && Math.Abs(zones[z - 1] + zones[z] - run.Length) < Contact;
            positions.AddRange(Fill(run, zones[z - 1], zones[z], _rule.At(middle.Edge, middle.Fraction), centred));
        }

        return isOwnMirror ? Symmetric(positions, run.Length, run.IsClosed) : positions;
    }

    private IEnumerable<double> ForcedIn(EdgeRun run) =>
        _forced.Select(f => run.PositionOf(f.Edge, f.Fraction)).OfType<double>().Where(p => p > Contact && p < run.Length - Contact).Distinct();

    /// <summary>Limits of the stretches of even spacing: the run's ends, forced marks, corner stretches, edges whose rule differs.</summary>
    private List<double> Zones(EdgeRun run, bool isOwnMirror)
    {
        List<double> limits = [0, run.Length, .. ForcedIn(run)];
        if (!run.IsClosed)
        {
            if (!_pinned.Corners[run.Edges[0]].Smooth)
                limits.Add(_rule.FullMm);
            if (!_pinned.Corners[(run.Edges[^1] + 1) % _pinned.Corners.Count].Smooth)
                limits.Add(run.Length - _rule.FullMm);
            if (run.Length < 2 * _rule.FullMm)
                limits.RemoveAll(l => l > 0 && l < run.Length && !ForcedIn(run).Contains(l));
        }

        for (var i = 1; i < run.Edges.Count; i++)
        {
            if (_rule.OnEdge(run.Edges[i - 1]) != _rule.OnEdge(run.Edges[i]) && run.PositionOf(run.Edges[i], 0) is { } change)
                limits.Add(change);
        }

        List<double> zones = [];
        foreach (var limit in limits.Order())
        {
            var at = limit < run.Length / 2 || !isOwnMirror ? OnStitch(run, limit) : run.Length - OnStitch(run, run.Length - limit);
            if (isOwnMirror && Math.Abs(limit - (run.Length / 2)) < Contact)
                at = limit;
            if (zones.Count == 0 || at > zones[^1] + Contact)
                zones.Add(at);
        }

        return zones;
    }

    /// <summary>Even places inside a stretch, as few as keep every gap within the limit once they lie on stitches.</summary>
    private List<double> Fill(EdgeRun run, double from, double to, double limit, bool isCentred)
    {
        List<double> places = [];
        var least = Math.Max(1, (int)Math.Ceiling(((to - from) / limit) - Contact));
        for (var gaps = least; gaps <= 4 * least + 4; gaps++)
        {
            if (isCentred && gaps % 2 == 0 && Math.Abs(OnStitch(run, (from + to) / 2) - ((from + to) / 2)) > Contact)
                continue;
            places = [.. Enumerable.Range(1, gaps - 1)
                .Select(k => from + ((to - from) * k / gaps))
                .Select(p => isCentred && p > run.Length / 2 ? run.Length - OnStitch(run, run.Length - p) : OnStitch(run, p))
                .Where(p => p > from + Contact && p < to - Contact).Distinct()];
            double[] all = [from, .. places, to];
            if (Enumerable.Range(1, all.Length - 1).All(i => all[i] - all[i - 1] <= limit + Contact))
                break;
        }

        return places;
    }

    private static List<double> Symmetric(List<double> positions, double length, bool isClosed)
    {
        var first = positions.Where(p => p < (length / 2) - Contact && !(isClosed && p == 0)).ToList();
        var middle = positions.Where(p => Math.Abs(p - (length / 2)) <= Contact).Select(_ => length / 2).Take(1);
        List<double> start = isClosed ? [0] : [];
        return [.. start, .. first, .. middle, .. first.Select(p => length - p).Reverse()];
    }

    private double OnStitch(EdgeRun run, double position)
    {
        if (position <= 0 || position >= run.Length)
            return Math.Clamp(position, 0, run.Length);
        var (edge, fraction) = run.Locate(position);
        return _edges[edge].Count is { } n ? run.PositionOf(edge, Math.Round(fraction * n, MidpointRounding.AwayFromZero) / n) ?? position : position;
    }

    /// <summary>The fraction as the exact quotient of stitches (half ones for a forced middle), so that equal places are equal numbers.</summary>
    private (int Edge, double Fraction) Snapped((int Edge, double Fraction) place)
    {
        if (_edges[place.Edge].Count is { } n)
            return (place.Edge, Math.Round(place.Fraction * 2 * n) / (2 * n));
        return (place.Edge, Math.Round(place.Fraction, 12));
    }

    private (int Edge, double Fraction) Normal((int Edge, double Fraction) place) =>
        place.Fraction >= 1 ? ((place.Edge + 1) % _pinned.Edges.Count, 0) : place;

    private (int Edge, double Fraction) Mirrored((int Edge, double Fraction) place) => Normal((_mirror!.Partner[place.Edge], 1 - place.Fraction));

    private double? Count((int Edge, double Fraction) place) =>
        _edges[place.Edge].Count is { } n ? Math.Round(place.Fraction * n * 2) / 2 : null;
}
