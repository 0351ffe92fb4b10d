namespace BlockingTemplates.Engine.Pins.Settling;

/// <summary>What the plan would be at one end of what the cloth may be.</summary>
/// <param name="Pins">Pins that this cloth needs, or null where the maker gave the spacing or none were found.</param>
/// <param name="ScallopMm">Worst scallop of this cloth under the plan's pins, without sign, in millimetres; null where no line is determined.</param>
public sealed record ClothEnd(int? Pins, double? ScallopMm);
