using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Pins.Combs;
using BlockingTemplates.Engine.Pins.Wires;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Pins;

/// <summary>What holds the edges that are not held by single pins alone: wires and combs, placed edge by edge.</summary>
/// <remarks>Made anew for each placing: the wires at hand are dealt out once, the longest edge first.</remarks>
public sealed class EdgeHolds
{
    private readonly WirePlanner _planner;
    private readonly SpacingRule _rule;
    private readonly SpacingProfile? _profile;
    private readonly double? _leastMm;
    private readonly Dictionary<int, IReadOnlyList<(double LengthMm, bool Owned)>> _dealt = [];
    private readonly SortedDictionary<int, WiredEdge> _wired = [];

    /// <summary>Deals out the wires at hand.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="pinned">Its pinned outline.</param>
    /// <param name="settings">How the maker wants it held.</param>
    /// <param name="rule">The spacing rule of single pins.</param>
    /// <param name="mirror">The symmetry that the marks keep, or null.</param>
    /// <param name="profile">How wide gaps may be by the cloth, or null: then by the rule.</param>
    /// <param name="pulls">The pull on wired edges as computed, by edge, or null.</param>
    public EdgeHolds(
        Piece piece, Outline pinned, PinSettings settings, SpacingRule rule, MirrorPairing? mirror, SpacingProfile? profile = null, IReadOnlyDictionary<int, EdgePull>? pulls = null)
    {
        ArgumentNullException.ThrowIfNull(piece);
        ArgumentNullException.ThrowIfNull(pinned);
        (_planner, _rule, _profile) = (new(piece, pinned, settings, pulls), rule, profile);
        // Where the cloth was seen at rest, marks may stand as close as is allowed before a wire counts as too limp to save any; else as close as single pins.
        _leastMm = profile is null && pulls is null ? null : settings.MinSpacing.Millimetres;
        var rack = new WireRack(settings.Wires);
        foreach (var edge in Enumerable.Range(0, piece.Edges.Count).Where(e => piece.Edges[e].HeldBy == Holding.Wire).OrderByDescending(e => Math.Round(pinned.Edges[e].Curve.Length, 3)))
        {
            var partner = mirror?.Partner[edge] ?? edge;
            if (_dealt.ContainsKey(edge))
                continue;
            _dealt[edge] = _planner.Lengths(edge, rack, partner == edge ? 1 : 2);
            _dealt[partner] = _dealt[edge];
        }
    }

    /// <summary>The wired edges placed so far, by edge.</summary>
    public IReadOnlyCollection<WiredEdge> Wired => _wired.Values;

    /// <summary>What stands inside a run, or null where single pins alone hold it.</summary>
    /// <param name="stitches">Where marks may stand on the run.</param>
    /// <param name="forced">Places that get a mark.</param>
    /// <param name="pins">Where single pins would stand, given places that must have one.</param>
    /// <param name="partner">The edge that mirrors the run's, itself where it is its own mirror, or null.</param>
    public IReadOnlyList<HeldPlace>? Inside(RunStitches stitches, IReadOnlyList<double> forced, Func<IEnumerable<double>, IReadOnlyList<double>> pins, int? partner)
    {
        ArgumentNullException.ThrowIfNull(stitches);
        ArgumentNullException.ThrowIfNull(pins);
        var edge = stitches.Run.Edges[0];
        switch (stitches.Edges[edge].Treatment.HeldBy)
        {
            case Holding.Wire:
                var wired = _planner.On(stitches, _dealt[edge], forced, pins, _leastMm ?? _rule.OnEdge(edge));
                _wired[edge] = wired;
                if (partner is { } other && other != edge)
                    _wired[other] = wired.Mirrored(other, stitches.Run.Length);
                return [.. wired.Marks.Skip(1).SkipLast(1).Select(m => new HeldPlace(m, PinKind.Wire))];
            case Holding.Comb:
                return CombsOf(edge, stitches).Places(pins(forced), forced);
            default:
                return null;
        }
    }

    private CombSpacing CombsOf(int edge, RunStitches stitches) =>
        new(_planner.Pinned.Edges[edge].Curve, stitches, at => GapAt(edge, at), _planner.Settings.Combs, _planner.Settings.Scallop.Millimetres);

    /// <summary>Widest gap between single pins about a place of an edge.</summary>
    private double GapAt(int edge, double fraction) => _profile is { } profile ? profile.At(profile.ArcOf(edge, fraction)) : _rule.At(edge, fraction);
}
