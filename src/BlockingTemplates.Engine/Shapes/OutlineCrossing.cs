using NetTopologySuite.Operation.Valid;

namespace BlockingTemplates.Engine.Shapes;

/// <summary>Finds where an outline crosses or touches itself.</summary>
public static class OutlineCrossing
{
    /// <summary>A place where the outline crosses or touches itself, with the nearest edges, or null if it does not.</summary>
    /// <remarks>Checked on the flattened ring by NetTopologySuite's validity test.</remarks>
    public static (Point At, IReadOnlyList<int> Edges)? Find(Outline outline)
    {
        ArgumentNullException.ThrowIfNull(outline);
        var check = new IsValidOp(outline.ToPolygon());
        if (check.IsValid)
            return null;
        var at = new Point(check.ValidationError.Coordinate.X, check.ValidationError.Coordinate.Y);
        var near = outline.Edges
            .Select((e, i) => (Index: i, Distance: DistanceToLine(e.Curve.Flatten(Outline.FlatteningMm), at)))
            .OrderBy(e => e.Distance).ThenBy(e => e.Index)
            .Take(2).Where(e => e.Distance < 1).Select(e => e.Index).Order().ToList();
        return (at, near);
    }

    private static double DistanceToLine(IReadOnlyList<Point> line, Point p)
    {
        var least = double.PositiveInfinity;
        for (var i = 1; i < line.Count; i++)
        {
            var step = line[i] - line[i - 1];
            var along = Math.Clamp((p - line[i - 1]).Dot(step) / Math.Max(step.Dot(step), double.Epsilon), 0, 1);
            least = Math.Min(least, p.DistanceTo(line[i - 1].Toward(line[i], along)));
        }

        return least;
    }
}
