using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Pins;

/// <summary>Fills in where a mark lies from its edge and fraction.</summary>
public static class MarkMaker
{
    /// <summary>The mark with its place, outward direction and rest.</summary>
    public static Mark At(Mark mark, Outline pinned, Outline? layLine, Correspondence match)
    {
        ArgumentNullException.ThrowIfNull(mark);
        ArgumentNullException.ThrowIfNull(pinned);
        ArgumentNullException.ThrowIfNull(match);
        var curve = pinned.Edges[mark.Edge].Curve;
        var rest = match.UnblockedAt(mark.Fraction);
        return mark with
        {
            At = curve.At(mark.Fraction),
            Outward = Outward(pinned, mark.Edge, mark.Fraction),
            RestFraction = rest,
            Rest = layLine?.Edges[mark.Edge].Curve.At(rest),
        };
    }

    private static Vector Outward(Outline pinned, int edge, double fraction)
    {
        if (fraction > 0)
            return pinned.Edges[edge].Curve.Outward(fraction);
        var along = pinned.Edges[edge].Curve.Direction(fraction);
        var n = pinned.Edges.Count;
        var before = pinned.Edges[(edge + n - 1) % n].Curve.Direction(1);
        var half = (along.TurnedRight + before.TurnedRight).Unit;
        return half.Length > 0.5 ? half : before;
    }
}
