using BlockingTemplates.Engine.Pieces;

namespace BlockingTemplates.Engine.Pins;

/// <summary>The ways of holding one edge side by side for the same scallop, and the one suggested; the maker decides.</summary>
/// <param name="Edge">Index of the edge.</param>
/// <param name="Ways">By pins, by combs, by wires.</param>
/// <param name="Suggested">The way suggested.</param>
/// <param name="Why">Why, in one sentence.</param>
public sealed record EdgeAdvice(int Edge, IReadOnlyList<EdgeWay> Ways, Holding Suggested, string Why);
