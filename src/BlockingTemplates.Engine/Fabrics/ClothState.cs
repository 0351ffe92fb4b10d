namespace BlockingTemplates.Engine.Fabrics;

/// <summary>How a piece of cloth carries its pull.</summary>
public enum ClothState
{
    /// <summary>It carries nothing.</summary>
    Slack,

    /// <summary>It is pulled in one direction and wrinkles across it.</summary>
    Wrinkled,

    /// <summary>It is pulled in all directions.</summary>
    Taut,
}
