using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Pins.Combs;
using BlockingTemplates.Engine.Pins.Wires;

namespace BlockingTemplates.Engine.Pins;

/// <summary>Compares pins, combs and wires edge by edge.</summary>
/// <remarks>
/// The way an edge is held now as it is planned; the others for that edge by itself, all that is owned at its disposal. Where the
/// cloth was asked, pins come within a tenth of what a plan with that edge on pins takes (on four shipped pieces), combs within one,
/// with up to five single pins more between them. Wires are counted as beams under the pull that the stretch tells: on those pieces
/// as many pins as a plan takes, or up to a fifth or two pins too few. What is worth while is common practice, no source.
/// </remarks>
public static class EdgeAdvisor
{
    /// <summary>A wire is suggested where it saves so many pins.</summary>
    public const int WorthAWire = 5;

    /// <summary>Combs are suggested where they save setting so many things.</summary>
    public const int WorthACombing = 3;

    /// <summary>An edge with fewer pins than this is left to pins.</summary>
    public const int FewestPins = 4;

    /// <summary>The advice for every edge that is held and takes a few pins at least.</summary>
    /// <param name="plan">A plan of the piece.</param>
    /// <param name="piece">The piece.</param>
    /// <param name="settings">How the maker wants it held.</param>
    public static IReadOnlyList<EdgeAdvice> Of(PinPlan plan, Piece piece, PinSettings settings)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(piece);
        ArgumentNullException.ThrowIfNull(settings);
        var runs = EdgeRun.Of(plan.Pinned, _ => true, (0, 0));
        EdgePlan[] pinned = [.. plan.Edges.Select(e => e with { Treatment = e.Treatment with { Hold = Holding.Pins } })];
        List<EdgeAdvice> advice = [];
        foreach (var run in runs.Where(r => piece.Edges[r.Edges[0]] is { Hold: not Holding.None, HasSetPlaces: false }))
        {
            var edge = run.Edges[0];
            var stitches = new RunStitches(run, pinned, plan.Mirror?.Partner[edge] == edge);
            IReadOnlyList<double> Pins(IEnumerable<double> forced) => ProfileOf(plan, edge) is { } profile
                ? new StitchSpread(run, pinned, profile, forced, stitches.IsOwnMirror, 0).Places()
                : new EvenSpacing(run, pinned, plan.Rule, forced, stitches.IsOwnMirror).Places();
            var now = piece.Edges[edge].HeldBy;
            var standing = plan.Marks.Where(m => m.Edge == edge && !m.IsCorner).ToList();
            var single = new EdgeWay(Holding.Pins, now == Holding.Pins ? standing.Count : Pins([]).Count, 0, [], true, settings.Owned is { } o ? plan.Marks.Count <= o : null);
            if (single.Pins < FewestPins)
                continue;
            var combs = now == Holding.Comb ? Combs(settings, standing.Count(m => m.Kind != PinKind.Comb), standing.Count(m => m.Kind == PinKind.Comb)) : Combs(plan, settings, stitches, Pins([]));
            var wires = Wires(now == Holding.Wire ? plan.Wired.Single(w => w.Edge == edge) : Wired(plan, piece, settings, stitches, Pins), settings);
            var (suggested, why) = Suggested(single, combs, wires, plan.Edges[edge].Name);
            advice.Add(new(edge, [single, combs, wires], suggested, why));
        }

        return advice;
    }

    private static EdgeWay Combs(PinPlan plan, PinSettings settings, RunStitches stitches, IReadOnlyList<double> pins)
    {
        var edge = stitches.Run.Edges[0];
        var spacing = new CombSpacing(plan.Pinned.Edges[edge].Curve, stitches, at => GapAt(plan, edge, at), settings.Combs, settings.Scallop.Millimetres);
        var places = spacing.Places(pins, []);
        var combs = places.Count(p => p.Kind == PinKind.Comb);
        return Combs(settings, places.Count - combs, combs);
    }

    private static EdgeWay Combs(PinSettings settings, int pins, int combs) =>
        new(Holding.Comb, pins, combs, [], combs > 0, settings.Combs.Owned is { } owned ? combs <= owned : null);

    private static WiredEdge Wired(PinPlan plan, Piece piece, PinSettings settings, RunStitches stitches, Func<IEnumerable<double>, IReadOnlyList<double>> pins)
    {
        var edge = stitches.Run.Edges[0];
        var planner = new WirePlanner(piece, plan.Pinned, settings, plan.Pulls);
        return planner.On(stitches, planner.Lengths(edge, new(settings.Wires), 1), [], pins, plan.Rule.OnEdge(edge));
    }

    private static EdgeWay Wires(WiredEdge wired, PinSettings settings)
    {
        bool? isOwned = settings.Wires.Owned is null ? null : wired.Lengths.All(l => l.Owned);
        return new(Holding.Wire, wired.Marks.Count - 2, 0, wired.Lengths, wired.Follows && !wired.IsLimp, isOwned) { PinsIfSoft = wired.MarksIfSoft - 2 };
    }

    /// <summary>How wide gaps between single pins may be on an edge by the cloth, or null where it was not asked: then by the rule.</summary>
    private static SpacingProfile? ProfileOf(PinPlan plan, int edge) => plan.Edges[edge].Treatment.HeldBy == Holding.Pins ? plan.Profile : plan.SinglePins;

    private static double GapAt(PinPlan plan, int edge, double fraction) =>
        ProfileOf(plan, edge) is { } profile ? profile.At(profile.ArcOf(edge, fraction)) : plan.Rule.At(edge, fraction);

    private static (Holding, string) Suggested(EdgeWay pins, EdgeWay combs, EdgeWay wires, string edge)
    {
        var saved = pins.Pins - wires.Pins;
        if (wires is { Serves: true, IsOwned: not false } && saved >= WorthAWire)
            return (Holding.Wire, FormattableString.Invariant($"A wire follows the {edge} edge and saves {saved} pins{(wires.IsOwned is null ? ", if you have one" : "")}."));
        var settings = pins.Settings - combs.Settings;
        if (combs is { Serves: true, IsOwned: not false } && settings >= WorthACombing)
            return (Holding.Comb, FormattableString.Invariant($"{combs.Combs} combs stand for {pins.Pins - combs.Pins} pins of the {edge} edge{(combs.IsOwned is null ? ", if you have them" : "")}."));
        return (Holding.Pins, !wires.Serves && saved >= WorthAWire ? $"The {edge} edge turns too tightly for the wires." : $"Neither wires nor combs would save much on the {edge} edge.");
    }
}
