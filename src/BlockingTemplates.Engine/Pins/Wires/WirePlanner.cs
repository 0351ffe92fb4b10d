using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Pins.Wires;

/// <summary>Plans the wires of single edges: which, how long, where they lie beside each other, which marks hold them.</summary>
/// <param name="Piece">The piece.</param>
/// <param name="Pinned">Its pinned outline.</param>
/// <param name="Settings">How the maker wants the edge held.</param>
/// <param name="Pulls">The pull on edges as computed, by edge; where it is not, by the stretch and what is known of the cloth.</param>
public sealed record WirePlanner(Piece Piece, Outline Pinned, PinSettings Settings, IReadOnlyDictionary<int, EdgePull>? Pulls = null)
{
    /// <summary>Share of the scallop that is left to the wire at least, however many stitches it skips.</summary>
    private const double LeastShare = 0.2;

    private const double Contact = 1e-6;

    private WireSettings Wires => Settings.Wires;

    /// <summary>The form of wire for an edge: the stiffest there is that follows it, else the one that bends tightest.</summary>
    public WireForm FormFor(int edge)
    {
        var tightest = WireBend.Tightest(Pinned.Edges[edge].Curve).RadiusMm;
        return Wires.Forms.Where(f => f.TightestRadiusMm <= tightest).MaxBy(f => f.BendingStiffness) ?? Wires.Forms.MinBy(f => f.TightestRadiusMm)!;
    }

    /// <summary>The wires of an edge out of a rack, without their marks.</summary>
    /// <param name="edge">Index of the edge.</param>
    /// <param name="rack">What is still at hand.</param>
    /// <param name="times">How many edges alike get the same, 1 or 2.</param>
    public IReadOnlyList<(double LengthMm, bool Owned)> Lengths(int edge, WireRack rack, int times)
    {
        ArgumentNullException.ThrowIfNull(rack);
        var need = Pinned.Edges[edge].Curve.Length + (2 * WireSettings.StandsOut.Millimetres);
        return rack.Take(FormFor(edge), need, Wires.Overlap.Millimetres, times);
    }

    /// <summary>Wires of given lengths on an edge, with the marks that hold them.</summary>
    /// <param name="stitches">The run of that one edge.</param>
    /// <param name="lengths">The wires.</param>
    /// <param name="forced">Other places that get a mark.</param>
    /// <param name="pins">Where single pins would stand, corners left out, given places that must have one: used where the wire is too limp.</param>
    /// <param name="pinSpacingMm">The spacing of single pins.</param>
    public WiredEdge On(
        RunStitches stitches, IReadOnlyList<(double LengthMm, bool Owned)> lengths, IReadOnlyList<double> forced, Func<IEnumerable<double>, IReadOnlyList<double>> pins, double pinSpacingMm)
    {
        ArgumentNullException.ThrowIfNull(stitches);
        ArgumentNullException.ThrowIfNull(lengths);
        ArgumentNullException.ThrowIfNull(pins);
        var edge = stitches.Run.Edges[0];
        var curve = Pinned.Edges[edge].Curve;
        var form = FormFor(edge);
        var pull = Pulls?.GetValueOrDefault(edge) is { Most: > 0 } computed ? computed : EdgePull.Of(Piece, Pinned, edge);
        var between = BetweenStitches(edge, pull.Stretch);
        var tolerance = Math.Max(LeastShare * Settings.Scallop.Millimetres, Settings.Scallop.Millimetres - between);
        if (stitches.IsOwnMirror)
            lengths = Palindrome(lengths);
        var reaches = Reaches(lengths, stitches);
        double[] joints = [.. reaches.SelectMany(r => (double[])[r.From, r.To])];
        double[] wanted = stitches.IsOwnMirror ? [.. joints, .. forced, .. joints.Select(j => curve.Length - j)] : [.. joints, .. forced];
        var (stiff, soft) = (Sag(pull.Most), Sag(pull.Least));
        var marks = new WireSpacing([stiff, soft], stitches, tolerance, pinSpacingMm).Marks(reaches, wanted);
        var isLimp = marks is null;
        marks ??= [0, .. pins(wanted.Where(w => w > Contact && w < curve.Length - Contact)), curve.Length];
        var ifSoft = new WireSpacing([soft], stitches, tolerance, pinSpacingMm).Marks(reaches, wanted)?.Count ?? marks.Count;
        return new(
            edge, form, lengths, reaches, marks, Math.Min(ifSoft, marks.Count), pull, tolerance, between, [.. reaches.Select(r => (Worst(stiff, r), Worst(soft, r)))], isLimp, WireBend.Tightest(curve));

        WireSag Sag(double load) => new(curve, form.BendingStiffness, load);
        double Worst(WireSag sag, (double From, double To) reach) => sag.Worst([.. marks.Where(m => m >= reach.From - Contact && m <= reach.To + Contact)]).MaxBy(Math.Abs);
    }

    /// <summary>How far the cloth dips between the stitches on the wire.</summary>
    private double BetweenStitches(int edge, double stretch)
    {
        if (Wires.Every == 1)
            return 0;
        var stitch = EdgePlans.StitchWidth(Piece, edge, Pinned.Edges[edge].Curve.Length) ?? PinSettings.StitchUnsaid.Millimetres;
        return ScallopEstimate.MayDip(stretch, Wires.Every * stitch, stitch);
    }

    /// <summary>Where each wire enters and leaves: what they are longer than needed goes into the overlaps, and what is too much for these stands out at both ends.</summary>
    private List<(double From, double To)> Reaches(IReadOnlyList<(double LengthMm, bool Owned)> lengths, RunStitches stitches)
    {
        var length = stitches.Run.Length;
        var (shortest, total) = (lengths.Min(l => l.LengthMm), lengths.Sum(l => l.LengthMm));
        var overlap = WireRack.Beside(Wires.Overlap.Millimetres, shortest);
        if (lengths.Count > 1)
            overlap = Math.Max(overlap, WireRack.Beside((total - length - (2 * WireSettings.StandsOut.Millimetres)) / (lengths.Count - 1), shortest));
        var at = (length - total + ((lengths.Count - 1) * overlap)) / 2;
        List<(double From, double To)> reaches = [];
        foreach (var (mm, _) in lengths)
        {
            reaches.Add((On(at, true), On(at + mm, false)));
            at += mm - overlap;
        }

        return reaches;

        // On a stitch within its half of the overlap, so that no wire has to be longer than it is.
        double On(double place, bool onward)
        {
            if (place <= Contact || place >= length - Contact)
                return Math.Clamp(place, 0, length);
            var stitch = stitches.Next(place, onward);
            return Math.Abs(stitch - place) <= (overlap / 2) + Contact ? stitch : place;
        }
    }

    /// <summary>The longest in the middle, alike from both ends as far as the lengths allow.</summary>
    private static List<(double LengthMm, bool Owned)> Palindrome(IReadOnlyList<(double LengthMm, bool Owned)> lengths)
    {
        List<(double, bool)> left = [], right = [];
        var rest = lengths.OrderBy(l => l.LengthMm).ToList();
        while (rest.Count > 1)
        {
            left.Add(rest[0]);
            right.Insert(0, rest[1]);
            rest.RemoveRange(0, 2);
        }

        return [.. left, .. rest, .. right];
    }
}
