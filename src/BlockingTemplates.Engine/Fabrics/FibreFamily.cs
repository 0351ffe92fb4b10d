namespace BlockingTemplates.Engine.Fabrics;

/// <summary>Where a fibre comes from.</summary>
public enum FibreFamily
{
    /// <summary>Wool, hair or silk.</summary>
    Animal,

    /// <summary>Cotton, linen and the like.</summary>
    Plant,

    /// <summary>Made from plants by way of a solution: viscose and its kin.</summary>
    Regenerated,

    /// <summary>Acrylic, nylon, polyester and the like.</summary>
    Synthetic,

    /// <summary>Several, or not known.</summary>
    Mixed,
}
