namespace BlockingTemplates.Engine.Fabrics;

/// <summary>How the maker means to set the shape.</summary>
/// <param name="Method">How, or null if not said.</param>
/// <param name="Label">What the care label says of heat, or null if not said.</param>
public sealed record SetSettings(SetMethod? Method, CareLabel? Label)
{
    /// <summary>Nothing said.</summary>
    public static SetSettings Unsaid { get; } = new(null, null);

    /// <summary>Whether the care label forbids steam: the iron crossed out, one dot, or steam crossed out.</summary>
    public bool LabelForbidsSteam => Label is CareLabel.NoIron or CareLabel.NoSteam or CareLabel.OneDot;
}
