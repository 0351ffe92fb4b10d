using BlockingTemplates.Engine.Pins;

namespace BlockingTemplates.Engine.Sheets;

/// <summary>The spots where the number of one mark could stand, best first, found as far as they are asked for.</summary>
public sealed class MarkSpots
{
    private readonly Lazy<IReadOnlyList<NumberSpot>>[] _outside;
    private readonly Lazy<IReadOnlyList<NumberSpot>>[] _inside;

    internal MarkSpots(Mark mark, int? partner, IEnumerable<Func<IReadOnlyList<NumberSpot>>> outside, IEnumerable<Func<IReadOnlyList<NumberSpot>>> inside)
    {
        (Mark, Partner) = (mark, partner);
        _outside = [.. outside.Select(f => new Lazy<IReadOnlyList<NumberSpot>>(f))];
        _inside = [.. inside.Select(f => new Lazy<IReadOnlyList<NumberSpot>>(f))];
    }

    /// <summary>The mark.</summary>
    public Mark Mark { get; }

    /// <summary>The number of its mirror partner where half a guide carries both, else null.</summary>
    public int? Partner { get; }

    /// <summary>Spots outside the outline, largest figures first.</summary>
    public IEnumerable<NumberSpot> Outside => _outside.SelectMany(s => s.Value);

    /// <summary>All spots, those outside first.</summary>
    public IEnumerable<NumberSpot> All => Outside.Concat(_inside.SelectMany(s => s.Value));

    /// <summary>Spots outside with figures of full size.</summary>
    public IReadOnlyList<NumberSpot> FullSize => _outside[0].Value;
}
