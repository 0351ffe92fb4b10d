namespace BlockingTemplates.Engine.Shapes;

/// <summary>A named corner between two edges.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Smooth">Whether the outline runs through it as if there were no corner: no forced pin.</param>
public sealed record Corner(string Name, bool Smooth = false);
