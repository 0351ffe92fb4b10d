namespace BlockingTemplates.Engine.Shapes;

/// <summary>A named edge of an outline.</summary>
/// <param name="Name">Its name, the trade's word or the maker's.</param>
/// <param name="Curve">Its line, from its first corner to its last.</param>
public sealed record Edge(string Name, EdgeCurve Curve);
