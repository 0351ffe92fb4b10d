using BlockingTemplates.Engine.Measure;

namespace BlockingTemplates.Engine.Pieces;

/// <summary>A corner of a general outline as the maker gave it.</summary>
/// <param name="X">To the right.</param>
/// <param name="Y">Up.</param>
/// <param name="Name">Its name, or null.</param>
/// <param name="Smooth">Whether the outline runs through without a forced pin.</param>
public sealed record CornerEntry(Length X, Length Y, string? Name = null, bool Smooth = false);
