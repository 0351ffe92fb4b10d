using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Sheets;

/// <summary>Where the number of a mark could stand.</summary>
/// <param name="Box">Its box, in the frame.</param>
/// <param name="FigureHeightMm">Height of its figures, in millimetres.</param>
/// <param name="IsInside">Whether it stands inside the outline, and so needs a frame.</param>
public readonly record struct NumberSpot(Box Box, double FigureHeightMm, bool IsInside);
