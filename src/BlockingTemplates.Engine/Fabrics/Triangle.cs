namespace BlockingTemplates.Engine.Fabrics;

/// <summary>A triangle of a mesh: three node numbers, counter-clockwise.</summary>
public readonly record struct Triangle(int A, int B, int C);
