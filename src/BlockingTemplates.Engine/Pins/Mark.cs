using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Pins.Combs;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Pins;

/// <summary>Where one pin goes.</summary>
public sealed record Mark
{
    /// <summary>Its turn, from 1.</summary>
    public required int Number { get; init; }

    /// <summary>The round it is set in, from 1.</summary>
    public required int Round { get; init; }

    /// <summary>What stands there.</summary>
    public PinKind Kind { get; init; } = PinKind.Pin;

    /// <summary>Index of its edge; a corner's mark stands on the edge that starts there.</summary>
    public required int Edge { get; init; }

    /// <summary>Fraction of the edge's arc length, at least 0 and under 1; 0 is the edge's first corner.</summary>
    public required double Fraction { get; init; }

    /// <summary>Stitch or row from the edge's first corner (half-numbers lie between two), or null if not counted.</summary>
    public double? Count { get; init; }

    /// <summary>What is counted on its edge.</summary>
    public CountedIn Of { get; init; }

    /// <summary>Where the pin goes: on the pinned outline, in millimetres of the frame.</summary>
    public required Point At { get; init; }

    /// <summary>Away from the piece, length 1; at a corner, half-way between its edges' outward directions.</summary>
    public required Vector Outward { get; init; }

    /// <summary>Where its edge point lies on the lay line, or null without an unblocked outline.</summary>
    public Point? Rest { get; init; }

    /// <summary>The bar of a comb, or null.</summary>
    public CombBar? Bar { get; init; }

    /// <summary>Fraction of the unblocked edge's arc length where its edge point lies: <see cref="Fraction"/> itself where stitches lie evenly.</summary>
    public double RestFraction { get; init; }

    /// <summary>Whether it is an anchor.</summary>
    public bool IsAnchor { get; init; }

    /// <summary>Whether it stands at a corner.</summary>
    public bool IsCorner => Fraction == 0;

    /// <summary>The pull from rest, or null without an unblocked outline.</summary>
    public Vector? Pull => Rest is { } rest ? At - rest : null;
}
