using BlockingTemplates.Engine.Measure;

namespace BlockingTemplates.Engine.Pieces;

/// <summary>An edge of a general outline as the maker gave it: a bow, stations, or points; a plain line if none.</summary>
/// <param name="Name">Its name, or null (then "edge 1" ...).</param>
/// <param name="Bow">Greatest distance of the circular arc from its chord, outward positive.</param>
/// <param name="Offsets">Stations along the chord from the edge's first corner, and how far out the edge lies there.</param>
/// <param name="Points">Points between the corners, joined by straight lines.</param>
public sealed record EdgeEntry(
    string? Name = null,
    Length? Bow = null,
    IReadOnlyList<(Length Along, Length Out)>? Offsets = null,
    IReadOnlyList<(Length X, Length Y)>? Points = null);
