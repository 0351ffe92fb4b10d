using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Projects.Files;

/// <summary>Corners of a ring of curves that were drawn, not named: where the line turns sharply.</summary>
internal static class FoundCorners
{
    /// <summary>A turn of at least so much is a corner (common practice: a doily's scallops and a drawn curve's joints turn less), in degrees.</summary>
    public const double LeastTurnDegrees = 30;

    /// <summary>How far a corner that the maker names may stand from a joint of the drawn line, in millimetres.</summary>
    public const double NearMm = 5;

    /// <summary>Indices of the curves that start at a corner, in order.</summary>
    public static List<int> ByTurn(IReadOnlyList<EdgeCurve> ring)
    {
        List<int> corners = [];
        for (var i = 0; i < ring.Count; i++)
        {
            Vector into = ring[(i + ring.Count - 1) % ring.Count].Direction(1), onward = ring[i].Direction(0);
            if (Math.Abs(Math.Atan2(into.Cross(onward), into.Dot(onward))) * 180 / Math.PI >= LeastTurnDegrees)
                corners.Add(i);
        }

        return corners;
    }

    /// <summary>The curve whose start lies nearest to a place, or null where none lies near.</summary>
    public static int? Near(IReadOnlyList<EdgeCurve> ring, Point place)
    {
        var nearest = Enumerable.Range(0, ring.Count).MinBy(i => ring[i].Start.DistanceTo(place));
        return ring[nearest].Start.DistanceTo(place) <= NearMm ? nearest : null;
    }
}
