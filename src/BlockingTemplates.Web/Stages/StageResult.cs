using BlockingTemplates.Engine;
using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Projects;

namespace BlockingTemplates.Web.Stages;

/// <summary>What a stage found of one version.</summary>
/// <param name="Version">The version.</param>
/// <param name="Stage">Which stage, from 0: a later one knows more of the same version.</param>
/// <param name="Project">The project as far as it could be read, or null.</param>
/// <param name="Plan">The plan, or null where there are problems.</param>
/// <param name="Findings">Problems and notes with their lines.</param>
internal sealed record StageResult(long Version, int Stage, Project? Project, Plan? Plan, Findings Findings)
{
    /// <summary>Whether no later stage has anything to add.</summary>
    public bool IsFinal { get; init; } = true;
}
