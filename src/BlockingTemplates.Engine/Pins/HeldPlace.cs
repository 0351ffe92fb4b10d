namespace BlockingTemplates.Engine.Pins;

/// <summary>A place on a run of edges and what stands there.</summary>
/// <param name="AtMm">Arc length from the run's start, in millimetres; of a comb, its middle.</param>
/// <param name="Kind">What stands there.</param>
/// <param name="HalfMm">Half the arc length a comb takes; 0 for a single pin.</param>
public readonly record struct HeldPlace(double AtMm, PinKind Kind, double HalfMm = 0)
{
    /// <summary>Where it begins, in millimetres.</summary>
    public double FromMm => AtMm - HalfMm;

    /// <summary>Where it ends, in millimetres.</summary>
    public double ToMm => AtMm + HalfMm;
}
