using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Pins;

/// <summary>Fills in where a mark lies from its edge and fraction.</summary>
public static class MarkMaker
{
    /// <summary>The mark with its place, outward direction and rest.</summary>
    public static Mark At(Mark mark, Outline pinned, Outline? layLine)
    {
        ArgumentNullException.ThrowIfNull(mark);
        ArgumentNullException.ThrowIfNull(pinned);
        var curve = pinned.Edges[mark.Edge].Curve;
        return mark with
        {
            At = curve.At(mark.Fraction),
            Outward = Outward(pinned, mark.Edge, mark.Fraction),
            Rest = layLine?.Edges[mark.Edge].Curve.At(mark.Fraction),
        };
    }

    private static Vector Outward(Outline pinned, int edge, double fraction)
    {
        var along = pinned.Edges[edge].Curve.Direction(fraction);
        if (fraction > 0)
            return along.TurnedRight;
        var n = pinned.Edges.Count;
        var before = pinned.Edges[(edge + n - 1) % n].Curve.Direction(1);
        var half = (along.TurnedRight + before.TurnedRight).Unit;
        return half.Length > 0.5 ? half : before;
    }
}
