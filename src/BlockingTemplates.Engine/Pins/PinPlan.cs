using BlockingTemplates.Engine.Pins.Wires;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Pins;

/// <summary>Where every pin goes and in which order. Immutable.</summary>
public sealed record PinPlan
{
    /// <summary>The outline the piece is pinned to: finished size with the spring-back added.</summary>
    public required Outline Pinned { get; init; }

    /// <summary>The unblocked outline where the piece should lie before the first pin, or null.</summary>
    public Outline? LayLine { get; init; }

    /// <summary>What is pinned first.</summary>
    public required Anchor Anchor { get; init; }

    /// <summary>The symmetry of marks and outlines, or null.</summary>
    public MirrorPairing? Mirror { get; init; }

    /// <summary>The rule the gaps keep.</summary>
    public required SpacingRule Rule { get; init; }

    /// <summary>How the maker wants the edge held.</summary>
    public PinSettings Settings { get; init; } = PinSettings.Default;

    /// <summary>How wide gaps may be by the cloth, or null where the rule alone decides.</summary>
    public SpacingProfile? Profile { get; init; }

    /// <summary>How wide gaps between single pins might be by the cloth on edges that wires or combs hold now, or null where it was not asked.</summary>
    public SpacingProfile? SinglePins { get; init; }

    /// <summary>What is planned for each edge, in the outline's order.</summary>
    public required IReadOnlyList<EdgePlan> Edges { get; init; }

    /// <summary>The marks in the order of their numbers.</summary>
    public required IReadOnlyList<Mark> Marks { get; init; }

    /// <summary>The pull on wired edges as computed, by edge, or null: by the stretch and what was published.</summary>
    public IReadOnlyDictionary<int, EdgePull>? Pulls { get; init; }

    /// <summary>The wires in the order of their edges, each edge from its first corner on.</summary>
    public IReadOnlyList<Wire> Wires { get; init; } = [];

    /// <summary>The edges held by wires, in their order.</summary>
    public IReadOnlyList<WiredEdge> Wired { get; init; } = [];

    /// <summary>The mark that mirrors a mark (itself on the axis), or null where marks are not symmetric.</summary>
    public Mark? PartnerOf(Mark mark)
    {
        ArgumentNullException.ThrowIfNull(mark);
        if (Mirror is not { } mirror)
            return null;
        var (edge, fraction) = mark.IsCorner ? ((mirror.Partner[mark.Edge] + 1) % Pinned.Edges.Count, 0) : (mirror.Partner[mark.Edge], 1 - mark.Fraction);
        return Marks.FirstOrDefault(m => m.Edge == edge && Math.Abs(m.Fraction - fraction) < 1e-9);
    }

    /// <summary>The plan with everything turned about the origin, counter-clockwise, in radians.</summary>
    public PinPlan Turned(double radians)
    {
        var map = Affine.Turn(radians);
        return this with
        {
            Pinned = Pinned.Mapped(map),
            LayLine = LayLine?.Mapped(map),
            Mirror = Mirror is { } mirror ? mirror with { Centre = map.Map(mirror.Centre), Axis = map.Map(mirror.Axis) } : null,
            Marks = [.. Marks.Select(m => m with { At = map.Map(m.At), Outward = map.Map(m.Outward), Rest = m.Rest is { } rest ? map.Map(rest) : null, Bar = m.Bar?.Mapped(map) })],
        };
    }

    /// <summary>The plan with everything shifted.</summary>
    public PinPlan Shifted(Vector by)
    {
        var map = Affine.Shift(by);
        return this with
        {
            Pinned = Pinned.Mapped(map),
            LayLine = LayLine?.Mapped(map),
            Mirror = Mirror is { } mirror ? mirror with { Centre = mirror.Centre + by } : null,
            Marks = [.. Marks.Select(m => m with { At = m.At + by, Rest = m.Rest is { } rest ? rest + by : null, Bar = m.Bar?.Mapped(map) })],
        };
    }
}
