namespace BlockingTemplates.Engine.Fabrics;

/// <summary>What the yarn's care label says of heat.</summary>
/// <remarks>Source: ISO 3758:2012, ironing symbols (quoted second-hand): one dot up to 110 C without steam, two 150 C, three 200 C, crossed out no ironing and no steam.</remarks>
public enum CareLabel
{
    /// <summary>The iron crossed out: no iron, no steam.</summary>
    NoIron,

    /// <summary>The iron's steam crossed out, or the words.</summary>
    NoSteam,

    /// <summary>One dot: up to 110 C; steam may do lasting harm.</summary>
    OneDot,

    /// <summary>Two dots: up to 150 C.</summary>
    TwoDots,

    /// <summary>Three dots: up to 200 C.</summary>
    ThreeDots,
}
