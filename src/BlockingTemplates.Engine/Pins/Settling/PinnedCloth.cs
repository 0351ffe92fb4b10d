using BlockingTemplates.Engine.Fabrics;
using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Pieces;
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
    /// What a mesh of two node distances a stitch reads of the scallop that finer ones come to: 5 to 11 % less on trial
    /// pieces (at 8 and 16 node distances); the middle of that.
    /// </summary>
    public const double PartRead = 0.93;

    private const int MostRimNodes = 6000;
    private const double SolveTolerance = 1e-7;

    private readonly MembraneSolver _solver;
    private readonly double[] _stitches;
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
        _solver = new(Mesh, cloth, _stitches.Max());
    }

    /// <summary>Another cloth on the same mesh.</summary>
    /// <param name="other">The pinned cloth whose mesh it shares.</param>
    /// <param name="cloth">Its stiffness.</param>
    public PinnedCloth(PinnedCloth other, OrthotropicCloth cloth)
    {
        ArgumentNullException.ThrowIfNull(other);
        ArgumentNullException.ThrowIfNull(cloth);
        (Mesh, _stitches, _isCorrected) = (other.Mesh, other._stitches, other._isCorrected);
        _solver = new(Mesh, cloth, _stitches.Max());
    }

    /// <summary>The mesh.</summary>
    public TriangleMesh Mesh { get; }

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

    /// <summary>The stitches that marks hold, and where.</summary>
    public MembraneSupport Support(IEnumerable<Mark> marks) => new()
    {
        Pins = [.. marks.Select(m => new HeldStitch(m.Edge, m.RestFraction, _stitches[m.Edge], m.At))],
    };

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
        var support = Support(ring);
        var rest = Hold(support, start, computation, tellSlack: true);
        return new(plan, rest, Gaps(plan, ring, support, rest));
    }

    /// <summary>Hands the memory on to the next.</summary>
    public void Dispose() => _solver.LeaveMemory();

    private MarkGap[] Gaps(PinPlan plan, Mark[] ring, MembraneSupport support, Equilibrium rest)
    {
        if (_line is not { } line || line.Pinned != plan.Pinned)
            _line = line = (plan.Pinned, new(Mesh, plan.Pinned));
        var starts = new double[plan.Edges.Count + 1];
        for (var e = 0; e < plan.Edges.Count; e++)
            starts[e + 1] = starts[e] + plan.Edges[e].PinnedMm;
        double Arc(int i) => starts[ring[i].Edge] + (ring[i].Fraction * plan.Edges[ring[i].Edge].PinnedMm);
        var read = _isCorrected ? PartRead : 1;
        return [.. line.Edge.Gaps(support, rest).Select(g =>
        {
            var width = Arc(g.ToPin) - Arc(g.FromPin);
            return new MarkGap(
                ring[g.FromPin].Number, ring[g.ToPin].Number, Arc(g.FromPin), width > 0 ? width : width + starts[^1], g.ScallopMm / read, g.Edge, plan.Edges[g.Edge].Match.PinnedOf(g.Fraction), g.Determined)
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
