namespace BlockingTemplates.Engine.Fabrics;

/// <summary>What cloth answers to a strain.</summary>
/// <param name="State">How it carries its pull.</param>
/// <param name="Energy">Energy over rest area.</param>
/// <param name="Stress">Second Piola-Kirchhoff stress, in the cloth's axes.</param>
/// <param name="Tangent">Change of stress with strain (engineering shear); positive semi-definite.</param>
public readonly record struct MembraneResponse(ClothState State, double Energy, PlaneTensor Stress, PlaneStiffness Tangent);
