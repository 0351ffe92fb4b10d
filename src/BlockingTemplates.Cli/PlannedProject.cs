using BlockingTemplates.Drawing.Guides;
using BlockingTemplates.Engine;
using BlockingTemplates.Engine.Fabrics;
using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Projects;

namespace BlockingTemplates.Cli;

/// <summary>A project read and planned, with all that was found.</summary>
/// <param name="Plan">The plan, or null where there are problems.</param>
/// <param name="Findings">Problems and notes with their lines.</param>
internal sealed record PlannedProject(Plan? Plan, Findings Findings)
{
    /// <summary>Reads and plans a project file.</summary>
    /// <param name="text">The file.</param>
    /// <param name="change">Changes what was read by what the command line says; null answers that it cannot.</param>
    /// <param name="progress">Told how far the cloth is.</param>
    /// <param name="cancellation">Stops the work.</param>
    public static PlannedProject Of(
        ProjectText text, Func<Project, Findings, Project>? change = null, IProgress<ComputingStep>? progress = null, CancellationToken cancellation = default)
    {
        var reading = text.Read();
        var findings = new Findings(reading.Project?.Units ?? LengthUnit.Millimetres);
        findings.AddAll(reading.Findings);
        if (reading.Project is not { } project)
            return new(null, findings);
        var asked = change is null ? project : change(project, findings);
        using var time = asked.TimeLimit is { } limit ? new CancellationTokenSource(limit) : new CancellationTokenSource();
        var plan = Planner.Plan(asked, NumberPicture.Style, findings, new() { Progress = progress, Cancellation = cancellation, TimeIsUp = time.Token });
        var located = reading.Lines.WithLines(findings);
        return new(plan is null ? null : plan with { Notes = located.Notes }, located);
    }
}
