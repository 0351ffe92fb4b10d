using BlockingTemplates.Engine.Measure;

namespace BlockingTemplates.Engine.Fabrics;

/// <summary>A damp strip before and while a weight hangs on it.</summary>
/// <param name="Before">Length between two marks without the weight.</param>
/// <param name="Pulled">Length between them with the weight.</param>
/// <param name="WidthPulled">Width half-way with the weight, or null where it was not measured.</param>
public sealed record PulledStrip(Length Before, Length Pulled, Length? WidthPulled);
