using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Pins.Settling;

/// <summary>How the edge point of one mark lies once all earlier pins are set.</summary>
/// <param name="Rest">Where it lies then.</param>
/// <param name="IsApproximate">Whether the piece can still turn about the pins set before: fewer than three, or all on one line; or a wire on a curve is not taken yet.</param>
/// <param name="Force">Force on the pin just after it is set, in the cloth's stiffness unit times millimetres; null where not known.</param>
public readonly record struct PullInTurn(Point Rest, bool IsApproximate, double? Force)
{
    /// <summary>How far the edge point is pulled to its mark, in millimetres.</summary>
    public double PullMm(Mark mark)
    {
        ArgumentNullException.ThrowIfNull(mark);
        return mark.At.DistanceTo(Rest);
    }
}
