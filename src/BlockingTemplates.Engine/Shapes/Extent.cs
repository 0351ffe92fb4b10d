namespace BlockingTemplates.Engine.Shapes;

/// <summary>A stretch of one axis, in millimetres.</summary>
/// <param name="From">Its lesser end.</param>
/// <param name="To">Its greater end.</param>
public readonly record struct Extent(double From, double To);
