namespace BlockingTemplates.Engine.Fabrics;

/// <summary>How far one triangle of cloth is stretched.</summary>
/// <param name="Along">Length along the rows over its rest length, less 1.</param>
/// <param name="Across">Length across the rows over its rest length, less 1.</param>
/// <param name="State">How it carries its pull.</param>
public readonly record struct ClothStretch(double Along, double Across, ClothState State);
