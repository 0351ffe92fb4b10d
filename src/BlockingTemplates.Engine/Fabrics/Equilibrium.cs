using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Fabrics;

/// <summary>The pinned cloth at rest between its pins, or the best found.</summary>
/// <param name="End">Why the search ended; only <see cref="EquilibriumEnd.Converged"/> is an equilibrium.</param>
/// <param name="Residual">Out-of-balance force over the cloth's forces (Euclidean norms).</param>
/// <param name="PinErrorMm">Greatest distance of a held stitch's mean from its mark, in millimetres.</param>
/// <param name="Steps">Newton steps made.</param>
/// <param name="SmallestAngleDegrees">Smallest angle of the mesh.</param>
/// <param name="Places">Where each node lies.</param>
/// <param name="Stretches">Stretch and state of each triangle.</param>
/// <param name="PinLoads">Force of each pin on the cloth, in the cloth's stiffness unit times millimetres.</param>
/// <param name="OtherPlaces">Node places if slack cloth were kept near an even shape 3 % larger, to first order; where
/// that was asked for and some cloth is not taut, else null.</param>
/// <param name="SlackTried">Whether the dependence on that shape is known: tried, or all cloth is taut.</param>
public sealed record Equilibrium(
    EquilibriumEnd End,
    double Residual,
    double PinErrorMm,
    int Steps,
    double SmallestAngleDegrees,
    IReadOnlyList<Point> Places,
    IReadOnlyList<ClothStretch> Stretches,
    IReadOnlyList<Vector> PinLoads,
    IReadOnlyList<Point>? OtherPlaces,
    bool SlackTried)
{
    /// <summary>Whether forces balance.</summary>
    public bool Converged => End == EquilibriumEnd.Converged;

    /// <summary>The line of the pinned cloth's edge: places of the rim nodes, once round.</summary>
    public IReadOnlyList<Point> Rim(TriangleMesh mesh)
    {
        ArgumentNullException.ThrowIfNull(mesh);
        return [.. Places.Take(mesh.Rim.Count)];
    }
}
