using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Pieces;

/// <summary>Places a triangle's third corner from three taped sides (trilateration).</summary>
public static class Triangulation
{
    /// <summary>The corner over a base from (0,0) to (base,0), y above 0, or null where the sides cannot close.</summary>
    /// <param name="fromFirst">Its distance from the base's first end, in millimetres, above 0.</param>
    /// <param name="fromSecond">Its distance from the base's second end, in millimetres, above 0.</param>
    /// <param name="baseLength">The base, in millimetres, above 0.</param>
    public static Point? Apex(double fromFirst, double fromSecond, double baseLength)
    {
        var x = ((fromFirst * fromFirst) - (fromSecond * fromSecond) + (baseLength * baseLength)) / (2 * baseLength);
        var squared = (fromFirst * fromFirst) - (x * x);
        return squared > 1e-9 * fromFirst * fromFirst ? new Point(x, Math.Sqrt(squared)) : null;
    }
}
