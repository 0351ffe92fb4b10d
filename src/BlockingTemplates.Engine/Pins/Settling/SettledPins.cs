using BlockingTemplates.Engine.Fabrics;

namespace BlockingTemplates.Engine.Pins.Settling;

/// <summary>A pin plan and the cloth at rest under all its pins.</summary>
/// <param name="Plan">The pins.</param>
/// <param name="Rest">Where the cloth came to rest.</param>
/// <param name="Gaps">The gaps between neighbouring marks, once round the outline.</param>
public sealed record SettledPins(PinPlan Plan, Equilibrium Rest, IReadOnlyList<MarkGap> Gaps);
