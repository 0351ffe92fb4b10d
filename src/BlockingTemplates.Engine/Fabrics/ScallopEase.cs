using System.Numerics;

namespace BlockingTemplates.Engine.Fabrics;

/// <summary>How easily cloth sags between pins at a given stretch, as one number to compare cloths by.</summary>
/// <remarks>
/// Sag of a half-plane's edge over the pull across it (A of the periodic line load, 2 / E where alike in all directions;
/// S. G. Lekhnitskii, Theory of Elasticity of an Anisotropic Body, 1963, half-plane; from memory), times the pull that an
/// even stretch both ways makes, mean over eight directions of the edge. Free of the stiffness's unit. A first guess as far
/// as the stretch is not small, good enough to tell the softer of two cloths.
/// </remarks>
public static class ScallopEase
{
    private const int Directions = 8;

    /// <summary>The ease of a cloth, above 0; 2 / (1 - Poisson ratio) where it is alike in all directions.</summary>
    public static double Of(OrthotropicCloth cloth)
    {
        ArgumentNullException.ThrowIfNull(cloth);
        return Enumerable.Range(0, Directions).Average(k => Of(cloth, Math.PI * k / Directions));
    }

    /// <summary>The same for an edge at an angle to the rows, in radians.</summary>
    public static double Of(OrthotropicCloth cloth, double angle)
    {
        ArgumentNullException.ThrowIfNull(cloth);
        var (a11, a22, a12) = (1 / cloth.EAlong, 1 / cloth.EAcross, -cloth.Poisson / cloth.EAlong);
        var mixed = (2 * a12) + (1 / cloth.Shear);
        var root = Complex.Sqrt((mixed * mixed) - (4 * a11 * a22));
        var (cos, sin) = (Math.Cos(angle), Math.Sin(angle));
        var across = (a11 * Math.Pow(sin, 4)) + (mixed * sin * sin * cos * cos) + (a22 * Math.Pow(cos, 4));
        var sag = across * Math.Abs((Turned(1) + Turned(-1)).Imaginary);
        var c = cloth.Stiffness;
        return sag * (((c.C11 + c.C12) * sin * sin) + ((c.C22 + c.C12) * cos * cos));

        // Reciprocal of a characteristic root above the real axis, in axes turned by the angle.
        Complex Turned(int sign)
        {
            var m = Complex.Sqrt((-mixed + (sign * root)) / (2 * a11));
            m = m.Imaginary < 0 ? -m : m;
            return (cos + (m * sin)) / ((m * cos) - sin);
        }
    }
}
