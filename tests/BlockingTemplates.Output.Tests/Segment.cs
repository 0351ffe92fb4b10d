using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Output.Tests;

/// <summary>A straight line read back from a file, in millimetres with y up; its ends in no order.</summary>
public readonly record struct Segment(Point A, Point B)
{
    public Point Middle => A.Toward(B, 0.5);

    /// <summary>How far apart the ends of two lines are, the better way round.</summary>
    public double DistanceTo(Segment other) => Math.Min(
        Math.Max(A.DistanceTo(other.A), B.DistanceTo(other.B)),
        Math.Max(A.DistanceTo(other.B), B.DistanceTo(other.A)));

    /// <summary>Asserts that two sets of lines are the same within a tolerance, each line once.</summary>
    public static void AssertSame(IReadOnlyCollection<Segment> expected, IReadOnlyCollection<Segment> actual, double toleranceMm)
    {
        Assert.Equal(expected.Count, actual.Count);
        var left = actual.ToList();
        foreach (var line in expected)
        {
            var nearest = left.MinBy(line.DistanceTo);
            Assert.True(line.DistanceTo(nearest) <= toleranceMm, $"{line} is not there; the nearest is {nearest}.");
            left.Remove(nearest);
        }
    }
}
