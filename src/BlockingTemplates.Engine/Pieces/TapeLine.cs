using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Pieces;

/// <summary>Where the tape lies on a kind's sketch for one of its measurements by name.</summary>
/// <param name="Name">The measurement, in words.</param>
/// <param name="From">Where it starts, in the sketch.</param>
/// <param name="To">Where it ends.</param>
public sealed record TapeLine(string Name, Point From, Point To);
