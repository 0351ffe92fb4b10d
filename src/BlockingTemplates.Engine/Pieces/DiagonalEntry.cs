using BlockingTemplates.Engine.Measure;

namespace BlockingTemplates.Engine.Pieces;

/// <summary>A tape laid from corner to corner across a four-sided piece.</summary>
/// <param name="From">The corner it starts at.</param>
/// <param name="To">The corner it ends at.</param>
/// <param name="Length">What it read.</param>
public sealed record DiagonalEntry(string From, string To, Length Length);
