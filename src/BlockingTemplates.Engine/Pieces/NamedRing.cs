using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Pieces;

/// <summary>Puts the outline of a kind with named edges and corners together.</summary>
public static class NamedRing
{
    /// <summary>The outline, or null where the line of an edge is null.</summary>
    /// <param name="kind">The kind that names edges and corners.</param>
    /// <param name="corners">The corners in the kind's order, counter-clockwise.</param>
    /// <param name="line">The line of edge i between its corners; asked for every edge.</param>
    public static Outline? Of(PieceKind kind, IReadOnlyList<Point> corners, Func<int, Point, Point, EdgeCurve?> line)
    {
        ArgumentNullException.ThrowIfNull(kind);
        var curves = corners.Select((c, i) => line(i, c, corners[(i + 1) % corners.Count])).ToList();
        return curves.Contains(null)
            ? null
            : new([.. curves.Select((c, i) => new Edge(kind.EdgeNames[i], c!))], [.. kind.CornerNames.Select(c => new Corner(c, kind.IsRound))]);
    }
}
