namespace BlockingTemplates.Engine.Fabrics;

/// <summary>Stiffness of one knitted cloth as published, where the maker's own is not known.</summary>
/// <remarks>
/// Acrylic of hand-knitting weight: C11 0.240872, C12 0.0362245, C22 0.0599528, C66 0.01 newtons a millimetre (K. Singal and
/// others, Programming mechanics in knitted materials, stitch by stitch, Nature Communications 15 (2024) 2622, published with
/// its code). Its two directions, 0.22 and 0.055, are taken for the range: other cloths lie inside and outside it.
/// </remarks>
public static class PublishedCloth
{
    /// <summary>The cloth itself.</summary>
    public static OrthotropicCloth Knitted { get; } = OrthotropicCloth.FromStiffness(0.240872, 0.0362245, 0.0599528, 0.01);

    /// <summary>Force a width over stretch in its softer direction, in newtons a millimetre.</summary>
    public static double Softest { get; } = Math.Min(Knitted.EAlong, Knitted.EAcross);

    /// <summary>Force a width over stretch in its stiffer direction, in newtons a millimetre.</summary>
    public static double Stiffest { get; } = Math.Max(Knitted.EAlong, Knitted.EAcross);
}
