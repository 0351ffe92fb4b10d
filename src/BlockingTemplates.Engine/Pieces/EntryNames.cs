using System.Globalization;

namespace BlockingTemplates.Engine.Pieces;

/// <summary>Names of the edges and corners of a general outline; unnamed ones are numbered from 1.</summary>
public static class EntryNames
{
    /// <summary>Names of edges: their own, else "edge 1" and so on by place.</summary>
    public static IReadOnlyList<string> Edges(IReadOnlyList<EdgeEntry> edges) =>
        [.. edges.Select((e, i) => e.Name ?? string.Create(CultureInfo.InvariantCulture, $"edge {i + 1}"))];

    /// <summary>Names of corners: their own, else "corner 1" and so on by place.</summary>
    public static IReadOnlyList<string> Corners(IReadOnlyList<CornerEntry> corners) =>
        [.. corners.Select((c, i) => c.Name ?? string.Create(CultureInfo.InvariantCulture, $"corner {i + 1}"))];
}
