using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Projects.Files;

/// <summary>Turns a drawn ring so that it runs counter-clockwise; a drawing's direction says nothing.</summary>
internal static class RingTurn
{
    /// <summary>The ring counter-clockwise, from the same start.</summary>
    public static IReadOnlyList<EdgeCurve> CounterClockwise(IReadOnlyList<EdgeCurve> ring)
    {
        var points = ring.SelectMany(c => c.Flatten(Outline.FlatteningMm).SkipLast(1)).ToList();
        var twice = points.Select((p, i) => (p - points[0]).Cross(points[(i + 1) % points.Count] - points[0])).Sum();
        return twice >= 0 ? ring : [.. ring.Reverse().Select(c => c.Reversed())];
    }
}
