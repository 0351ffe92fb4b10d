namespace BlockingTemplates.Engine.Fabrics;

/// <summary>How the shape is set.</summary>
public enum SetMethod
{
    /// <summary>Soaked, pressed out, pinned, dried.</summary>
    Wet,

    /// <summary>Pinned dry, then sprayed.</summary>
    Spray,

    /// <summary>Pinned, then steamed without touching.</summary>
    Steam,
}
