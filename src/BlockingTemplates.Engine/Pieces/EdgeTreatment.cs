namespace BlockingTemplates.Engine.Pieces;

/// <summary>What the maker said of one edge beside its shape.</summary>
/// <param name="Count">Stitches or rows along the edge, at least 1, or null if not counted.</param>
/// <param name="Of">What was counted.</param>
/// <param name="Hold">What holds the edge.</param>
public sealed record EdgeTreatment(int? Count, CountedIn Of, Holding Hold)
{
    /// <summary>An edge of which nothing was said: not counted, held by pins.</summary>
    public static EdgeTreatment Unsaid { get; } = new(null, CountedIn.Stitches, Holding.Pins);

    /// <summary>Every how many stitches or rows a mark is wanted, at least 1 and at most the count; null where the spacing decides.</summary>
    public int? Every { get; init; }

    /// <summary>Its points or scallops, or null for a smooth edge.</summary>
    public EdgePoints? Points { get; init; }

    /// <summary>Stitches whose place is known, increasing; empty where stitches lie evenly.</summary>
    public IReadOnlyList<StitchStation> Stations { get; init; } = [];

    /// <summary>How its length is meant, in words behind a figure: along its points, or nothing for a smooth edge.</summary>
    public string AlongWords => Points is { } points ? $" along its {points.Words}" : "";

    /// <summary>What holds it in the plan: marks that stand where the maker said are single pins.</summary>
    public Holding HeldBy => HasSetPlaces ? Holding.Pins : Hold;

    /// <summary>Whether its marks stand where the maker said, not where the spacing puts them.</summary>
    public bool HasSetPlaces => Hold != Holding.None && (Points is not null || Every is not null);
}
