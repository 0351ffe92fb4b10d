namespace BlockingTemplates.Engine.Fabrics;

/// <summary>How much the cloth gives, as far as it is known, and where it is known from.</summary>
/// <remarks>
/// The three cloths hold ratios: the root of the product of their stiffnesses along and across is 1. A load that a solver
/// finds with one of them, in its unit times millimetres, times <see cref="NewtonsPerMetre"/> / 1000 is in newtons.
/// </remarks>
/// <param name="Likely">What it is taken to be.</param>
/// <param name="Soft">Of all that it may be, what sags most between pins at a given stretch.</param>
/// <param name="Stiff">Of all that it may be, what sags least between pins at a given stretch.</param>
/// <param name="NewtonsPerMetre">The unit of the ratios in newtons per metre of width, where strips tell; else null.</param>
/// <param name="Source">Where it is known from.</param>
/// <param name="Told">The same in the maker's words, in whole sentences.</param>
/// <param name="Took">The stretch that the swatch took well, or null where there was none.</param>
public sealed record ClothMaterial(
    OrthotropicCloth Likely,
    OrthotropicCloth Soft,
    OrthotropicCloth Stiff,
    Spread? NewtonsPerMetre,
    MaterialSource Source,
    string Told,
    TakenStretch? Took)
{
    /// <summary>The likely unit of the ratios in newtons a millimetre of width: as strips tell, else the stiff end of what was published.</summary>
    public double NewtonsPerMm => NewtonsPerMetre is { } known ? known.Likely / 1000 : PublishedCloth.Stiffest;
}
