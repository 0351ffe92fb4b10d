namespace BlockingTemplates.Engine.Fabrics;

/// <summary>How cloth resists being stretched in its plane: different along and across its rows.</summary>
/// <remarks>
/// Shape, stretch and scallops depend on ratios only, so the unit is free: give newtons a millimetre of width and pin loads
/// come in newtons; give ratios and they come in the same unit times millimetres.
/// </remarks>
public sealed record OrthotropicCloth
{
    /// <summary>Cloth of given constants.</summary>
    /// <param name="eAlong">Stiffness of a strip cut along the rows, force a width, above 0.</param>
    /// <param name="eAcross">Stiffness of a strip cut across the rows, above 0.</param>
    /// <param name="poisson">Narrowing over lengthening of a strip pulled along the rows; its square is under
    /// eAlong / eAcross.</param>
    /// <param name="shear">Shear stiffness along the rows, above 0.</param>
    /// <param name="grainDegrees">Degrees from x to the rows, counter-clockwise, in the unblocked outline.</param>
    /// <exception cref="ArgumentException">No cloth can have these constants; the message of <see cref="Objection"/>.</exception>
    public OrthotropicCloth(double eAlong, double eAcross, double poisson, double shear, double grainDegrees = 0)
    {
        if (Objection(eAlong, eAcross, poisson, shear) is { } objection)
            throw new ArgumentException(objection);
        if (!double.IsFinite(grainDegrees))
            throw new ArgumentOutOfRangeException(nameof(grainDegrees));
        (EAlong, EAcross, Poisson, Shear, GrainDegrees) = (eAlong, eAcross, poisson, shear, grainDegrees);
        var other = poisson * eAcross / eAlong;
        var d = 1 - (poisson * other);
        Stiffness = new(eAlong / d, poisson * eAcross / d, eAcross / d, 0, 0, shear);
    }

    /// <summary>Stiffness of a strip along the rows.</summary>
    public double EAlong { get; }

    /// <summary>Stiffness of a strip across the rows.</summary>
    public double EAcross { get; }

    /// <summary>Narrowing over lengthening of a strip pulled along the rows.</summary>
    public double Poisson { get; }

    /// <summary>Narrowing over lengthening of a strip pulled across the rows.</summary>
    public double PoissonAcross => Poisson * EAcross / EAlong;

    /// <summary>Shear stiffness.</summary>
    public double Shear { get; }

    /// <summary>Degrees from x to the rows, counter-clockwise.</summary>
    public double GrainDegrees { get; }

    /// <summary>Stress over strain in plane stress (R. M. Jones, Mechanics of Composite Materials, ch. 2; from memory).</summary>
    public PlaneStiffness Stiffness { get; }

    /// <summary>Cloth alike in all directions.</summary>
    public static OrthotropicCloth Isotropic(double e, double poisson) => new(e, e, poisson, e / (2 * (1 + poisson)));

    /// <summary>Cloth of measured stiffnesses: C11 along, C22 across, C12 between them, C66 in shear.</summary>
    public static OrthotropicCloth FromStiffness(double c11, double c12, double c22, double c66, double grainDegrees = 0)
    {
        if (!(c11 > 0) || !(c22 > 0) || !((c11 * c22) - (c12 * c12) > 0))
            throw new ArgumentException("Stiffnesses need C11 and C22 above 0 and C12 squared under C11 times C22.");
        return new(c11 - (c12 * c12 / c22), c22 - (c12 * c12 / c11), c12 / c22, c66, grainDegrees);
    }

    /// <summary>Why no cloth can have given constants, or null where one can.</summary>
    /// <remarks>The stiffness must be positive definite: E and G above 0, product of the two Poisson ratios under 1.</remarks>
    public static string? Objection(double eAlong, double eAcross, double poisson, double shear) =>
        !(eAlong > 0 && eAcross > 0 && shear > 0) || !double.IsFinite(eAlong + eAcross + shear)
            ? "The stiffnesses along, across and in shear must be above 0."
            : !(poisson * poisson * eAcross / eAlong < 1)
                ? "The narrowing is too great for the ratio of the stiffnesses: its square must be under along / across."
                : null;
}
