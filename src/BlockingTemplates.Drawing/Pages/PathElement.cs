namespace BlockingTemplates.Drawing.Pages;

/// <summary>A line or an area.</summary>
/// <param name="Steps">The path; starts with a move.</param>
/// <param name="Stroke">How its line is drawn, or null for no line.</param>
/// <param name="Fill">How its area is filled, or null for no fill. Fill first, then line.</param>
public sealed record PathElement(IReadOnlyList<PathStep> Steps, Stroke? Stroke, Fill? Fill = null) : Element;
