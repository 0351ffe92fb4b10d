using BlockingTemplates.Engine.Pins.Wires;

namespace BlockingTemplates.Engine.Pins;

/// <summary>How many of one thing the plan takes.</summary>
/// <param name="Kind">Single pins, combs, or wires of one form and length.</param>
/// <param name="LayOut">To lay out, spares left out.</param>
/// <param name="Spare">Spares to lay beside them.</param>
/// <param name="Owned">At hand, or null if not said.</param>
public sealed record Supply(PinKind Kind, int LayOut, int Spare, int? Owned)
{
    /// <summary>What the wires are; null for pins and combs.</summary>
    public WireForm? Form { get; init; }

    /// <summary>How long the wires are, in millimetres; null for pins and combs.</summary>
    public double? LengthMm { get; init; }

    /// <summary>To buy so that there are enough, spares too; null where what is owned is not said.</summary>
    public int? Buy => Owned is { } owned ? Math.Max(0, LayOut + Spare - owned) : null;
}
