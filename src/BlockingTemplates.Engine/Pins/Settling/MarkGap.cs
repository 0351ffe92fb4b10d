namespace BlockingTemplates.Engine.Pins.Settling;

/// <summary>How the free edge lies between two neighbouring marks.</summary>
/// <param name="From">Number of the mark before the gap, counter-clockwise.</param>
/// <param name="To">Number of the mark after it.</param>
/// <param name="FromMm">Arc length of the first mark round the pinned outline, in millimetres.</param>
/// <param name="WidthMm">Length of the pinned outline between them, in millimetres.</param>
/// <param name="ScallopMm">Greatest distance of the free edge from the pinned outline, inside positive, in millimetres; what
/// the mesh reads too low is made up for.</param>
/// <param name="Edge">Edge on which it lies.</param>
/// <param name="Fraction">Its place there, as a fraction of the edge's stitches.</param>
/// <param name="Determined">Whether the cloth decides the line; false where it is slack, null where not known.</param>
public readonly record struct MarkGap(int From, int To, double FromMm, double WidthMm, double ScallopMm, int Edge, double Fraction, bool? Determined)
{
    /// <summary>Whether its marks stand where the maker said, so that no spacing is looked for.</summary>
    public bool IsSet { get; init; }

    /// <summary>Arc length of the gap's middle, in millimetres; may run on past the outline's length.</summary>
    public double MiddleMm => FromMm + (WidthMm / 2);
}
