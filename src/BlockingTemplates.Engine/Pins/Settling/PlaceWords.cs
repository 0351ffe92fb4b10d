using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Pins.Settling;

/// <summary>Names places of a piece as a maker would point at them.</summary>
public static class PlaceWords
{
    private const double NearShare = 0.12;

    /// <summary>A place on the cloth: at a corner, near an edge, or in the middle of the piece.</summary>
    public static string Of(Point place, Outline pinned)
    {
        ArgumentNullException.ThrowIfNull(pinned);
        var box = Box.Around(pinned.Ring());
        var near = NearShare * Math.Max(box.Width, box.Height);
        var corners = Enumerable.Range(0, pinned.Corners.Count).Where(c => !pinned.Corners[c].Smooth).ToList();
        if (corners.Count > 0 && corners.MinBy(c => pinned.CornerAt(c).DistanceTo(place)) is var corner && pinned.CornerAt(corner).DistanceTo(place) <= near)
            return $"at the {pinned.Corners[corner].Name}";
        var (edge, fraction, distance) = Nearest(place, pinned);
        return distance <= near ? $"along the {EdgeWords(pinned.Edges[edge].Name)}, {Along(fraction)}" : "in the middle of the piece";
    }

    /// <summary>An edge with its name: the word edge stands once.</summary>
    public static string EdgeWords(string name) => (name ?? throw new ArgumentNullException(nameof(name))).EndsWith("edge", StringComparison.Ordinal) || name.StartsWith("edge ", StringComparison.Ordinal) ? name : $"{name} edge";

    private static string Along(double fraction) => fraction switch
    {
        < 0.2 => "near its start",
        < 0.4 => "a third of the way",
        <= 0.6 => "near its middle",
        <= 0.8 => "two thirds of the way",
        _ => "near its end",
    };

    private static (int Edge, double Fraction, double Distance) Nearest(Point place, Outline pinned)
    {
        const int Samples = 64;
        var best = (Edge: 0, Fraction: 0.0, Distance: double.PositiveInfinity);
        for (var e = 0; e < pinned.Edges.Count; e++)
        {
            for (var k = 0; k <= Samples; k++)
            {
                var distance = pinned.Edges[e].Curve.At((double)k / Samples).DistanceTo(place);
                if (distance < best.Distance)
                    best = (e, (double)k / Samples, distance);
            }
        }

        return best;
    }
}
