using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Pins.Combs;

/// <summary>Where the bar of a comb lies: its end prongs stand on the pinned outline.</summary>
/// <param name="From">The first prong, in millimetres of the frame.</param>
/// <param name="To">The last prong.</param>
/// <param name="Prongs">How many prongs.</param>
/// <param name="FromFraction">Fraction of the edge at its first prong.</param>
/// <param name="ToFraction">Fraction of the edge at its last prong.</param>
public sealed record CombBar(Point From, Point To, int Prongs, double FromFraction, double ToFraction)
{
    /// <summary>Fractions of the unblocked edge that its first and last prong hold.</summary>
    public (double From, double To) Rest { get; init; } = (FromFraction, ToFraction);

    /// <summary>Where each prong stands.</summary>
    public IEnumerable<Point> ProngsAt => Enumerable.Range(0, Prongs).Select(k => From.Toward(To, (double)k / (Prongs - 1)));

    /// <summary>The bar moved by a map of the plane that keeps lengths.</summary>
    public CombBar Mapped(Affine map) => this with { From = map.Map(From), To = map.Map(To) };
}
