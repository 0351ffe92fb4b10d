using BlockingTemplates.Drawing.Guides;
using BlockingTemplates.Engine;
using BlockingTemplates.Engine.Fabrics;
using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Projects;

namespace BlockingTemplates.Cli;

/// <summary>A project read and planned, with all that was found.</summary>
/// <param name="Plan">The plan, of several the first; null where there are problems.</param>
/// <param name="Findings">Problems and notes with their lines.</param>
internal sealed record PlannedProject(Plan? Plan, Findings Findings)
{
    /// <summary>All plans of the file: one, or one for each size and for both pieces of a pair; empty where there are problems.</summary>
    public IReadOnlyList<PlannedPart> Parts { get; init; } = [];

    /// <summary>Reads and plans a project file.</summary>
    /// <param name="text">The file.</param>
    /// <param name="change">Changes what was read by what the command line says; null answers that it cannot.</param>
    /// <param name="progress">Told how far the cloth is.</param>
    /// <param name="cancellation">Stops the work.</param>
    public static PlannedProject Of(
        ProjectText text, Func<Project, Findings, Project>? change = null, IProgress<ComputingStep>? progress = null, CancellationToken cancellation = default)
    {
        var reading = text.Read();
        var file = PartsPlanner.Plan(reading, (project, mirrorOf, findings) =>
        {
            var asked = change is null ? project : change(project, findings);
            using var time = asked.TimeLimit is { } limit ? new CancellationTokenSource(limit) : new CancellationTokenSource();
            return Planner.Plan(asked, NumberPicture.Style, findings, new() { Progress = progress, Cancellation = cancellation, TimeIsUp = time.Token }, mirrorOf);
        });
        return new(file.Parts is [var first, ..] ? first.Plan : null, file.Findings) { Parts = file.Parts };
    }
}
