using System.Globalization;
using BlockingTemplates.Engine.Pins;
using BlockingTemplates.Engine.Shapes;
using NetTopologySuite.Algorithm.Locate;
using NetTopologySuite.Geometries;
using Point = BlockingTemplates.Engine.Shapes.Point;

namespace BlockingTemplates.Engine.Sheets;

/// <summary>The spots where the number of each mark could stand, best first, whatever the page grid.</summary>
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
    private readonly NumberStyle _style;
    private readonly (Point A, Point B)[] _ring;
    private readonly IndexedPointInAreaLocator _region;

    private NumberSpots(PinPlan plan, NumberStyle style)
    {
        _style = style;
        var ring = plan.Pinned.Ring(RingToleranceMm);
        _ring = [.. ring.Select((p, i) => (p, ring[(i + 1) % ring.Count]))];
        _region = new(plan.Pinned.ToPolygon(RingToleranceMm));
        OfMark = [.. plan.Marks.Select(Of)];
    }

    /// <summary>For each mark in the order of numbers its spots, best first.</summary>
    public IReadOnlyList<IReadOnlyList<NumberSpot>> OfMark { get; }

    /// <summary>The spots of all marks of a plan.</summary>
    public static NumberSpots Of(PinPlan plan, NumberStyle style)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(style);
        return new(plan, style);
    }

    private List<NumberSpot> Of(Mark mark)
    {
        var near = Box.About(mark.At, 2 * ReachMm, 2 * ReachMm);
        (Point A, Point B)[] ring = [.. _ring.Where(s => near.Grown(1).Overlaps(Box.Around([s.A, s.B]).Grown(0.5)))];
        var text = mark.Number.ToString(CultureInfo.InvariantCulture);
        List<NumberSpot> outside = [], inside = [];
        foreach (var height in _style.HeightsMm)
        {
            var (width, tall) = _style.Size(text, height);
            foreach (var centre in Outside(mark, width, tall))
            {
                var box = Box.About(centre, width, tall);
                if (KeepsAway(box, ring, _style.ClearMm) && !IsInRegion(centre))
                    outside.Add(new(box, height, false));
            }

            foreach (var far in Farther)
            {
                foreach (var degrees in Fan)
                {
                    var direction = Turned(-mark.Outward, degrees);
                    var box = Box.About(mark.At + ((InsideClearMm + Support(direction, width, tall) + far) * direction), width, tall);
                    if (KeepsAway(box, ring, InsideClearMm) && IsInRegion(box.Centre))
                        inside.Add(new(box, height, true));
                }
            }
        }

        return [.. outside, .. inside];
    }

    private IEnumerable<Point> Outside(Mark mark, double width, double tall)
    {
        foreach (var far in Farther)
        {
            foreach (var degrees in Fan)
            {
                var direction = Turned(mark.Outward, degrees);
                yield return mark.At + ((_style.ClearMm + Support(direction, width, tall) + far) * direction);
            }
        }

        var straight = _style.ClearMm + Support(mark.Outward, width, tall);
        foreach (var along in AlongEdge)
        {
            foreach (var far in new[] { 0.0, 9, 18, 30 })
                yield return mark.At + ((straight + far) * mark.Outward) + (along * mark.Outward.TurnedLeft);
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

    private static double Support(Vector direction, double width, double tall) => (Math.Abs(direction.X) * width / 2) + (Math.Abs(direction.Y) * tall / 2);

    private static Vector Turned(Vector v, double degrees) => degrees == 0 ? v : Affine.Turn(degrees * Math.PI / 180).Map(v);
}
