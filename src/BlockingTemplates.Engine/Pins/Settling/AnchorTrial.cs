namespace BlockingTemplates.Engine.Pins.Settling;

/// <summary>How hard the hardest pull is if the pinning starts at an anchor.</summary>
/// <param name="Anchor">The anchor's name.</param>
/// <param name="ForceShare">Greatest force on a pin just after it is set, over the greatest of all anchors compared; 0 to 1.</param>
/// <param name="HardestMark">Number of the mark with that force, in the order that starts at this anchor.</param>
/// <param name="IsTaken">Whether the plan starts there.</param>
public sealed record AnchorTrial(string Anchor, double ForceShare, int HardestMark, bool IsTaken);
