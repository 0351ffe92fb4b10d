using System.Globalization;
using BlockingTemplates.Engine.Fabrics;
using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Pins;

/// <summary>Works out what is planned and what must be told for each edge.</summary>
public static class EdgePlans
{
    /// <summary>Relative difference of lengths that a tape does not show; less than this is no shrinking.</summary>
    public const double ReadingOfATape = 0.002;

    private const double Contact = 1e-6;

    /// <summary>Lengths and stitches of the edges of a piece.</summary>
    public static IReadOnlyList<EdgePlan> Of(Piece piece, Outline pinned, IReadOnlyList<Correspondence> matches, double spacingMm)
    {
        ArgumentNullException.ThrowIfNull(piece);
        ArgumentNullException.ThrowIfNull(pinned);
        ArgumentNullException.ThrowIfNull(matches);
        return [.. pinned.Edges.Select((e, i) =>
        {
            var line = piece.Unblocked?.Edges[i].Curve;
            var unblocked = line?.Length;
            return new EdgePlan
            {
                Name = e.Name,
                Treatment = piece.Edges[i],
                Match = matches[i],
                FinishedMm = piece.Finished.Edges[i].Curve.Length,
                PinnedMm = e.Curve.Length,
                UnblockedMm = unblocked,
                DryMm = piece.MeasuredDry?.Edges[i].Curve.Length,
                Stations = piece.Stations[i],
                TapeMm = (piece.MeasuredDry?.Edges[i].Curve ?? line) is { } taped ? taped is PointedEdge points ? points.Basis.Length : taped.Length : null,
                StitchMm = Stitch(piece, i, e.Curve.Length, unblocked),
                SpacingMm = spacingMm,
                SpacingRule = "",
            };
        })];
    }

    /// <summary>The edges of a plan with the spacing they got and how far they may dip.</summary>
    public static IReadOnlyList<EdgePlan> WithSpacing(PinPlan plan, Piece piece)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(piece);
        return [.. plan.Edges.Select((e, i) => e with
        {
            SpacingMm = plan.Profile is null && e.Treatment.HeldBy != Holding.Wire ? plan.Rule.OnEdge(i) : WidestGap(plan, i),
            SpacingRule = SpacingWords.Of(plan, i),
            MayDipMm = plan.Profile is null ? MayDip(plan, piece, i) : null,
        })];
    }

    /// <summary>Adds the notes on edges: those that must shrink and those that stretch beyond habit.</summary>
    public static void AddNotes(PinPlan plan, Piece piece, PinSettings settings, Findings findings)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(piece);
        ArgumentNullException.ThrowIfNull(settings);
        ArgumentNullException.ThrowIfNull(findings);
        for (var i = 0; i < plan.Edges.Count; i++)
        {
            var edge = plan.Edges[i];
            if (edge.Treatment is { HasSetPlaces: true, Every: { } every } && WidestGap(plan, i) is var widest && widest > settings.MaxSpacing?.Millimetres + Contact)
                findings.Note($"piece.edges.{edge.Name}.every", Text($"With {every} {(edge.Treatment.Of == CountedIn.Rows ? "rows" : "stitches")} between marks those of the {edge.Name} edge stand up to {findings.Say(widest)} apart, more than \"maxSpacing\" of {findings.Say(settings.MaxSpacing!.Value.Millimetres)}. They stay where you asked."), "Ask for fewer stitches between them, or for a greater spacing.");
            if (edge.Stretch is not { } stretch)
                continue;
            if (stretch < -ReadingOfATape)
            {
                findings.Note($"edge {edge.Name}", Text($"The {edge.Name} edge must shrink by {-100 * stretch:0.0} %: from {findings.Say(edge.UnblockedMm!.Value)} to {findings.Say(edge.PinnedMm)}. {PinsOnShrinking(edge, plan)}"), "Ease it in evenly between the pins; if it still ruffles, plan a longer edge or work fewer stitches there.");
            }
            else if (piece.Fabric.Kind is { } kind && stretch > HabitualStretch.Most(kind))
            {
                findings.Note($"edge {edge.Name}", Text($"The {edge.Name} edge is stretched by {100 * stretch:0} %, more than {100 * HabitualStretch.Most(kind):0} % that {Name(kind)} habitually takes."), "Block a swatch that far first, or plan a smaller finished size.");
            }
        }

        if (settings is { Spacing: { } spacing } && (spacing < settings.MinSpacing || spacing > settings.MaxSpacing))
            findings.Note("pins.spacing", Text($"The spacing asked for, {findings.Say(spacing.Millimetres)}, lies outside \"minSpacing\" and \"maxSpacing\". Your spacing is kept."), "Change it, or the limits, if that was not meant.");
    }

    private static string PinsOnShrinking(EdgePlan edge, PinPlan plan) =>
        edge.Treatment.Hold == Holding.None ? "Nothing holds it between its corners."
        : plan.Profile is not null ? "Its pins stand as the cloth needs them."
        : plan.Rule.HalfMm == plan.Rule.FullMm / 2 ? "Its pins stand at half the spacing."
        : "Its pins stand as close as \"minSpacing\" allows.";

    /// <summary>Width of one stitch or row along a pinned edge, in millimetres, or null if not known.</summary>
    internal static double? StitchWidth(Piece piece, int edge, double pinnedMm) => Stitch(piece, edge, pinnedMm, piece.Unblocked?.Edges[edge].Curve.Length);

    private static double? Stitch(Piece piece, int edge, double pinnedMm, double? unblockedMm)
    {
        if (piece.Edges[edge].Count is { } count)
            return pinnedMm / count;
        return unblockedMm is { } length && StitchSaid(piece.Fabric, piece.Unblocked!.Edges[edge].Curve) is { } stitch ? stitch * pinnedMm / length : null;
    }

    /// <summary>Unblocked width of a stitch along an edge as said of the cloth, in millimetres, along or across the rows, whichever the edge runs nearer to; null if not said.</summary>
    internal static double? StitchSaid(FabricSettings fabric, EdgeCurve unblocked)
    {
        if (fabric.Stitch is not var (along, across))
            return null;
        var chord = (unblocked.End - unblocked.Start).Unit;
        var rows = Vector.AtAngle(fabric.GrainDegrees * Math.PI / 180);
        return (Math.Abs(chord.Dot(rows)) >= Math.Abs(chord.Cross(rows)) ? along : across).Millimetres;
    }

    private static double? MayDip(PinPlan plan, Piece piece, int index)
    {
        var edge = plan.Edges[index];
        if (plan.Wired.FirstOrDefault(w => w.Edge == index) is { } wired)
            return wired.MayDipMm;
        if (edge is not { StitchMm: { } stitch, Stretch: { } stretch } || piece.Unblocked is not { } unblocked || edge.Treatment is { Hold: Holding.None } or { Points: not null })
            return null;
        if (WidestGap(plan, index) is not (> 0 and var widest))
            return null;
        var across = (plan.Pinned.SignedArea() / unblocked.SignedArea() / (1 + stretch)) - 1;
        return ScallopEstimate.MayDip(Math.Max(across, 0), widest, Math.Min(stitch, widest));
    }

    /// <summary>The widest gap between neighbouring marks (from bar to bar where there are combs) of which a part lies on an edge, in millimetres; 0 without marks.</summary>
    private static double WidestGap(PinPlan plan, int index)
    {
        var starts = new double[plan.Edges.Count + 1];
        for (var e = 0; e < plan.Edges.Count; e++)
            starts[e + 1] = starts[e] + plan.Edges[e].PinnedMm;
        var held = plan.Marks.Select(m => (From: Place(m, m.Bar?.FromFraction), To: Place(m, m.Bar?.ToFraction))).Order().ToList();
        if (held.Count == 0)
            return 0;
        // The gap over corner 0 stands at both ends of the ring's length.
        var (first, last) = (held[0], held[^1]);
        held.Insert(0, (last.From - starts[^1], last.To - starts[^1]));
        held.Add((first.From + starts[^1], first.To + starts[^1]));
        var onEdge = held.Zip(held.Skip(1)).Where(g => g.Second.From > starts[index] + Contact && g.First.To < starts[index + 1] - Contact);
        return onEdge.Select(g => g.Second.From - g.First.To).DefaultIfEmpty(0).Max();
        double Place(Mark mark, double? fraction) => starts[mark.Edge] + ((fraction ?? mark.Fraction) * plan.Edges[mark.Edge].PinnedMm);
    }

    private static string Name(FabricKind kind) => kind switch
    {
        FabricKind.Lace => "lace",
        FabricKind.Mesh => "mesh",
        FabricKind.Plain => "plain fabric",
        FabricKind.Garter => "garter stitch",
        FabricKind.Rib => "ribbing",
        FabricKind.Cable => "cabled fabric",
        _ => throw new ArgumentOutOfRangeException(nameof(kind)),
    };

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
