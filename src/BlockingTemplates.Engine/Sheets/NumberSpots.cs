using System.Globalization;
using BlockingTemplates.Engine.Pins;
using BlockingTemplates.Engine.Shapes;
using NetTopologySuite.Algorithm.Locate;
using NetTopologySuite.Geometries;
using Point = BlockingTemplates.Engine.Shapes.Point;

namespace BlockingTemplates.Engine.Sheets;

/// <summary>The spots where the numbers of marks could stand, whatever the page grid.</summary>
/// <remarks>
/// Outside, straight off the mark, then fanned, then farther out, then on a leader along the edge; every spot outside
/// keeps the style's distance from the whole outline. Inside spots come last.
/// </remarks>
public sealed class NumberSpots
{
    private const double RingToleranceMm = 0.25;
    private const double ReachMm = 130;
    private const double InsideClearMm = 5;
    private static readonly double[] Fan = [0, 15, -15, 30, -30, 45, -45, 60, -60];
    private static readonly double[] Farther = [0, 4, 9, 15, 22, 30, 40];
    private static readonly double[] AlongEdge = [-10, 10, -20, 20, -32, 32, -46, 46, -60, 60];
    private static readonly double[] AlongFarther = [0, 9, 18, 30];
    private readonly NumberStyle _style;
    private readonly (Point A, Point B)[] _ring;
    private readonly IndexedPointInAreaLocator _region;

    private NumberSpots(PinPlan plan, NumberStyle style, HalfGuide? half)
    {
        _style = style;
        var ring = plan.Pinned.Ring(RingToleranceMm);
        _ring = [.. ring.Select((p, i) => (p, ring[(i + 1) % ring.Count]))];
        _region = new(plan.Pinned.ToPolygon(RingToleranceMm));
        OfMarks = [.. (half?.Kept(plan) ?? plan.Marks).Select(m => Of(m, half is not null && plan.PartnerOf(m) is { } partner && partner != m ? partner.Number : null))];
    }

    /// <summary>The spots of each printed mark in the order of numbers.</summary>
    public IReadOnlyList<MarkSpots> OfMarks { get; }

    /// <summary>The spots of the marks of a plan.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="style">How numbers are set.</param>
    /// <param name="half">The half that is printed, or null for all.</param>
    public static NumberSpots Of(PinPlan plan, NumberStyle style, HalfGuide? half = null)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(style);
        return new(plan, style, half);
    }

    private MarkSpots Of(Mark mark, int? partner)
    {
        var near = Box.About(mark.At, 2 * ReachMm, 2 * ReachMm);
        var ring = new Lazy<(Point A, Point B)[]>(() => [.. _ring.Where(s => near.Grown(1).Overlaps(Box.Around([s.A, s.B]).Grown(0.5)))]);
        var text = mark.Number.ToString(CultureInfo.InvariantCulture);
        var below = partner?.ToString(CultureInfo.InvariantCulture);
        return new(
            mark,
            partner,
            _style.HeightsMm.Select(h => (Func<IReadOnlyList<NumberSpot>>)(() => Spots(Outside(mark, _style.Size(text, below, h)), _style.Size(text, below, h), h, ring.Value, false))),
            _style.HeightsMm.Select(h => (Func<IReadOnlyList<NumberSpot>>)(() => Spots(Inside(mark, _style.Size(text, below, h)), _style.Size(text, below, h), h, ring.Value, true))));
    }

    private List<NumberSpot> Spots(IEnumerable<Point> centres, (double Width, double Height) size, double height, (Point A, Point B)[] ring, bool isInside) =>
    [
        .. centres.Where(c => IsInRegion(c) == isInside)
            .Select(c => Box.About(c, size.Width, size.Height))
            .Where(b => KeepsAway(b, ring, isInside ? InsideClearMm : _style.ClearMm))
            .Select(b => new NumberSpot(b, height, isInside)),
    ];

    private IEnumerable<Point> Outside(Mark mark, (double Width, double Height) size)
    {
        foreach (var centre in Fanned(mark.At, mark.Outward, _style.ClearMm, size))
            yield return centre;
        var straight = _style.ClearMm + Support(mark.Outward, size);
        foreach (var along in AlongEdge)
        {
            foreach (var far in AlongFarther)
                yield return mark.At + ((straight + far) * mark.Outward) + (along * mark.Outward.TurnedLeft);
        }
    }

    private static IEnumerable<Point> Inside(Mark mark, (double Width, double Height) size) => Fanned(mark.At, -mark.Outward, InsideClearMm, size);

    private static IEnumerable<Point> Fanned(Point at, Vector away, double clear, (double Width, double Height) size)
    {
        foreach (var far in Farther)
        {
            foreach (var degrees in Fan)
            {
                var direction = degrees == 0 ? away : Affine.Turn(degrees * Math.PI / 180).Map(away);
                yield return at + ((clear + Support(direction, size) + far) * direction);
            }
        }
    }

    private bool IsInRegion(Point p) => _region.Locate(new Coordinate(p.X, p.Y)) == Location.Interior;

    private static bool KeepsAway(Box box, (Point A, Point B)[] ring, double clear)
    {
        foreach (var (a, b) in ring)
        {
            if (SegmentBox.Distance(a, b, box) < clear - 1e-9)
                return false;
        }

        return true;
    }

    private static double Support(Vector direction, (double Width, double Height) size) =>
        (Math.Abs(direction.X) * size.Width / 2) + (Math.Abs(direction.Y) * size.Height / 2);
}
