namespace BlockingTemplates.Engine.Fabrics;

/// <summary>How the free edge lies between two neighbouring pins.</summary>
/// <param name="FromPin">The pin before the gap, counter-clockwise; its number in the support.</param>
/// <param name="ToPin">The pin after it.</param>
/// <param name="ScallopMm">Greatest distance of the free edge from the pinned outline, inside positive, in millimetres.</param>
/// <param name="Edge">Edge on which it lies.</param>
/// <param name="Fraction">Its place there, as a fraction of the unblocked edge's length.</param>
/// <param name="Determined">Whether the cloth decides the line: it stays the same, within 0.1 mm and 2 %, if slack
/// cloth were kept near an even shape 3 % larger (<see cref="Equilibrium.OtherPlaces"/>). Null where that was not tried.</param>
public readonly record struct EdgeGap(int FromPin, int ToPin, double ScallopMm, int Edge, double Fraction, bool? Determined)
{
    /// <summary>Difference up to which two answers count as one: a fixed part, in millimetres.</summary>
    public const double SameMm = 0.1;

    /// <summary>The same, as a share of the scallop.</summary>
    public const double SameShare = 0.02;
}
