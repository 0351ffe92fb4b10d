using BlockingTemplates.Engine;
using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Projects;

namespace BlockingTemplates.Web.Stages;

/// <summary>What a stage found of one version.</summary>
/// <param name="Version">The version.</param>
/// <param name="Stage">Which stage, from 0: a later one knows more of the same version.</param>
/// <param name="Project">The project as far as it could be read, or null.</param>
/// <param name="Parts">The plans: one, or one for each size and for both pieces of a pair; empty where there are problems.</param>
/// <param name="Findings">Problems and notes with their lines.</param>
internal sealed record StageResult(long Version, int Stage, Project? Project, IReadOnlyList<PlannedPart> Parts, Findings Findings)
{
    /// <summary>The first plan, or null where there are problems.</summary>
    public Plan? Plan => Parts is [var first, ..] ? first.Plan : null;

    /// <summary>Whether no later stage has anything to add.</summary>
    public bool IsFinal { get; init; } = true;
}
