namespace BlockingTemplates.Engine.Fabrics;

/// <summary>How far the search for an equilibrium is.</summary>
/// <param name="Number">Newton steps made.</param>
/// <param name="Residual">Out-of-balance force over the cloth's forces.</param>
public readonly record struct EquilibriumStep(int Number, double Residual);
