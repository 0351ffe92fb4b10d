using BlockingTemplates.Engine.Fabrics;
using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Pins.Wires;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Pins.Settling;

/// <summary>The unblocked cloth of a piece, meshed in its own frame, that can be held at any marks.</summary>
/// <remarks>
/// Nodes stand half a stitch apart all along the edge, so that marks may come and go without a new mesh. Not for use by
/// several threads at once.
/// </remarks>
public sealed class PinnedCloth : IDisposable
{
    /// <summary>Width of an unblocked stitch where neither count nor stitch is said: an assumption, common for hand-made cloth.</summary>
    public static Length StitchUnsaid { get; } = Length.FromMillimetres(5);

    /// <summary>
    /// By how much a mesh of two node distances a stitch reads the scallop of an evenly loaded half-plane too low, over
    /// tension times gap / E: 1.6926 in closed form with a stitch of a tenth of the gap, 1.523 on such a mesh.
    /// </summary>
    private const double ReadTooLow = 0.17;

    private const int MostRimNodes = 6000;
    private const double SolveTolerance = 1e-7;

    private readonly MembraneSolver _solver;
    private readonly double[] _stitches;
    private readonly int[] _wired;
    private readonly bool _isCorrected;
    private (Outline Pinned, FreeEdge Edge)? _line;

    /// <summary>Meshes and analyses the cloth of a piece.</summary>
    /// <param name="piece">The piece, measured unblocked.</param>
    /// <param name="cloth">Its stiffness; its grain is that of the unblocked outline.</param>
    /// <param name="nodeMm">Node distance along the edge, in millimetres, for a coarser mesh; half a stitch where null.</param>
    /// <param name="nodesPerStitch">Node distances a stitch where <paramref name="nodeMm"/> is null: an even number.</param>
    public PinnedCloth(Piece piece, OrthotropicCloth cloth, double? nodeMm = null, int nodesPerStitch = 2)
    {
        ArgumentNullException.ThrowIfNull(piece);
        ArgumentNullException.ThrowIfNull(cloth);
        var unblocked = piece.Unblocked ?? throw new ArgumentException("The piece was not measured unblocked.", nameof(piece));
        _stitches = [.. unblocked.Edges.Select((_, i) => StitchOf(piece, i))];
        _isCorrected = nodesPerStitch == 2;
        Mesh = TriangleMesher.Mesh(unblocked, Grading(unblocked, nodeMm, nodesPerStitch));
        _wired = [.. Enumerable.Range(0, piece.Edges.Count).Where(e => piece.Edges[e].HeldBy == Holding.Wire)];
        _solver = new(Mesh, cloth, _stitches.Max(), wired: _wired);
    }

    /// <summary>Another cloth on the same mesh.</summary>
    /// <param name="other">The pinned cloth whose mesh it shares.</param>
    /// <param name="cloth">Its stiffness.</param>
    public PinnedCloth(PinnedCloth other, OrthotropicCloth cloth)
    {
        ArgumentNullException.ThrowIfNull(other);
        ArgumentNullException.ThrowIfNull(cloth);
        (Mesh, _stitches, _wired, _isCorrected) = (other.Mesh, other._stitches, other._wired, other._isCorrected);
        NewtonsPerMm = other.NewtonsPerMm;
        _solver = new(Mesh, cloth, _stitches.Max(), wired: _wired);
    }

    /// <summary>The mesh.</summary>
    public TriangleMesh Mesh { get; }

    /// <summary>The cloth's stiffness unit, in newtons a millimetre: what wires are stiff against; the stiff end of what was published unless given.</summary>
    public double NewtonsPerMm { get; init; } = PublishedCloth.Stiffest;

    /// <summary>Width of a stitch along each unblocked edge, in millimetres.</summary>
    public IReadOnlyList<double> StitchesMm => _stitches;

    /// <summary>Width of a stitch or row along an unblocked edge, in millimetres: by its count, else as said of the cloth, else assumed.</summary>
    public static double StitchOf(Piece piece, int edge)
    {
        ArgumentNullException.ThrowIfNull(piece);
        var curve = piece.Unblocked!.Edges[edge].Curve;
        return piece.Edges[edge].Count is { } count
            ? curve.Length / count
            : Math.Min(EdgePlans.StitchSaid(piece.Fabric, curve) ?? StitchUnsaid.Millimetres, curve.Length / 2);
    }

    /// <summary>Where the stitch of a mark lies with the nodes at given places.</summary>
    public Point StitchAt(Mark mark, IReadOnlyList<Point> places)
    {
        ArgumentNullException.ThrowIfNull(mark);
        ArgumentNullException.ThrowIfNull(places);
        var sum = default(Vector);
        foreach (var (node, part) in RimStitches.Parts(Mesh, mark.Edge, mark.RestFraction, _stitches[mark.Edge]))
            sum += part * (places[node] - Point.Origin);
        return Point.Origin + sum;
    }

    /// <summary>The stitches that marks hold, and where; without wires.</summary>
    public HeldMarks Held(IReadOnlyList<Mark> marks)
    {
        ArgumentNullException.ThrowIfNull(marks);
        List<HeldStitch> pins = [];
        List<int> markOf = [];
        for (var i = 0; i < marks.Count; i++)
        {
            foreach (var (fraction, at) in Stitches(marks[i]))
            {
                pins.Add(new(marks[i].Edge, fraction, _stitches[marks[i].Edge], at));
                markOf.Add(i);
            }
        }

        return new(new() { Pins = pins }, markOf);
    }

    /// <summary>The stitches that marks of a plan hold, its wires, and the wires' ends beside their corners.</summary>
    public HeldMarks Held(PinPlan plan, IReadOnlyList<Mark> marks)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var held = Threaded(plan, marks, _ => true);
        if (plan.Wires.Count == 0)
            return held;
        List<HeldStitch> pins = [.. held.Support.Pins];
        List<int> markOf = [.. held.MarkOf];
        for (var i = 0; i < marks.Count; i++)
        {
            var (edge, n) = (marks[i].Edge, plan.Edges.Count);
            if (!marks[i].IsCorner)
                continue;
            foreach (var (wired, isStart) in new[] { (edge, true), ((edge + n - 1) % n, false) }.Where(e => _wired.Contains(e.Item1)))
            {
                var curve = plan.Pinned.Edges[wired].Curve;
                var half = Math.Min(0.5, _stitches[wired] / 2 / UnblockedMm(wired));
                var fraction = isStart ? half : 1 - half;
                pins.Add(new(wired, fraction, _stitches[wired], curve.At(plan.Edges[wired].Match.PinnedOf(fraction))));
                markOf.Add(i);
            }
        }

        return new(held.Support with { Pins = pins }, markOf);
    }

    /// <summary>The stitches that some marks hold, and wires that are free to turn about them.</summary>
    /// <param name="plan">The plan that the wires belong to.</param>
    /// <param name="marks">The marks.</param>
    /// <param name="isTaken">Whether the wires of an edge are taken.</param>
    public HeldMarks Threaded(PinPlan plan, IReadOnlyList<Mark> marks, Func<int, bool> isTaken)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var held = Held(marks);
        return new(held.Support with { Wires = [.. plan.Wires.Where(w => isTaken(w.Edge)).Select(w => Bending(plan, w))] }, held.MarkOf);
    }

    /// <summary>The cloth at rest under some marks.</summary>
    /// <param name="support">What holds it.</param>
    /// <param name="start">Node places to start from, or null.</param>
    /// <param name="computation">Ends it.</param>
    /// <param name="tellSlack">Whether to find which lines slack cloth leaves open.</param>
    /// <param name="tolerance">Greatest residual.</param>
    /// <param name="slackShare">The share k of <see cref="SlackStay"/>; the usual one where null.</param>
    public Equilibrium Hold(
        MembraneSupport support, IReadOnlyList<Point>? start, Computation computation, bool tellSlack = false, double tolerance = SolveTolerance, double? slackShare = null)
    {
        ArgumentNullException.ThrowIfNull(computation);
        var settings = new EquilibriumSettings { Tolerance = tolerance, TrySlack = tellSlack, TimeIsUp = computation.TimeIsUp };
        if (slackShare is { } share)
            settings = settings with { SlackShare = share };
        return _solver.Solve(support, settings, start, null, computation.Cancellation);
    }

    /// <summary>The cloth at rest under all pins of a plan, with the gaps between them.</summary>
    /// <param name="plan">The pins.</param>
    /// <param name="start">Node places to start from, or null.</param>
    /// <param name="computation">Ends it.</param>
    public SettledPins Settle(PinPlan plan, IReadOnlyList<Point>? start, Computation computation)
    {
        ArgumentNullException.ThrowIfNull(plan);
        Mark[] ring = [.. plan.Marks.OrderBy(m => m.Edge).ThenBy(m => m.Fraction)];
        var held = Held(plan, ring);
        var rest = Hold(held.Support, start, computation, tellSlack: true);
        var loads = new Vector[ring.Length];
        foreach (var (mark, load) in ring.Zip(held.Loads(rest, ring.Length)))
            loads[mark.Number - 1] = load;
        return new(plan, rest, Gaps(plan, ring, held, rest), loads);
    }

    /// <summary>Hands the memory on to the next.</summary>
    public void Dispose() => _solver.LeaveMemory();

    private static IEnumerable<(double Fraction, Point At)> Stitches(Mark mark) => mark.Bar is not { } bar
        ? [(mark.RestFraction, mark.At)]
        : bar.ProngsAt.Select((at, k) => (bar.Rest.From + ((bar.Rest.To - bar.Rest.From) * k / (bar.Prongs - 1)), at));

    private EdgeWire Bending(PinPlan plan, Wire wire)
    {
        var edge = plan.Edges[wire.Edge];
        return new(wire.Edge, wire.FromMm / edge.PinnedMm, wire.ToMm / edge.PinnedMm, wire.Form.BendingStiffness / NewtonsPerMm, plan.Pinned.Edges[wire.Edge].Curve) { Match = edge.Match };
    }

    private double UnblockedMm(int edge) => RimStitches.ArcOf(Mesh, edge, 1) - RimStitches.ArcOf(Mesh, edge, 0);

    /// <summary>What a mesh of two node distances a stitch reads of the scallop that finer ones come to: less of it, the fewer stitches the gap has.</summary>
    /// <remarks>The closed form of <see cref="ScallopEstimate"/> less what is read too low; the deficit comes from the pinned stitches alone, whatever the gap.</remarks>
    internal static double PartRead(double gapMm, double stitchMm)
    {
        var half = Math.Min(Math.PI * ScallopEstimate.HalfWidthOverWidth * stitchMm / gapMm, Math.PI / 4);
        return Math.Max(1 - (ReadTooLow / (2 / Math.PI * Math.Log(1 / Math.Sin(half)))), 0.7);
    }

    /// <summary>The gaps between marks; those under a comb, and between a corner and the end of its wire, are left out.</summary>
    private MarkGap[] Gaps(PinPlan plan, Mark[] ring, HeldMarks held, Equilibrium rest)
    {
        if (_line is not { } line || line.Pinned != plan.Pinned)
            _line = line = (plan.Pinned, new(Mesh, plan.Pinned));
        var starts = new double[plan.Edges.Count + 1];
        for (var e = 0; e < plan.Edges.Count; e++)
            starts[e + 1] = starts[e] + plan.Edges[e].PinnedMm;
        double Arc(int pin) => held.Support.Pins[pin] is var p ? starts[p.Edge] + (plan.Edges[p.Edge].Match.PinnedOf(p.Fraction) * plan.Edges[p.Edge].PinnedMm) : 0;
        return [.. line.Edge.Gaps(held.Support, rest).Where(g => held.MarkOf[g.FromPin] != held.MarkOf[g.ToPin]).Select(g =>
        {
            var width = Arc(g.ToPin) - Arc(g.FromPin);
            width = width > 0 ? width : width + starts[^1];
            // A wire that is not limp sags smoothly, so that the mesh reads it as it is; what the cloth dips between the stitches on it comes to that.
            var wired = plan.Wired.FirstOrDefault(w => w.Edge == g.Edge && !w.IsLimp);
            var scallop = wired is not null ? g.ScallopMm + (Math.Sign(g.ScallopMm) * wired.DipBetweenStitchesMm) : _isCorrected ? g.ScallopMm / PartRead(width, NeededSpacing.StitchMm(plan, g.Edge)) : g.ScallopMm;
            return new MarkGap(
                ring[held.MarkOf[g.FromPin]].Number, ring[held.MarkOf[g.ToPin]].Number, Arc(g.FromPin), width, scallop, g.Edge, plan.Edges[g.Edge].Match.PinnedOf(g.Fraction), g.Determined)
            {
                IsSet = plan.Edges[g.Edge].Treatment.HasSetPlaces,
            };
        })];
    }

    private MeshGrading Grading(Outline unblocked, double? nodeMm, int nodesPerStitch)
    {
        var box = Box.Around(unblocked.Ring());
        var inside = Math.Max(box.Width, box.Height) / 16;
        if (nodeMm is { } coarse)
            return new() { EdgeMm = coarse, InsideMm = Math.Max(inside, coarse) };
        var nodes = _stitches.Select((s, e) => nodesPerStitch * unblocked.Edges[e].Curve.Length / s).Sum();
        var wider = Math.Max(1, nodes / MostRimNodes * 2 / nodesPerStitch);
        List<FinePlace> places = [];
        for (var e = 0; e < _stitches.Length; e++)
        {
            var count = Math.Max(1, (int)Math.Round(unblocked.Edges[e].Curve.Length / (_stitches[e] * wider)));
            var width = unblocked.Edges[e].Curve.Length / count;
            places.AddRange(Enumerable.Range(0, count).Select(k => new FinePlace(e, (double)k / count, width)));
        }

        return new() { EdgeMm = _stitches.Max() * wider / nodesPerStitch * 1.01, InsideMm = inside, FinePlaces = places, NodesPerStitch = nodesPerStitch };
    }
}
