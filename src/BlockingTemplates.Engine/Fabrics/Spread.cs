namespace BlockingTemplates.Engine.Fabrics;

/// <summary>A value that is not known exactly.</summary>
/// <param name="Least">The least it may be.</param>
/// <param name="Likely">What it is taken to be.</param>
/// <param name="Most">The most it may be.</param>
public readonly record struct Spread(double Least, double Likely, double Most)
{
    /// <summary>The two ends.</summary>
    public IReadOnlyList<double> Ends => [Least, Most];

    /// <summary>Whether the three are in order and finite.</summary>
    public bool IsInOrder => Least <= Likely && Likely <= Most && double.IsFinite(Most - Least);
}
