using BlockingTemplates.Engine.Pieces;

namespace BlockingTemplates.Engine.Pins;

/// <summary>Places along one run: evenly spaced, as few as the spacing rule allows, on stitches where they are counted.</summary>
/// <remarks>All places are positions: arc length from the run's start, in millimetres.</remarks>
public sealed class EvenSpacing
{
    private const double Contact = 1e-6;

    private readonly EdgeRun _run;
    private readonly IReadOnlyList<EdgePlan> _edges;
    private readonly SpacingRule _rule;
    private readonly List<double> _forced;
    private readonly bool _isOwnMirror;
    private readonly RunStitches _stitches;

    /// <summary>The spacing of a run.</summary>
    /// <param name="run">The run.</param>
    /// <param name="edges">What is known of all edges.</param>
    /// <param name="rule">The spacing rule.</param>
    /// <param name="forced">Places inside the run that get a mark wherever they lie, between stitches too.</param>
    /// <param name="isOwnMirror">Whether the run is symmetric about its middle, and its places shall be.</param>
    public EvenSpacing(EdgeRun run, IReadOnlyList<EdgePlan> edges, SpacingRule rule, IEnumerable<double> forced, bool isOwnMirror)
    {
        ArgumentNullException.ThrowIfNull(run);
        (_run, _edges, _rule, _isOwnMirror) = (run, edges, rule, isOwnMirror);
        _stitches = new(run, edges, isOwnMirror);
        _forced = [.. forced.Where(p => p > Contact && p < run.Length - Contact).Order()];
    }

    /// <summary>All places inside the run, increasing; its ends are left out, but the start of a run that goes all round is in.</summary>
    public IReadOnlyList<double> Places()
    {
        List<double> places = _run.IsClosed ? [0] : [];
        if (_run.Edges.Any(e => _edges[e].Treatment.Hold == Holding.None))
            return [.. places, .. _forced];
        var limits = Limits();
        for (var i = 1; i < limits.Count; i++)
        {
            if (i > 1)
                places.Add(limits[i - 1]);
            places.AddRange(Fill(limits[i - 1], limits[i]));
        }

        return _isOwnMirror ? Symmetric(places) : places;
    }

    /// <summary>Limits of the stretches of even spacing: the run's ends, forced places, ends of the corner stretches, edges whose rule differs.</summary>
    private List<double> Limits()
    {
        List<double> wanted = [.. CornerStretches()];
        for (var i = _run.IsClosed ? 0 : 1; i < _run.Edges.Count; i++)
        {
            var before = _run.Edges[i == 0 ? ^1 : i - 1];
            if (_rule.OnEdge(before) != _rule.OnEdge(_run.Edges[i]))
                wanted.Add(_run.PositionOf(_run.Edges[i], 0)!.Value);
        }

        List<double> limits = [];
        foreach (var at in wanted.Select(OnStitch).Concat(_forced).Append(0).Append(_run.Length).Order())
        {
            if (limits.Count == 0 || at > limits[^1] + Contact)
                limits.Add(at);
        }

        return limits;
    }

    /// <summary>Where the half spacing near corners ends; nowhere if it meets itself from both sides.</summary>
    private IEnumerable<double> CornerStretches()
    {
        if (_run.IsClosed)
            return [];
        var first = _rule.FullMm - _rule.Behind(_run.Edges[0], 0);
        var last = _run.Length - (_rule.FullMm - _rule.Ahead(_run.Edges[^1], 1));
        return Math.Max(first, 0) > Math.Min(last, _run.Length) + Contact ? [] : new[] { first, last }.Where(p => p > 0 && p < _run.Length);
    }

    /// <summary>Even places inside a stretch, as few as keep every gap within the limit (or down to one stitch) once they lie on stitches.</summary>
    private List<double> Fill(double from, double to)
    {
        var middle = _run.Locate((from + to) / 2);
        var limit = _rule.At(middle.Edge, middle.Fraction);
        var isCentred = _isOwnMirror && Math.Abs(from + to - _run.Length) < Contact;
        var isMiddleFree = !isCentred || Math.Abs(OnStitch((from + to) / 2) - ((from + to) / 2)) < Contact;
        var least = Math.Max(1, (int)Math.Ceiling(((to - from) / limit) - Contact));
        List<double> places = [];
        for (var gaps = least; gaps <= (4 * least) + 4; gaps++)
        {
            if (!isMiddleFree && gaps % 2 == 0)
                continue;
            places = [.. Enumerable.Range(1, gaps - 1)
                .Select(k => OnStitch(from + ((to - from) * k / gaps)))
                .Where(p => p > from + Contact && p < to - Contact).Distinct()];
            double[] all = [from, .. places, to];
            if (Enumerable.Range(1, all.Length - 1).All(i => all[i] - all[i - 1] <= limit + Contact || IsOneStitch(all[i - 1], all[i])))
                break;
        }

        return places;
    }

    private bool IsOneStitch(double from, double to) =>
        OnStitch((from + to) / 2) is var nearest && (nearest < from + Contact || nearest > to - Contact);

    private double OnStitch(double place) => _stitches.Nearest(place);

    private List<double> Symmetric(List<double> places)
    {
        var half = _run.Length / 2;
        var first = places.Where(p => p < half - Contact).ToList();
        var middle = places.Exists(p => Math.Abs(p - half) <= Contact) ? [half] : Array.Empty<double>();
        return [.. first, .. middle, .. first.Where(p => p > 0).Select(p => _run.Length - p).Reverse()];
    }
}
