namespace BlockingTemplates.Engine.Pins;

/// <summary>A place on an outline before it has a number.</summary>
/// <param name="Edge">Index of the edge.</param>
/// <param name="Fraction">Fraction of its arc length, at least 0 and under 1.</param>
/// <param name="Count">Stitch or row from the edge's first corner, or null if not counted.</param>
public readonly record struct EdgePoint(int Edge, double Fraction, double? Count)
{
    /// <summary>What stands there.</summary>
    public PinKind Kind { get; init; }

    /// <summary>Fractions of the edge at the first and last prong of a comb; null for a single pin.</summary>
    public (double From, double To)? Bar { get; init; }
}
