using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Fabrics;

/// <summary>A little stiffness that keeps slack cloth near an even shape, so that its place is not left open.</summary>
/// <remarks>
/// Energy over rest area k C |F - F0|^2 / 2 with C the greater of the cloth's two stiffnesses: convex, and the same when
/// cloth and pins are turned together. Scallops that depend on it are not determined by the cloth.
/// </remarks>
/// <param name="Share">k, 0 or above, at most 1e-4 in use.</param>
/// <param name="Shape">The even deformation F0, from the unblocked cloth to the mats.</param>
public readonly record struct SlackStay(double Share, Affine Shape);
