using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Pins.Combs;
using BlockingTemplates.Engine.Pins.Wires;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Pins;

/// <summary>From a piece to its marks: pinned outline, lay line, spacing, places, order and pulls.</summary>
public static class PinPlanner
{
    private static readonly Length SpacingUnsaid = PinSettings.UsualSpacing;

    /// <summary>The plan by the spacing setting, or null after adding a problem; notes on edges are added too.</summary>
    public static PinPlan? Plan(Piece piece, PinSettings settings, Findings findings)
    {
        if (Placed(piece, settings, findings) is not { } plan)
            return null;
        AddNotes(plan, piece, settings, findings);
        return plan;
    }

    /// <summary>Adds the notes on edges, on what holds them, and on a piece that was measured dry.</summary>
    public static void AddNotes(PinPlan plan, Piece piece, PinSettings settings, Findings findings)
    {
        EdgePlans.AddNotes(plan, piece, settings, findings);
        HoldNotes.Add(plan, piece, settings, findings);
        DryAndDamp.AddNote(plan, piece, findings);
    }

    /// <summary>The plan by the spacing setting, or null after adding a problem.</summary>
    public static PinPlan? Placed(Piece piece, PinSettings settings, Findings findings)
    {
        ArgumentNullException.ThrowIfNull(piece);
        ArgumentNullException.ThrowIfNull(settings);
        ArgumentNullException.ThrowIfNull(findings);
        if (Anchor.Find(settings.Anchor, piece.Finished, findings) is not { } anchor)
            return null;
        var fabric = piece.Fabric;
        var about = anchor.Place is { } place ? piece.Finished.Edges[place.Edge].Curve.At(place.Fraction) : Point.Origin;
        // Both outlines are drawn the same way round: the rows lie in the finished one as in the unblocked one.
        var grain = fabric.GrainDegrees * Math.PI / 180;
        var pinned = piece.Finished.Mapped(Affine.Stretch(about, grain, 1 + fabric.SpringBack.Along, 1 + fabric.SpringBack.Across));
        var matches = EdgeMatches.Of(piece, pinned);
        // The middle stitch of a symmetric edge is its very middle, whatever the last digits say.
        anchor = anchor with { Middle = matches[anchor.Index].PinnedAt(0.5) is var middle && Math.Abs(middle - 0.5) > 1e-9 ? middle : 0.5 };
        var mirror = Mirror(piece, pinned, matches, anchor);
        var layLine = piece.Unblocked is { } unblocked ? LayLine(unblocked, pinned, matches, anchor) : null;

        var spacing = (settings.Spacing ?? Capped(settings)).Millimetres;
        var edges = EdgePlans.Of(piece, pinned, matches, spacing);
        var rule = new SpacingRule(pinned, spacing, settings.MinSpacing.Millimetres, [.. edges.Select(e => e.Stretch < -EdgePlans.ReadingOfATape)]);
        var holds = new EdgeHolds(piece, pinned, settings, rule, mirror);
        var places = new MarkPlacer(pinned, edges, rule, mirror, anchor, holds: holds).Place();
        var plan = new PinPlan
        {
            Pinned = pinned,
            LayLine = layLine,
            Anchor = anchor,
            Mirror = mirror,
            Rule = rule,
            Settings = settings,
            Edges = edges,
            Marks = Numbered(places, edges, pinned, layLine, anchor, settings.Combs.Prongs),
            Wires = WiresOf(holds.Wired, edges, settings),
            Wired = [.. holds.Wired],
        };
        return plan with { Edges = EdgePlans.WithSpacing(plan, piece) };
    }

    /// <summary>The plan with its marks placed anew by what the cloth allows, and by its pulls on wires.</summary>
    /// <param name="plan">A plan of the piece.</param>
    /// <param name="piece">The piece.</param>
    /// <param name="profile">How wide gaps may be; null: single pins stay by the rule.</param>
    /// <param name="fewer">How many gaps fewer than the profile asks for, for the run of edges that an edge belongs to; none unless given.</param>
    public static PinPlan Respaced(PinPlan plan, Piece piece, SpacingProfile? profile, Func<int, int>? fewer = null)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(piece);
        var holds = new EdgeHolds(piece, plan.Pinned, plan.Settings, plan.Rule, plan.Mirror, profile, plan.Pulls);
        var places = new MarkPlacer(plan.Pinned, plan.Edges, plan.Rule, plan.Mirror, plan.Anchor, profile, fewer, holds).Place();
        plan = plan with
        {
            Profile = profile,
            Marks = Numbered(places, plan.Edges, plan.Pinned, plan.LayLine, plan.Anchor, plan.Settings.Combs.Prongs),
            Wires = WiresOf(holds.Wired, plan.Edges, plan.Settings),
            Wired = [.. holds.Wired],
        };
        return plan with { Edges = EdgePlans.WithSpacing(plan, piece) };
    }

    /// <summary>The plan with the mirror image of another's marks: of those of the other piece of a pair.</summary>
    /// <param name="other">The other piece's plan.</param>
    /// <param name="plan">A plan of the mirrored piece.</param>
    /// <param name="piece">The mirrored piece.</param>
    public static PinPlan MirrorOf(PinPlan other, PinPlan plan, Piece piece)
    {
        ArgumentNullException.ThrowIfNull(other);
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(piece);
        var n = plan.Edges.Count;
        var places = other.Marks
            .Select(m => m.IsCorner ? new EdgePoint((n - m.Edge) % n, 0, 0) : MirroredPoint(plan.Edges[n - 1 - m.Edge], n - 1 - m.Edge, m))
            .Select(p => p with { Count = plan.Edges[p.Edge].Treatment.Count is null ? null : p.Count })
            .OrderBy(p => p.Edge).ThenBy(p => p.Fraction).ToList();
        // A middle that was an anchor is the very place of the anchor here.
        if (plan.Anchor.Place is var (edge, fraction))
            places = [.. places.Select(p => p.Edge == edge && Math.Abs(p.Fraction - fraction) < 1e-9 ? p with { Fraction = fraction } : p)];
        List<WiredEdge> wired = [.. other.Wired.Select(w => w.Mirrored(n - 1 - w.Edge, plan.Edges[n - 1 - w.Edge].PinnedMm)).OrderBy(w => w.Edge)];
        plan = plan with
        {
            Profile = other.Profile?.Mirrored(plan.Pinned),
            SinglePins = other.SinglePins?.Mirrored(plan.Pinned),
            Pulls = other.Pulls?.ToDictionary(p => n - 1 - p.Key, p => p.Value),
            Marks = Numbered(places, plan.Edges, plan.Pinned, plan.LayLine, plan.Anchor, plan.Settings.Combs.Prongs),
            Wires = WiresOf(wired, plan.Edges, plan.Settings),
            Wired = wired,
        };
        return plan with { Edges = EdgePlans.WithSpacing(plan, piece) };
    }

    private static Length Capped(PinSettings settings) =>
        settings.MaxSpacing is { } most && most < SpacingUnsaid ? most : SpacingUnsaid < settings.MinSpacing ? settings.MinSpacing : SpacingUnsaid;

    /// <summary>The symmetry that all of the piece shares: one whose axis goes through the anchor before others, then the one nearest to left and right.</summary>
    private static MirrorPairing? Mirror(Piece piece, Outline pinned, IReadOnlyList<Correspondence> matches, Anchor anchor)
    {
        var shared = MirrorPairing.All(pinned).Where(m => SaidAlike(piece, matches, m) && (piece.Unblocked is null || m.Fits(piece.Unblocked)));
        if (anchor.Place is not var (edge, fraction))
            return shared.FirstOrDefault();
        var at = pinned.Edges[edge].Curve.At(fraction);
        return shared.OrderBy(m => m.Image(at).DistanceTo(at) <= MirrorPairing.ToleranceMm ? 0 : 1).FirstOrDefault();
    }

    private static bool SaidAlike(Piece piece, IReadOnlyList<Correspondence> matches, MirrorPairing mirror) =>
        Enumerable.Range(0, piece.Edges.Count).All(i =>
            piece.Edges[i] with { Stations = [] } == piece.Edges[mirror.Partner[i]] with { Stations = [] } && matches[i].Mirrors(matches[mirror.Partner[i]]));

    /// <summary>The unblocked outline laid on the pinned one, its anchor on its mark.</summary>
    internal static Outline LayLine(Outline unblocked, Outline pinned, IReadOnlyList<Correspondence> matches, Anchor anchor)
    {
        (Point, Point)? meets = anchor.Place is var (edge, fraction)
            ? (unblocked.Edges[edge].Curve.At(matches[edge].UnblockedAt(fraction)), pinned.Edges[edge].Curve.At(fraction))
            : null;
        return unblocked.Mapped(RigidFit.Lay(unblocked, pinned, meets, matches));
    }

    private static List<Mark> Numbered(IReadOnlyList<EdgePoint> places, IReadOnlyList<EdgePlan> edges, Outline pinned, Outline? layLine, Anchor anchor, int prongs)
    {
        var starts = new double[pinned.Edges.Count + 1];
        for (var i = 0; i < pinned.Edges.Count; i++)
            starts[i + 1] = starts[i] + pinned.Edges[i].Curve.Length;
        var positions = places.Select(p => starts[p.Edge] + (p.Fraction * (starts[p.Edge + 1] - starts[p.Edge]))).ToList();
        var isAnchor = places.Select(p => IsAnchor(p, anchor, pinned.Edges.Count)).ToList();
        var points = places.Select(p => pinned.Edges[p.Edge].Curve.At(p.Fraction)).ToList();
        var isCorner = places.Select(p => p.Fraction == 0 && !pinned.Corners[p.Edge].Smooth).ToList();
        var order = RoundOrder.Of(positions, starts[^1], points, isAnchor, isCorner);
        return [.. places.Select((p, i) => MarkMaker.At(
            new Mark
            {
                Number = order[i].Number,
                Round = order[i].Round,
                Edge = p.Edge,
                Fraction = p.Fraction,
                Count = p.Count,
                Of = edges[p.Edge].Treatment.Of,
                At = default,
                Outward = default,
                IsAnchor = isAnchor[i],
                Kind = p.Kind,
                Bar = p.Bar is var (from, to) ? BarOf(pinned.Edges[p.Edge].Curve, edges[p.Edge].Match, from, to, prongs) : null,
            },
            pinned,
            layLine,
            edges[p.Edge].Match)).OrderBy(m => m.Number)];
    }

    private static CombBar BarOf(EdgeCurve curve, Correspondence match, double from, double to, int prongs) =>
        new(curve.At(from), curve.At(to), prongs, from, to) { Rest = (match.UnblockedAt(from), match.UnblockedAt(to)) };

    /// <summary>A mark's place on the edge that mirrors its own.</summary>
    private static EdgePoint MirroredPoint(EdgePlan edge, int index, Mark mark) => new(index, 1 - mark.Fraction, edge.Treatment.Count - mark.Count)
    {
        Kind = mark.Kind,
        Bar = mark.Bar is { } bar ? (1 - bar.ToFraction, 1 - bar.FromFraction) : null,
    };

    private static List<Wire> WiresOf(IEnumerable<WiredEdge> wired, IReadOnlyList<EdgePlan> edges, PinSettings settings)
    {
        List<Wire> wires = [];
        foreach (var edge in wired)
        {
            var plan = edges[edge.Edge];
            for (var i = 0; i < edge.Reaches.Count; i++)
            {
                var (from, to) = edge.Reaches[i];
                double? Count(double mm) => plan.Treatment.Count is { } n ? Math.Round(2 * n * plan.Match.ShareAt(Math.Clamp(mm / plan.PinnedMm, 0, 1))) / 2 : null;
                var stitches = Count(to) - Count(from) ?? (to - from) / plan.StitchMm;
                int? picked = stitches is { } s ? (int)Math.Floor((s / settings.Wires.Every) + 1e-6) + 1 : null;
                wires.Add(new(wires.Count + 1, edge.Edge, edge.Form, edge.Lengths[i].LengthMm, edge.Lengths[i].Owned, from, to, Count(from), Count(to), picked, edge.SagMm[i]));
            }
        }

        return wires;
    }

    private static bool IsAnchor(EdgePoint place, Anchor anchor, int edges) => anchor.Kind switch
    {
        AnchorKind.None => false,
        AnchorKind.WholeEdge => place.Edge == anchor.Index || (place.Fraction == 0 && place.Edge == (anchor.Index + 1) % edges),
        _ => (place.Edge, place.Fraction) == anchor.Place,
    };
}
