using BlockingTemplates.Drawing.Guides;
using BlockingTemplates.Engine;
using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Projects;
using BlockingTemplates.Engine.Sheets;

namespace BlockingTemplates.Web.Stages;

/// <summary>The engine's stages as the page runs them: the geometry first, then whatever is slower.</summary>
internal static class EngineStages
{
    /// <summary>All stages in order.</summary>
    public static IReadOnlyList<Stage> All { get; } = [Geometry];

    /// <summary>Reads and plans a project without computing the cloth: what the command line's check and plan find.</summary>
    public static StageResult Geometry(StageRequest request, StageResult? before, Action<StageProgress> progress, CancellationToken cancellation)
    {
        var reader = new ProjectReader(PieceKinds.All, PaperCatalogue.Find, [.. PaperCatalogue.All.Select(p => p.Name)], request.Beside);
        var reading = reader.Read(request.Text);
        var findings = new Findings(reading.Project?.Units ?? LengthUnit.Millimetres);
        findings.AddAll(reading.Findings);
        if (reading.Project is not { } project)
            return new(request.Version, 0, null, null, reading.Lines.WithLines(findings));
        cancellation.ThrowIfCancellationRequested();
        var plan = Planner.Plan(project, NumberPicture.Style, findings);
        var located = reading.Lines.WithLines(findings);
        return new(request.Version, 0, project, plan is null ? null : plan with { Notes = located.Notes }, located);
    }
}
