namespace BlockingTemplates.Engine.Fabrics;

/// <summary>How far the computation of the cloth is.</summary>
/// <param name="Doing">What is being computed, in a few words.</param>
/// <param name="Part">How much is done, 0 to 1, as far as can be foreseen.</param>
public readonly record struct ComputingStep(string Doing, double Part);
