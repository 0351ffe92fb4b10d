namespace BlockingTemplates.Engine.Pins;

/// <summary>How far an edge may dip between pins, in closed form: an upper estimate.</summary>
/// <remarks>
/// Half-plane in tension across its edge, held at even spacing p by stitches of width w: the sum of Flamant's solutions
/// gives (A sigma p / pi) ln(1 / sin(pi a / p)) with A = 2/E and a = e^(-3/2) w, the effective half-width of an evenly
/// loaded stitch (K. L. Johnson, Contact Mechanics, 1985, ch. 2 and 13). Small strains; cloth that is pulled far is
/// stiffer, so the true dip is less.
/// </remarks>
public static class ScallopEstimate
{
    /// <summary>Effective half-width of a stitch over its width.</summary>
    public static double HalfWidthOverWidth { get; } = Math.Exp(-1.5);

    /// <summary>Dip half-way between pins, in millimetres.</summary>
    /// <param name="strainAcross">Stretch of the cloth across the edge, at least 0.</param>
    /// <param name="gapMm">Gap between pins, in millimetres, above 0.</param>
    /// <param name="stitchMm">Width of the stitch each pin holds, in millimetres, above 0 and under the gap.</param>
    public static double MayDip(double strainAcross, double gapMm, double stitchMm)
    {
        var half = Math.Min(HalfWidthOverWidth * stitchMm, gapMm / 2);
        return 2 * strainAcross * gapMm / Math.PI * Math.Log(1 / Math.Sin(Math.PI * half / gapMm));
    }
}
