using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Pins;

/// <summary>What is pinned first: one mark or all marks of an edge.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Index">Index of its corner or edge; 0 for none.</param>
/// <param name="Name">Its name as written in a project file.</param>
public sealed record Anchor(AnchorKind Kind, int Index, string Name)
{
    private const string MiddleOf = "middle of ";

    /// <summary>The fraction of the pinned edge where its middle stitch lies.</summary>
    public double Middle { get; init; } = 0.5;

    /// <summary>Where it holds the outline: its edge and the fraction there, or null for none.</summary>
    public (int Edge, double Fraction)? Place => Kind switch
    {
        AnchorKind.None => null,
        AnchorKind.Corner => (Index, 0),
        _ => (Index, Middle),
    };

    /// <summary>The anchor the maker named; unnamed, the foot, else the middle of the first edge. Null after adding a problem.</summary>
    public static Anchor? Find(string? name, Outline outline, Findings findings)
    {
        ArgumentNullException.ThrowIfNull(outline);
        ArgumentNullException.ThrowIfNull(findings);
        var corners = outline.Corners.Select(c => c.Name).ToList();
        var edges = outline.Edges.Select(e => e.Name).ToList();
        if (name is null)
            return corners.IndexOf("foot") is >= 0 and var foot ? new(AnchorKind.Corner, foot, "foot") : new(AnchorKind.MiddleOfEdge, 0, MiddleOf + edges[0]);
        if (name == "none")
            return new(AnchorKind.None, 0, name);
        if (corners.IndexOf(name) is >= 0 and var corner)
            return new(AnchorKind.Corner, corner, name);
        if (edges.IndexOf(name) is >= 0 and var edge)
            return new(AnchorKind.WholeEdge, edge, name);
        if (name.StartsWith(MiddleOf, StringComparison.Ordinal) && edges.IndexOf(name[MiddleOf.Length..]) is >= 0 and var middle)
            return new(AnchorKind.MiddleOfEdge, middle, name);
        findings.Problem("pins.anchor", $"There is no corner or edge \"{name}\" to anchor at.", $"Write a corner ({string.Join(", ", corners)}), an edge ({string.Join(", ", edges)}), \"{MiddleOf}\" and an edge, or \"none\".");
        return null;
    }
}
