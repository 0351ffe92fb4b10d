namespace BlockingTemplates.Engine.Pieces;

/// <summary>What the maker said of one edge beside its shape.</summary>
/// <param name="Count">Stitches or rows along the edge, at least 1, or null if not counted.</param>
/// <param name="Of">What was counted.</param>
/// <param name="Hold">What holds the edge.</param>
public sealed record EdgeTreatment(int? Count, CountedIn Of, Holding Hold)
{
    /// <summary>An edge of which nothing was said: not counted, held by pins.</summary>
    public static EdgeTreatment Unsaid { get; } = new(null, CountedIn.Stitches, Holding.Pins);
}
