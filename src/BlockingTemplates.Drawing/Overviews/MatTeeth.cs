using BlockingTemplates.Drawing.Pages;
using BlockingTemplates.Engine.Mats;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Drawing.Overviews;

/// <summary>Mats drawn as they are: interlocking teeth along seams and border.</summary>
/// <remarks>
/// Sizes of the teeth are common practice for foam mats, no source; makers differ. Left and right side, lower and upper side
/// have the same line, so that mats of one field interlock and each covers just its pitch.
/// </remarks>
public static class MatTeeth
{
    /// <summary>One tooth and the gap beside it, before it is evened out over a side, in millimetres.</summary>
    public const double ToothAndGapMm = 30;

    /// <summary>How far teeth reach to either side of the seam, in millimetres.</summary>
    public const double ReachMm = 5;

    /// <summary>How much wider a tooth is on each side at its tip than at the seam, in millimetres.</summary>
    private const double FlareMm = 2;

    private static readonly Stroke Line = new(0.25, 0.55);
    private static readonly Fill Foam = new(0.95);

    /// <summary>The mats of a field: one small drawing, placed once for each mat.</summary>
    /// <param name="mats">The mats.</param>
    /// <param name="placing">How the frame lies on the page.</param>
    public static IEnumerable<Element> Of(MatLayout mats, FramePlacing placing)
    {
        ArgumentNullException.ThrowIfNull(mats);
        var middle = new Vector(mats.PitchX / 2, mats.PitchY / 2);
        var ring = Ring(mats.PitchX, mats.PitchY).Select(p => Point.Origin + (placing.Scale * (p - Point.Origin)));
        var halfSize = (placing.Scale * (Math.Max(middle.X, middle.Y) + ReachMm)) + Line.WidthMm;
        var mat = new Symbol("mat", halfSize, [new PathElement(PathSteps.Polyline(ring, true), Line, Foam)]);
        return mats.Mats.Select(m => new SymbolElement(mat, placing.On(m.At + middle)));
    }

    /// <summary>The line round one mat about its middle, counter-clockwise, in true millimetres.</summary>
    public static IReadOnlyList<Point> Ring(double pitchX, double pitchY)
    {
        double x = pitchX / 2, y = pitchY / 2;
        var level = Side(pitchX);
        var upright = Side(pitchY);
        return
        [
            .. level.Select(s => new Point(s.Along - x, s.Out - y)),
            .. upright.Select(s => new Point(x + s.Out, s.Along - y)),
            new(x, y),
            .. level.Skip(1).Reverse().Select(s => new Point(s.Along - x, y + s.Out)),
            new(-x, y),
            .. upright.Skip(1).Reverse().Select(s => new Point(s.Out - x, s.Along - y)),
        ];
    }

    /// <summary>One side from corner to corner, its last corner left out: plain at both ends, teeth to either side in turn between.</summary>
    private static List<(double Along, double Out)> Side(double length)
    {
        var count = Math.Max(1, (int)Math.Round(length / ToothAndGapMm));
        var half = length / count / 2;
        List<(double, double)> points = [(0, 0)];
        var reach = 0.0;
        for (var step = 1; step < 2 * count; step++)
        {
            var next = step == (2 * count) - 1 ? 0 : step % 2 == 1 ? ReachMm : -ReachMm;
            points.Add((Leaning(step * half, reach, next - reach), reach));
            points.Add((Leaning(step * half, next, next - reach), next));
            reach = next;
        }

        return count == 1 ? [(0, 0)] : points;
    }

    /// <summary>Where a line between two teeth stands at a reach: leaning, so that each tooth is widest at its tip.</summary>
    private static double Leaning(double at, double reach, double rise) => at - (Math.Sign(rise) * FlareMm * reach / ReachMm);
}
