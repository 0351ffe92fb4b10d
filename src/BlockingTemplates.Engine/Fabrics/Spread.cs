namespace BlockingTemplates.Engine.Fabrics;

/// <summary>A value that is not known exactly.</summary>
/// <param name="Least">The least it may be.</param>
/// <param name="Likely">What it is taken to be.</param>
/// <param name="Most">The most it may be.</param>
public readonly record struct Spread(double Least, double Likely, double Most)
{
    /// <summary>The two ends.</summary>
    public IReadOnlyList<double> Ends => [Least, Most];

    /// <summary>The value part of the way to an end, by equal steps.</summary>
    /// <param name="share">From -1, the least, over 0, the likely one, to 1, the most.</param>
    public double At(double share) => Likely + (share * (share < 0 ? Likely - Least : Most - Likely));

    /// <summary>The same by equal factors; all three must be above 0.</summary>
    public double ByFactors(double share) => Likely * Math.Pow(share < 0 ? Likely / Least : Most / Likely, share);

    /// <summary>Whether the three are in order and finite.</summary>
    public bool IsInOrder => Least <= Likely && Likely <= Most && double.IsFinite(Most - Least);
}
