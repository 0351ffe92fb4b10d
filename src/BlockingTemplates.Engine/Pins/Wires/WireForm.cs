using BlockingTemplates.Engine.Measure;

namespace BlockingTemplates.Engine.Pins.Wires;

/// <summary>What a wire is: how thick, and of which temper.</summary>
/// <param name="Kind">Stiff or flexible.</param>
/// <param name="Diameter">Its diameter, above 0.</param>
public sealed record WireForm(WireKind Kind, Length Diameter)
{
    /// <summary>Young's modulus of stainless steel wire (type 302, ASTM A313): 193 GPa, in newtons a square millimetre
    /// (Budynas and Nisbett, Shigley's Mechanical Engineering Design, 9th ed., table 10-5; from memory, but two printed tables
    /// of spring materials give the same 28 million psi).</summary>
    public const double Modulus = 193_000;

    /// <summary>Stress up to which soft stainless rod (type 304) comes back straight: 205 MPa, the least yield strength
    /// of ASTM A276 in the annealed state (compared with a printed table of that standard's mechanical requirements).</summary>
    public const double SoftYield = 205;

    /// <summary>Least share of the tensile strength at which stainless spring wire yields in bending (the same table 10-5,
    /// 0.65 to 0.75; from memory).</summary>
    private const double SpringElasticShare = 0.65;

    /// <summary>Tensile strength of spring-tempered wire of 1 mm, in newtons a square millimetre, and how it falls with
    /// diameter: A / d^m up to so many millimetres, type 302, ASTM A313 (Shigley, table 10-4; the numbers compared with two
    /// programs that quote it).</summary>
    private static readonly (double UpToMm, double A, double M)[] SpringTensile = [(2.5, 1867, 0.146), (5, 2065, 0.263), (10, 2911, 0.478)];

    /// <summary>What a stiff wire is unless said: 1.5 mm (common practice).</summary>
    public static Length UsualStiff { get; } = Length.FromMillimetres(1.5);

    /// <summary>What a flexible wire is unless said: 1 mm (common practice).</summary>
    public static Length UsualFlexible { get; } = Length.FromMillimetres(1);

    /// <summary>Bending stiffness E pi d^4 / 64, in newtons times square millimetres.</summary>
    public double BendingStiffness => Modulus * Math.PI * Math.Pow(Diameter.Millimetres, 4) / 64;

    /// <summary>Tightest radius it follows and comes back straight, in millimetres: its outermost fibre is strained by
    /// d / 2R, so that R = E d / (2 yield stress).</summary>
    public double TightestRadiusMm => Modulus * Diameter.Millimetres / (2 * Yield);

    private double Yield => Kind == WireKind.Stiff ? SoftYield : SpringElasticShare * Tensile(Diameter.Millimetres);

    private static double Tensile(double mm)
    {
        var (_, a, m) = SpringTensile.FirstOrDefault(t => mm <= t.UpToMm, SpringTensile[^1]);
        return a / Math.Pow(mm, m);
    }
}
