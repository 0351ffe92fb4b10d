namespace BlockingTemplates.Engine.Fabrics;

/// <summary>What a search for an equilibrium works on: a mesh, its energy, the tangent and its factor.</summary>
/// <param name="Mesh">The unblocked cloth.</param>
/// <param name="Energy">Its energy.</param>
/// <param name="Tangent">Room for the tangent stiffness.</param>
/// <param name="Factor">Room for its factor.</param>
/// <param name="SizeMm">Greater side of the piece's box, in millimetres.</param>
internal sealed record MembraneSystem(TriangleMesh Mesh, MembraneEnergy Energy, StiffnessMatrix Tangent, FrontalCholesky Factor, double SizeMm);
