namespace BlockingTemplates.Engine.Fabrics;

/// <summary>What a fibre bears, as far as cautions are chosen by it.</summary>
/// <param name="Name">Its name in a project file.</param>
/// <param name="Family">Where it comes from.</param>
/// <param name="TakesWetBlock">Whether it holds the shape it dried in.</param>
/// <param name="SteamAllowed">Whether steam does it no lasting harm.</param>
/// <param name="HeatSensitive">Whether an iron at its middle setting (150 C) harms it.</param>
/// <param name="GrowsWhenWet">Whether it grows or drapes longer once wet.</param>
/// <param name="WeakerWhenWet">Whether it loses much of its strength once wet: a third or more.</param>
/// <param name="Source">Where that comes from.</param>
public sealed record Fibre(
    string Name,
    FibreFamily Family,
    bool TakesWetBlock,
    bool SteamAllowed,
    bool HeatSensitive,
    bool GrowsWhenWet,
    bool WeakerWhenWet,
    string Source);
