using BlockingTemplates.Engine.Fabrics;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Pins.Settling;

/// <summary>A pin plan and the cloth at rest under all its pins.</summary>
/// <param name="Plan">The pins.</param>
/// <param name="Rest">Where the cloth came to rest.</param>
/// <param name="Gaps">The gaps between neighbouring marks, once round the outline.</param>
/// <param name="Loads">Force of each mark on the cloth, in the order of the marks' numbers, in the cloth's stiffness unit times millimetres.</param>
public sealed record SettledPins(PinPlan Plan, Equilibrium Rest, IReadOnlyList<MarkGap> Gaps, IReadOnlyList<Vector> Loads);
