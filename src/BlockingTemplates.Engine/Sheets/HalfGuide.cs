using BlockingTemplates.Engine.Pins;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Sheets;

/// <summary>The half of a symmetric piece that is printed: the one to the right of its spine line.</summary>
/// <remarks>Its marks are pricked, the paper is turned over the spine line, and the other half is pricked through the same holes.</remarks>
/// <param name="OnSpine">A point of the spine line.</param>
/// <param name="Spine">Its direction, length 1, upward.</param>
/// <param name="WholeCount">Sheets that the whole guide would take.</param>
public sealed record HalfGuide(Point OnSpine, Vector Spine, int WholeCount)
{
    private const double OnLineMm = 0.05;
    private const double BeyondMm = 8;

    /// <summary>Whether a place is printed: on the spine line or to its right.</summary>
    public bool Keeps(Point place) => Side(place) <= OnLineMm;

    /// <summary>How far a place lies to the left of the spine line, in millimetres; negative to its right.</summary>
    public double Side(Point place) => Spine.Cross(place - OnSpine);

    /// <summary>The stretches of a ring that are printed, each as a line from the spine to the spine.</summary>
    public IReadOnlyList<IReadOnlyList<Point>> Kept(IReadOnlyList<Point> ring)
    {
        ArgumentNullException.ThrowIfNull(ring);
        var n = ring.Count;
        var start = Enumerable.Range(0, n).FirstOrDefault(i => Side(ring[i]) > OnLineMm, -1);
        if (start < 0)
            return [ring];
        List<IReadOnlyList<Point>> lines = [];
        List<Point>? line = null;
        for (var k = 0; k < n; k++)
        {
            Point a = ring[(start + k) % n], b = ring[(start + k + 1) % n];
            double sa = Side(a), sb = Side(b);
            if (sa > 0 && sb <= 0)
                line = [a.Toward(b, sa / (sa - sb))];
            if (line is not null && sb <= 0)
                line.Add(b);
            if (sa <= 0 && sb > 0 && line is not null)
            {
                line.Add(a.Toward(b, sa / (sa - sb)));
                lines.Add(line);
                line = null;
            }
        }

        return lines;
    }

    /// <summary>Places beyond the spine line that a sheet must show too, so that the marks on the line are printed whole.</summary>
    public IEnumerable<Point> BeyondSpine(PinPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return plan.Marks.Where(m => Math.Abs(Side(m.At)) <= OnLineMm).Select(m => m.At + (BeyondMm * Spine.TurnedLeft));
    }

    /// <summary>The marks that are printed.</summary>
    public IReadOnlyList<Mark> Kept(PinPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return [.. plan.Marks.Where(m => Keeps(m.At))];
    }
}
