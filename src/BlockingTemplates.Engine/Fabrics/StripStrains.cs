using BlockingTemplates.Engine.Measure;

namespace BlockingTemplates.Engine.Fabrics;

/// <summary>What three strips say, each reading of the tape taken as it is or off by as much as it may be.</summary>
/// <remarks>
/// In the strains and stresses of the membrane (Green's strain; force over rest width and stretch), so that a computed strip
/// gives back the cloth it was computed with at any stretch: E = S / e with S = pull / (1 + stretch) and
/// e = ((1 + stretch)^2 - 1) / 2. Slanted strip: 1/E45 = (1/E1 + 1/E2 - 2 nu12/E1 + 1/G) / 4 (R. M. Jones, Mechanics of
/// Composite Materials, ch. 2; from memory).
/// </remarks>
internal sealed class StripStrains(StripTest test)
{
    /// <summary>The cloth in newtons per metre by the readings moved so far (-1 to 1 of what a reading may be off, 0 as read), or null where no cloth can give such readings.</summary>
    /// <param name="along">Stretch of the strip along.</param>
    /// <param name="across">Stretch of the strip across.</param>
    /// <param name="slanted">Stretch of the slanted strip.</param>
    /// <param name="widths">Widths while pulled.</param>
    public OrthotropicCloth? Cloth(double along, double across, double slanted, double widths)
    {
        var (a1, a2, a45) = (Give(test.Along, along), Give(test.Across, across), Give(test.Slanted, slanted));
        if (!(a1 > 0 && a2 > 0 && a45 > 0))
            return null;
        var a12 = Narrowing(test.Along, along, widths);
        if (test.Across.WidthPulled is not null)
            a12 = (a12 + Narrowing(test.Across, across, widths)) / 2;
        var (e1, e2, nu) = (1 / a1, 1 / a2, a12 / a1);
        var g = 1 / ((4 * a45) - a1 - a2 + (2 * a12));
        return OrthotropicCloth.Objection(e1, e2, nu, g) is null ? new(e1, e2, nu, g) : null;
    }

    /// <summary>The two ways to know how along and across depend on each other, per newton a metre, or null where the second was not measured.</summary>
    public (double ByAlong, double ByAcross, double Off)? Reciprocity()
    {
        if (test.Across.WidthPulled is null)
            return null;
        var (one, other) = (Narrowing(test.Along, 0, 0), Narrowing(test.Across, 0, 0));
        var off = Math.Abs(Narrowing(test.Along, 0, 1) - one) + Math.Abs(Narrowing(test.Across, 0, 1) - other);
        return (one, other, off);
    }

    /// <summary>Green's strain along a strip over its stress.</summary>
    internal double Give(PulledStrip strip, double off)
    {
        var stretch = Ratio(strip.Before, strip.Pulled, off);
        return Green(stretch) * stretch / test.Pull;
    }

    /// <summary>Green's strain across a strip, narrowing positive, over its stress.</summary>
    internal double Narrowing(PulledStrip strip, double off, double widthOff) =>
        -Green(Ratio(test.Width, strip.WidthPulled!.Value, widthOff)) * Ratio(strip.Before, strip.Pulled, off) / test.Pull;

    private double Ratio(Length before, Length pulled, double off)
    {
        var reading = test.Reading.Millimetres;
        return (pulled.Millimetres + (off * reading)) / (before.Millimetres - (off * reading));
    }

    private static double Green(double stretch) => ((stretch * stretch) - 1) / 2;
}
