using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Pins;

/// <summary>Puts marks along the edges of a pinned outline by a spacing rule, on stitches where they are counted.</summary>
public sealed class MarkPlacer
{
    /// <summary>Fractions this near are one place, whatever their last digits say.</summary>
    private const double SameFraction = 1e-9;

    private readonly Outline _pinned;
    private readonly IReadOnlyList<EdgePlan> _edges;
    private readonly SpacingRule _rule;
    private readonly MirrorPairing? _mirror;
    private readonly SpacingProfile? _profile;
    private readonly Func<int, int> _fewer;
    private readonly HashSet<(int Edge, double Fraction)> _forced = [];

    /// <summary>A placer for one outline.</summary>
    /// <param name="pinned">The pinned outline.</param>
    /// <param name="edges">What is known of its edges.</param>
    /// <param name="rule">The spacing rule.</param>
    /// <param name="mirror">Its symmetry, or null.</param>
    /// <param name="anchor">The anchor, whose place (of a whole edge: its middle, unless nothing holds it or its marks stand where the maker said) gets a mark, between two stitches if it lies there.</param>
    /// <param name="profile">How wide gaps may be by the cloth, or null: then by the rule.</param>
    /// <param name="fewer">How many gaps fewer than the profile asks for, for the run of edges that an edge belongs to; none unless given.</param>
    public MarkPlacer(
        Outline pinned, IReadOnlyList<EdgePlan> edges, SpacingRule rule, MirrorPairing? mirror, Anchor anchor, SpacingProfile? profile = null, Func<int, int>? fewer = null)
    {
        ArgumentNullException.ThrowIfNull(anchor);
        (_profile, _fewer) = (profile, fewer ?? (_ => 0));
        (_pinned, _edges, _rule, _mirror) = (pinned, edges, rule, mirror);
        if (anchor.Place is not { } place || (anchor.Kind == AnchorKind.WholeEdge && edges[place.Edge].Treatment is { Hold: Holding.None } or { HasSetPlaces: true }))
            return;
        _forced.Add(place);
        if (mirror is not null)
            _forced.Add(Mirrored(place));
    }

    /// <summary>The marks in order round the outline from its first corner.</summary>
    public IReadOnlyList<EdgePoint> Place()
    {
        var runs = EdgeRun.Of(_pinned, EndsRun, ClosedStart());
        HashSet<(int Edge, double Fraction)> places = [.. Enumerable.Range(0, _edges.Count).Where(HasMark).Select(c => (c, 0.0))];
        HashSet<EdgeRun> done = [];
        foreach (var run in runs)
        {
            if (!done.Add(run))
                continue;
            var partner = _mirror is null ? null : runs.First(o => o.Edges.Contains(_mirror.Partner[run.Edges[0]]));
            var forced = _forced.Select(f => run.PositionOf(f.Edge, f.Fraction)).OfType<double>();
            var found = Inside(run, [.. forced], partner == run).Select(Exact).ToList();
            places.UnionWith(found);
            if (partner is not null && done.Add(partner))
                places.UnionWith(found.Select(Mirrored));
        }

        return [.. places.Select(p => new EdgePoint(p.Edge, p.Fraction, Count(p))).OrderBy(p => p.Edge).ThenBy(p => p.Fraction)];
    }

    private IEnumerable<(int Edge, double Fraction)> Inside(EdgeRun run, IReadOnlyList<double> forced, bool isOwnMirror)
    {
        if (run.Edges is [var only] && _edges[only].Treatment.HasSetPlaces)
            return SetPlaces.On(_edges[only], isOwnMirror).Select(f => (only, f)).Concat(forced.Select(run.Locate));
        var places = _profile is { } profile
            ? new StitchSpread(run, _edges, profile, forced, isOwnMirror, _fewer(run.Edges[0])).Places()
            : new EvenSpacing(run, _edges, _rule, forced, isOwnMirror).Places();
        return places.Select(run.Locate);
    }

    /// <summary>Whether the even spacing ends at a corner: one that is not smooth, or beside an edge that has none.</summary>
    private bool EndsRun(int corner)
    {
        return !_pinned.Corners[corner].Smooth || IsOfItsOwn(_edges[corner].Treatment) || IsOfItsOwn(Before(corner));
        bool IsOfItsOwn(EdgeTreatment edge) => edge.Hold == Holding.None || edge.HasSetPlaces;
    }

    /// <summary>Whether a corner has a mark whatever lies about it; a smooth one between points whose valleys are free has none.</summary>
    private bool HasMark(int corner) =>
        EndsRun(corner) && (!_pinned.Corners[corner].Smooth || SetPlaces.HoldsSmoothCorners(_edges[corner].Treatment) || SetPlaces.HoldsSmoothCorners(Before(corner)));

    private EdgeTreatment Before(int corner) => _edges[(corner + _edges.Count - 1) % _edges.Count].Treatment;

    /// <summary>A ring without forced corners starts at the anchor; if it is symmetric, on its axis: at the anchor there, else on a stitch there.</summary>
    private (int Edge, double Fraction) ClosedStart()
    {
        if (_mirror is null)
            return _forced.FirstOrDefault();
        var middles = Enumerable.Range(0, _edges.Count).Where(i => _mirror.Partner[i] == i).Select(i => (Edge: i, Fraction: 0.5));
        var corners = Enumerable.Range(0, _edges.Count).Where(i => Mirrored((i, 0)) == (i, 0)).Select(i => (Edge: i, Fraction: 0.0));
        return middles.Concat(corners).OrderBy(p => _forced.Contains(p) ? 0 : 1).ThenBy(p => Count(p) is { } count && count != Math.Floor(count) ? 1 : 0).First();
    }

    /// <summary>The place with its fraction as the quotient of whole stitches (half ones for a forced middle) or to 12 decimals, so that equal places are equal numbers.</summary>
    private (int Edge, double Fraction) Exact((int Edge, double Fraction) place)
    {
        var near = _forced.FirstOrDefault(f => f.Edge == place.Edge && Math.Abs(f.Fraction - place.Fraction) < SameFraction, place);
        if (near != place)
            return near;
        var edge = _edges[place.Edge];
        var fraction = edge.Treatment is { Count: { } n, Points: null } ? edge.Match.PinnedAt(Math.Min(Math.Round(edge.Match.ShareAt(place.Fraction) * 2 * n) / (2 * n), 1)) : Math.Round(place.Fraction, 12);
        return Normal((place.Edge, fraction));
    }

    private (int Edge, double Fraction) Normal((int Edge, double Fraction) place) =>
        place.Fraction >= 1 ? ((place.Edge + 1) % _edges.Count, 0) : place;

    private (int Edge, double Fraction) Mirrored((int Edge, double Fraction) place) => Normal((_mirror!.Partner[place.Edge], 1 - place.Fraction));

    private double? Count((int Edge, double Fraction) place) =>
        _edges[place.Edge].Treatment.Count is { } n ? Math.Round(_edges[place.Edge].Match.ShareAt(place.Fraction) * n * 2) / 2 : null;
}
