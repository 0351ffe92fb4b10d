using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Mats;

/// <summary>A seam between two mats to be taped underneath, because a pull crosses it near a pin.</summary>
/// <param name="First">Name of the mat to the left or nearer the maker.</param>
/// <param name="Second">Name of the other mat.</param>
/// <param name="From">One end of the seam.</param>
/// <param name="To">Its other end.</param>
/// <param name="Marks">Numbers of the marks whose pull crosses it.</param>
public sealed record CrossedSeam(string First, string Second, Point From, Point To, IReadOnlyList<int> Marks);
