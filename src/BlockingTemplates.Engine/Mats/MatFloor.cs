using BlockingTemplates.Engine.Measure;

namespace BlockingTemplates.Engine.Mats;

/// <summary>The free floor that the joined mats have to fit on, either way round.</summary>
/// <param name="Width">One side, above 0.</param>
/// <param name="Height">The other side, above 0.</param>
public sealed record MatFloor(Length Width, Length Height)
{
    /// <summary>A field that stands over by no more than this fits, in millimetres: rounding only.</summary>
    private const double RoundingMm = 1e-6;

    /// <summary>Whether a field of a size in millimetres fits, as it is or turned by a quarter.</summary>
    public bool Holds(double width, double height) => Excess(width, height) is (0, 0);

    /// <summary>By how much a field is too long (its longer side against the floor's longer one) and too wide, in millimetres; 0 where it fits.</summary>
    public (double Long, double Wide) Excess(double width, double height)
    {
        var (a, b) = (Width.Millimetres, Height.Millimetres);
        return (Over(Math.Max(width, height) - Math.Max(a, b)), Over(Math.Min(width, height) - Math.Min(a, b)));
    }

    private static double Over(double by) => by > RoundingMm ? by : 0;
}
