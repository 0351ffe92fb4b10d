using BlockingTemplates.Engine.Fabrics;
using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Pins.Settling;

/// <summary>Computes the cloth of one piece: first where it needs pins, then, on the pins as they stand on the mats, what it does.</summary>
public sealed class ClothStudy : IDisposable
{
    private readonly Piece _piece;
    private readonly PinSettings _settings;
    private readonly SpacingLimits _limits;
    private readonly Computation _computation;
    private readonly ClothMaterial _material;
    private readonly PinnedCloth _cloth;
    private readonly IReadOnlyList<AnchorTrial> _anchors;
    private readonly SettledPins _settled;

    private ClothStudy(
        Piece piece, PinSettings settings, Computation computation, ClothMaterial material, PinnedCloth cloth, IReadOnlyList<AnchorTrial> anchors, SettledPins settled)
    {
        (_piece, _settings, _computation, _material, _cloth, _anchors, _settled) = (piece, settings, computation, material, cloth, anchors, settled);
        _limits = SpacingLimits.Of(settings);
    }

    /// <summary>The pins: where the cloth needs them, or, where the maker gave a spacing, by that.</summary>
    public PinPlan Pins => _settled.Plan;

    /// <summary>The pins and the cloth at rest under them.</summary>
    internal SettledPins Settled => _settled;

    /// <summary>Studies a piece.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="settings">How it is pinned.</param>
    /// <param name="pins">Its pins by the spacing setting.</param>
    /// <param name="computation">How much is computed, who is told, what ends it.</param>
    /// <param name="findings">Takes a note where the cloth did not come to rest.</param>
    /// <param name="isPlaced">Whether the pins stay where they are.</param>
    /// <returns>The study; null where the piece was not measured unblocked, no cloth is asked for, or none came to rest.</returns>
    public static ClothStudy? Of(Piece piece, PinSettings settings, PinPlan pins, Computation computation, Findings findings, bool isPlaced = false)
    {
        ArgumentNullException.ThrowIfNull(piece);
        ArgumentNullException.ThrowIfNull(settings);
        ArgumentNullException.ThrowIfNull(pins);
        ArgumentNullException.ThrowIfNull(computation);
        ArgumentNullException.ThrowIfNull(findings);
        if (!computation.WithCloth || piece.Unblocked is null)
            return null;
        var material = ClothMaterials.Of(piece.Fabric);
        computation.Tell("comparing where to start", 0);
        IReadOnlyList<AnchorTrial> anchors = [];
        PinnedCloth? cloth = null;
        Parallel.Invoke(
            new ParallelOptions { CancellationToken = computation.Cancellation },
            () => anchors = AnchorTrials.Of(piece, settings, material, computation),
            () => cloth = new(piece, material.Likely) { NewtonsPerMm = material.NewtonsPerMm });
        computation.Cancellation.ThrowIfCancellationRequested();
        if (!isPlaced && settings.Anchor is null && anchors is [{ } taken, ..] && taken.Anchor != pins.Anchor.Name)
            pins = PinPlanner.Placed(piece, settings with { Anchor = taken.Anchor }, new Findings()) ?? pins;
        var settled = settings.Spacing is null && !isPlaced
            ? new ClothSpacing(cloth!, piece, SpacingLimits.Of(settings), computation).Find(pins)
            : isPlaced ? AtRest(cloth!.Settle(pins, null, computation)) : WireMarks.Fitted(cloth!, piece, pins, computation);
        if (settled is not null && settings.Spacing is null && !isPlaced)
            settled = settled with { Plan = settled.Plan with { SinglePins = SinglePinTrial.Of(cloth!, piece, settled, computation) } };
        if (settled is not null)
            return new(piece, settings, computation, material, cloth!, anchors, settled);
        ClothNotes.NotAtRest(computation, false, findings);
        return null;
        static SettledPins? AtRest(SettledPins pins) => pins.Rest.Converged ? pins : null;
    }

    /// <summary>What the cloth does at the pins as they finally stand.</summary>
    /// <param name="pins">The pins of this study, moved, turned, or shifted by a stitch.</param>
    /// <param name="findings">Takes notes.</param>
    /// <returns>The cloth's part of the plan, or null after a note where it did not come to rest.</returns>
    public ClothPlan? Settle(PinPlan pins, Findings findings)
    {
        ArgumentNullException.ThrowIfNull(pins);
        ArgumentNullException.ThrowIfNull(findings);
        _computation.Tell("bringing the cloth to rest", 0);
        var map = RigidFit.Lay(_settled.Plan.Pinned, pins.Pinned, null);
        List<Point> start = [.. _settled.Rest.Places.Select(map.Map)];
        var late = _computation.IsTimeUp;
        SettledPins? settled = null;
        List<PullInTurn>[] turns = [[], []];
        var half = (pins.Marks.Count + 1) / 2;
        var node = Math.Max(_piece.Unblocked!.Length / PinningInTurn.RimNodes, _cloth.StitchesMm.Min() / 2);
        Parallel.Invoke(
            new ParallelOptions { CancellationToken = _computation.Cancellation },
            () =>
            {
                settled = _cloth.Settle(pins, start, _computation with { TimeIsUp = default });
                turns[0] = late ? [] : Turns(1, half);
            },
            () => turns[1] = late ? [] : Turns(half + 1, pins.Marks.Count));
        if (settled is not { Rest.Converged: true })
        {
            ClothNotes.NotAtRest(_computation, true, findings);
            return null;
        }

        var (soft, stiff) = _computation is { WithEnds: true, IsTimeUp: false } ? Ends(settled) : (null, null);
        var plan = Told(settled, turns[0].Count == half ? [.. turns[0], .. turns[1]] : turns[0]) with { Soft = soft, Stiff = stiff };
        ClothNotes.Add(plan, pins, _settings, _limits, findings);
        return plan;
        List<PullInTurn> Turns(int from, int to)
        {
            using var coarse = new PinnedCloth(_piece, _material.Likely, node) { NewtonsPerMm = _cloth.NewtonsPerMm };
            return PinningInTurn.Of(pins, coarse, from, to, _computation);
        }
    }

    /// <summary>Hands the memory on to the next.</summary>
    public void Dispose() => _cloth.Dispose();

    private ClothPlan Told(SettledPins settled, IReadOnlyList<PullInTurn> turns)
    {
        var (pins, rest) = (settled.Plan, settled.Rest);
        double[] loads = [.. settled.Loads.Select(l => l.Length)];
        var most = loads.Max();
        var stretch = StretchMap.Of(_cloth.Mesh, rest);
        var rim = rest.Rim(_cloth.Mesh);
        return new()
        {
            Material = _material,
            Residual = rest.Residual,
            Steps = rest.Steps,
            Nodes = _cloth.Mesh.Nodes.Count,
            SmallestAngleDegrees = rest.SmallestAngleDegrees,
            DecidedSpacing = _settings.Spacing is null,
            IsBestSoFar = _computation.IsTimeUp,
            Gaps = settled.Gaps,
            Edges = EdgeStraightness.Of(settled, _limits),
            LoadShares = [.. loads.Select(l => most > 0 ? l / most : 0)],
            LargestLoadNewtons = _material.NewtonsPerMetre is var (low, likely, high) ? new Spread(low * most / 1000, likely * most / 1000, high * most / 1000) : null,
            InTurn = turns,
            Anchors = _anchors,
            Stretch = stretch,
            Slack = ClothRegion.Slack(stretch),
            Beyond = _material.Took is var (along, across) ? ClothRegion.Beyond(stretch, along, across) : [],
            FreeEdge = rim,
            OffLine = [.. settled.Gaps.Where(ClothPlan.IsOffLine).Select(g => Between(pins, rim, g))],
        };
    }

    /// <summary>The free edge of a gap, from the last stitch held before it to the first held after it.</summary>
    private List<Point> Between(PinPlan pins, IReadOnlyList<Point> rim, MarkGap gap)
    {
        var (from, to) = (Arc(gap.FromMm), Arc(gap.FromMm + gap.WidthMm));
        var length = _cloth.Mesh.RimLengthMm;
        var wide = to > from ? to - from : to - from + length;
        List<(double Along, Point At)> inside = [];
        for (var i = 0; i < rim.Count; i++)
        {
            var along = _cloth.Mesh.Rim[i].ArcMm - from;
            along = along < 0 ? along + length : along;
            if (along <= wide)
                inside.Add((along, rim[i]));
        }

        return [.. inside.OrderBy(p => p.Along).Select(p => p.At)];

        // Along the rim of the mesh, by the arc length along the pinned outline.
        double Arc(double pinnedMm)
        {
            var (edge, left) = (0, pinnedMm % pins.Pinned.Length);
            while (edge < pins.Edges.Count - 1 && left > pins.Edges[edge].PinnedMm)
                left -= pins.Edges[edge++].PinnedMm;
            return RimStitches.ArcOf(_cloth.Mesh, edge, pins.Edges[edge].Match.UnblockedAt(Math.Min(left / pins.Edges[edge].PinnedMm, 1)));
        }
    }

    private (ClothEnd? Soft, ClothEnd? Stiff) Ends(SettledPins settled)
    {
        _computation.Tell("trying the softest and the stiffest cloth", 0);
        var ends = new ClothEnd?[2];
        OrthotropicCloth[] cloths = [_material.Soft, _material.Stiff];
        Parallel.For(0, 2, new() { MaxDegreeOfParallelism = 2, CancellationToken = _computation.Cancellation }, i =>
        {
            using var cloth = new PinnedCloth(_cloth, cloths[i]);
            var here = cloth.Settle(settled.Plan, settled.Rest.Places, _computation);
            if (!here.Rest.Converged)
                return;
            var needed = _settings.Spacing is null ? new ClothSpacing(cloth, _piece, _limits, _computation with { Progress = null }).Find(settled.Plan) : null;
            ends[i] = new(needed?.Plan.Marks.Count, here.Gaps.Where(g => g.Determined != false).Select(g => (double?)Math.Abs(g.ScallopMm)).Max());
        });
        return (ends[0], ends[1]);
    }
}
