using BlockingTemplates.Engine.Measure;

namespace BlockingTemplates.Engine.Pins.Wires;

/// <summary>Wires of one length at hand.</summary>
/// <param name="Length">Their length, above 0.</param>
/// <param name="Count">How many, at least 0.</param>
/// <param name="Form">What they are.</param>
public sealed record WireStock(Length Length, int Count, WireForm Form);
