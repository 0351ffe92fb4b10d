using MathNet.Numerics.RootFinding;

namespace BlockingTemplates.Engine.Shapes;

/// <summary>Chord, bow (height) and arc of a circular segment, up to the half circle.</summary>
/// <remarks>
/// Source: Machinery's Handbook, 31st ed. (2020), p. 83: angle = 4 atan(2h/c), r = (c^2 + 4h^2) / (8h).
/// All lengths in one unit; none may be negative.
/// </remarks>
public static class CircularSegment
{
    private const double Accuracy = 1e-14;

    /// <summary>Radius from chord and bow; infinite for a straight line.</summary>
    public static double Radius(double chord, double bow) => ((chord * chord) + (4 * bow * bow)) / (8 * bow);

    /// <summary>Angle at the centre from chord and bow, in radians, 0 to pi.</summary>
    public static double Angle(double chord, double bow) => 4 * Math.Atan(2 * bow / chord);

    /// <summary>Arc length from chord and bow.</summary>
    public static double Arc(double chord, double bow) => bow == 0 ? chord : Radius(chord, bow) * Angle(chord, bow);

    /// <summary>Bow from chord and arc, or null where the arc is shorter than the chord or past the half circle.</summary>
    public static double? BowFromArc(double chord, double arc)
    {
        var ratio = arc / chord;
        if (ratio < 1 || ratio > (Math.PI / 2) + Accuracy)
            return null;
        if (ratio - 1 < Accuracy)
            return 0;
        var half = Brent.FindRoot(h => (h / Math.Sin(h)) - ratio, 1e-9, (Math.PI / 2) + 1e-9, Accuracy, 200);
        return chord / 2 * Math.Tan(half / 2);
    }

    /// <summary>Chord from arc and bow, or null where the bow is past the half circle's.</summary>
    public static double? ChordFromArc(double arc, double bow)
    {
        var ratio = bow / arc;
        if (ratio > (1 / Math.PI) + Accuracy)
            return null;
        if (ratio < Accuracy)
            return arc;
        // bow / arc = (1 - cos h) / (2h) for half the angle h; written by the sine, which keeps its digits for flat arcs.
        var half = Brent.FindRoot(h => (Math.Pow(Math.Sin(h / 2), 2) / h) - ratio, 1e-9, (Math.PI / 2) + 1e-9, Accuracy, 200);
        return arc * Math.Sin(half) / half;
    }
}
