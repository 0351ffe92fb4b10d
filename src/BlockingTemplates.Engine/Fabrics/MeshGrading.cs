namespace BlockingTemplates.Engine.Fabrics;

/// <summary>How fine a mesh is, and where.</summary>
public sealed record MeshGrading
{
    /// <summary>Greatest distance of nodes along the outline, in millimetres, above 0.</summary>
    public required double EdgeMm { get; init; }

    /// <summary>Greatest distance of nodes inside, in millimetres, above 0.</summary>
    public required double InsideMm { get; init; }

    /// <summary>Increase of the distance between nodes per distance from a finer place, above 0; 0.25 unless said.</summary>
    public double Growth { get; init; } = 0.25;

    /// <summary>Node distances a stitch at each fine place: an even number from 2 (nodes half a stitch apart).</summary>
    public int NodesPerStitch { get; init; } = 2;

    /// <summary>Where stitches are resolved.</summary>
    public IReadOnlyList<FinePlace> FinePlaces { get; init; } = [];

    internal void Check()
    {
        if (!(EdgeMm > 0) || !(InsideMm > 0) || !(Growth > 0) || double.IsInfinity(EdgeMm + InsideMm + Growth))
            throw new ArgumentException("Node distances and growth must be above 0.");
        if (NodesPerStitch < 2 || NodesPerStitch % 2 != 0)
            throw new ArgumentException("Node distances a stitch must be an even number from 2.");
        if (FinePlaces.Any(p => !(p.WidthMm > 0) || p.Fraction is not (>= 0 and <= 1)))
            throw new ArgumentException("A fine place needs a width above 0 and a fraction from 0 to 1.");
    }
}
