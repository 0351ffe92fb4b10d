namespace BlockingTemplates.Engine.Fabrics;

/// <summary>Finds how much a cloth gives: by the maker's strips, else by the swatch and the kind of cloth, else by the kind alone.</summary>
/// <remarks>
/// The soft and the stiff end are those of greatest and least <see cref="ScallopEase"/> within the ranges, one ratio or reading
/// being off by as much as it may be, several at once by less: by 1 / root of their number.
/// </remarks>
public static class ClothMaterials
{
    /// <summary>How much harder the hands may have pulled a swatch one way than the other: a habit's guess, no source.</summary>
    public const double UnevenHands = 2;

    /// <summary>The most that a cloth's shear stiffness is taken to be, over the root of the product of its two stiffnesses; 0.5 at most where it is alike in all directions.</summary>
    public const double MostShearShare = 5;

    private static readonly int[] Ways = [0, -1, 1];

    /// <summary>The material of what was said of the cloth.</summary>
    /// <param name="fabric">What was said; its strips must be such as cloth can have (<see cref="StripProblems"/>).</param>
    /// <exception cref="ArgumentException">No cloth can have its strips.</exception>
    public static ClothMaterial Of(FabricSettings fabric)
    {
        ArgumentNullException.ThrowIfNull(fabric);
        if (fabric.Strips is { } strips)
            return OfStrips(strips, fabric);
        var kind = ClothCatalogue.Of(fabric.Kind);
        if (fabric.Swatch is { } swatch && OfSwatch(swatch, kind, fabric) is { } bySwatch)
            return bySwatch;
        return Between(
            kind.AlongOverAcross,
            kind,
            fabric,
            kind.IsMeasured ? MaterialSource.MeasuredByKind : MaterialSource.AssumedByKind,
            $"{MaterialWords.ByKind(kind)}{MaterialWords.Ratios(kind.AlongOverAcross, kind)}{MaterialWords.TryStrips}");
    }

    /// <summary>The cloths that strips say, in newtons per metre: as read first, then with readings off all ways.</summary>
    /// <param name="strips">The strips.</param>
    /// <param name="share">How far the readings are off when so many groups of them are, as a share of what one may be off.</param>
    private static OrthotropicCloth[] Readings(StripTest strips, Func<int, double> share)
    {
        var strains = new StripStrains(strips);
        return
        [
            .. from along in Ways
               from across in Ways
               from slanted in Ways
               from widths in Ways
               let off = share(Moved(along, across, slanted, widths))
               let cloth = strains.Cloth(off * along, off * across, off * slanted, off * widths)
               where cloth is not null && ClothRatios.Of(cloth).ShearShare <= MostShearShare
               select cloth,
        ];
    }

    /// <summary>Each at its worst at once is unlikely: the box is cut to the ellipsoid in it.</summary>
    private static double OnEllipsoid(int moved) => moved == 0 ? 0 : 1 / Math.Sqrt(moved);

    private static int Moved(params ReadOnlySpan<int> ways) => ways.Length - ways.Count(0);

    private static ClothMaterial OfStrips(StripTest strips, FabricSettings fabric)
    {
        var asRead = new StripStrains(strips).Cloth(0, 0, 0, 0);
        if (asRead is null || ClothRatios.Of(asRead).ShearShare > MostShearShare)
            throw new ArgumentException("No cloth can have these strips.", nameof(fabric));
        var readings = Readings(strips, _ => 1);

        // A strip's stretch and the widths each hang on two readings.
        OrthotropicCloth[] scaled = [.. Readings(strips, moved => OnEllipsoid(2 * moved)).Select(c => ClothRatios.Of(c).Cloth(fabric.GrainDegrees))];
        var unit = new Spread(readings.Min(ClothRatios.Unit), ClothRatios.Unit(asRead), readings.Max(ClothRatios.Unit));
        return new(
            scaled[0],
            scaled.MaxBy(c => ScallopEase.Of(c))!,
            scaled.MinBy(c => ScallopEase.Of(c))!,
            unit,
            MaterialSource.Strips,
            MaterialWords.ByStrips(strips, asRead, readings),
            fabric.Swatch?.Took);
    }

    /// <summary>Null where the swatch did not grow both ways, so that it says nothing of one way against the other.</summary>
    private static ClothMaterial? OfSwatch(Swatch swatch, ClothKind kind, FabricSettings fabric)
    {
        var took = swatch.Took;
        if (!(took.Along > 0 && took.Across > 0))
            return null;
        var m = kind.Narrowing;
        double[] all =
        [
            .. from uneven in (double[])[1 / UnevenHands, UnevenHands]
               from narrowing in m.Ends
               select AlongOverAcross(took, uneven, narrowing),
        ];
        var ratio = new Spread(all.Min(), AlongOverAcross(took, 1, m.Likely), all.Max());
        return Between(ratio, kind, fabric, MaterialSource.Swatch, $"{MaterialWords.BySwatch(took)}{MaterialWords.Ratios(ratio, kind)}{MaterialWords.TryStrips}");
    }

    /// <summary>The ratio of stiffnesses by which pulls along and across stretch cloth as a swatch was.</summary>
    /// <param name="took">Stretch along and across, above 0.</param>
    /// <param name="uneven">Pull along over pull across.</param>
    /// <param name="narrowing">Root of the product of the Poisson ratios.</param>
    /// <remarks>With q = root of the ratio, the strains are to each other as uneven / q - m to q - uneven m: a quadratic in q.</remarks>
    private static double AlongOverAcross(TakenStretch took, double uneven, double narrowing)
    {
        var strains = Green(took.Along) / Green(took.Across);
        var half = narrowing * (1 - (strains * uneven)) / 2;
        var q = (-half + Math.Sqrt((half * half) + (strains * uneven))) / strains;
        return q * q;
    }

    private static double Green(double stretch) => stretch * (1 + (stretch / 2));

    private static ClothMaterial Between(Spread ratio, ClothKind kind, FabricSettings fabric, MaterialSource source, string told)
    {
        OrthotropicCloth[] all =
        [
            .. from r in Ways
               from m in Ways
               from g in Ways
               let share = OnEllipsoid(Moved(r, m, g))
               select new ClothRatios(ratio.ByFactors(share * r), kind.Narrowing.At(share * m), kind.ShearShare.ByFactors(share * g)).Cloth(fabric.GrainDegrees),
        ];
        return new(
            all[0],
            all.MaxBy(c => ScallopEase.Of(c))!,
            all.MinBy(c => ScallopEase.Of(c))!,
            null,
            source,
            told,
            fabric.Swatch?.Took);
    }
}
