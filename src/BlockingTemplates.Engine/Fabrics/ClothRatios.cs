namespace BlockingTemplates.Engine.Fabrics;

/// <summary>Three ratios that make a cloth up to its unit.</summary>
/// <param name="AlongOverAcross">Stiffness along the rows over across them, above 0.</param>
/// <param name="Narrowing">Root of the product of the two Poisson ratios, above -1 and under 1.</param>
/// <param name="ShearShare">Shear stiffness over the root of the product of the two stiffnesses, above 0.</param>
public readonly record struct ClothRatios(double AlongOverAcross, double Narrowing, double ShearShare)
{
    /// <summary>The ratios of a cloth.</summary>
    public static ClothRatios Of(OrthotropicCloth cloth)
    {
        ArgumentNullException.ThrowIfNull(cloth);
        return new(
            cloth.EAlong / cloth.EAcross,
            cloth.Poisson * Math.Sqrt(cloth.EAcross / cloth.EAlong),
            cloth.Shear / Unit(cloth));
    }

    /// <summary>Root of the product of a cloth's two stiffnesses.</summary>
    public static double Unit(OrthotropicCloth cloth)
    {
        ArgumentNullException.ThrowIfNull(cloth);
        return Math.Sqrt(cloth.EAlong) * Math.Sqrt(cloth.EAcross);
    }

    /// <summary>The cloth of these ratios whose root of the product of stiffnesses is 1.</summary>
    /// <param name="grainDegrees">Degrees from x to the rows.</param>
    public OrthotropicCloth Cloth(double grainDegrees)
    {
        var root = Math.Sqrt(AlongOverAcross);
        return new(root, 1 / root, Narrowing * root, ShearShare, grainDegrees);
    }
}
