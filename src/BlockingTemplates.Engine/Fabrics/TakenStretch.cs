namespace BlockingTemplates.Engine.Fabrics;

/// <summary>How far a swatch was stretched and took it well: length over length before, less 1.</summary>
/// <param name="Along">Along the rows, a fraction.</param>
/// <param name="Across">Across the rows, a fraction.</param>
public readonly record struct TakenStretch(double Along, double Across);
