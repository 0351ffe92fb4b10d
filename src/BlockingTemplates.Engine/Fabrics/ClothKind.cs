namespace BlockingTemplates.Engine.Fabrics;

/// <summary>How much a kind of cloth gives, where the maker measured nothing; one line of <c>shared/cloths.csv</c>.</summary>
/// <param name="Kind">The kind of cloth, or null for cloth of which nothing was said.</param>
/// <param name="AlongOverAcross">Stiffness of a strip along the rows over one across them, above 0.</param>
/// <param name="Narrowing">Root of the product of the two Poisson ratios, 0 to under 1.</param>
/// <param name="ShearShare">Shear stiffness over the root of the product of the two strips' stiffnesses, above 0.</param>
/// <param name="IsMeasured">True where a publication measured such cloth, false for an assumption.</param>
/// <param name="Source">Which publication, or what was assumed.</param>
public sealed record ClothKind(FabricKind? Kind, Spread AlongOverAcross, Spread Narrowing, Spread ShearShare, bool IsMeasured, string Source);
