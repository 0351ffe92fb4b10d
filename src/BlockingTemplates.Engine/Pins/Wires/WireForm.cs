using BlockingTemplates.Engine.Measure;

namespace BlockingTemplates.Engine.Pins.Wires;

/// <summary>What a wire is: how thick, and of which temper.</summary>
/// <param name="Kind">Stiff or flexible.</param>
/// <param name="Diameter">Its diameter, above 0.</param>
public sealed record WireForm(WireKind Kind, Length Diameter)
{
    /// <summary>Young's modulus of stainless steel wire (type 302): 193 GPa, in newtons a square millimetre
    /// (J. E. Shigley, Mechanical Engineering Design, table of spring wires; from memory).</summary>
    public const double Modulus = 193_000;

    /// <summary>Stress up to which soft stainless rod (type 304) comes back straight: 205 MPa, the least yield strength
    /// of ASTM A276 in the annealed state (from memory, high confidence).</summary>
    public const double SoftYield = 205;

    /// <summary>Tensile strength of spring-tempered wire of 1 mm, in newtons a square millimetre, and how it falls with
    /// diameter: A / d^m for type 302, ASTM A313 (Shigley, same chapter; from memory).</summary>
    private const double SpringTensile = 1867;

    private const double SpringExponent = 0.146;

    /// <summary>Least share of the tensile strength at which spring wire yields (Shigley, 0.65 to 0.75; from memory).</summary>
    private const double SpringElasticShare = 0.65;

    /// <summary>What a stiff wire is unless said: 1.5 mm (common practice).</summary>
    public static Length UsualStiff { get; } = Length.FromMillimetres(1.5);

    /// <summary>What a flexible wire is unless said: 1 mm (common practice).</summary>
    public static Length UsualFlexible { get; } = Length.FromMillimetres(1);

    /// <summary>Bending stiffness E pi d^4 / 64, in newtons times square millimetres.</summary>
    public double BendingStiffness => Modulus * Math.PI * Math.Pow(Diameter.Millimetres, 4) / 64;

    /// <summary>Tightest radius it follows and comes back straight, in millimetres: its outermost fibre is strained by
    /// d / 2R, so that R = E d / (2 yield stress).</summary>
    public double TightestRadiusMm => Modulus * Diameter.Millimetres / (2 * Yield);

    private double Yield => Kind == WireKind.Stiff ? SoftYield : SpringElasticShare * SpringTensile / Math.Pow(Diameter.Millimetres, SpringExponent);
}
