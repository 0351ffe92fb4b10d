using BlockingTemplates.Engine.Measure;

namespace BlockingTemplates.Engine;

/// <summary>All plans of a project file: one, or one for every size and for both pieces of a pair.</summary>
/// <param name="Parts">The plans in the file's order, the mirrored piece of a pair after the measured one; empty where there is a problem.</param>
/// <param name="Findings">Problems and notes of all of them, each told once where it holds for all, else with its part's name.</param>
public sealed record PlannedFile(IReadOnlyList<PlannedPart> Parts, Findings Findings);
