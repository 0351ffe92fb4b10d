using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Pins;

namespace BlockingTemplates.Engine.Mats;

/// <summary>What the mat stage hands on. Immutable.</summary>
/// <param name="Pins">The pin plan in the frame, marks near seams moved where that helps.</param>
/// <param name="Layout">The mats.</param>
/// <param name="Notes">What the maker should know: mats missing, seams to tape.</param>
public sealed record MatPlan(PinPlan Pins, MatLayout Layout, IReadOnlyList<Note> Notes);
