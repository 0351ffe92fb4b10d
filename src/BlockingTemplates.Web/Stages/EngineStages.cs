using BlockingTemplates.Drawing.Guides;
using BlockingTemplates.Engine;
using BlockingTemplates.Engine.Fabrics;
using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Projects;
using BlockingTemplates.Engine.Sheets;

namespace BlockingTemplates.Web.Stages;

/// <summary>The engine's stages as the page runs them: the geometry at once, then the cloth.</summary>
internal static class EngineStages
{
    /// <summary>All stages in order.</summary>
    public static IReadOnlyList<Stage> All { get; } = [Geometry, Cloth];

    /// <summary>Reads and plans a project without computing the cloth; final where there are problems or no cloth to compute.</summary>
    public static StageResult Geometry(StageRequest request, StageResult? before, Action<StageProgress> progress, CancellationToken cancellation)
    {
        var result = Planned(request, 0, Computation.GeometryOnly with { Cancellation = cancellation });
        return result with { IsFinal = result.Parts.All(p => p.Plan.Pins.LayLine is null) };
    }

    /// <summary>The whole plan, as the command line makes it.</summary>
    public static StageResult Cloth(StageRequest request, StageResult? before, Action<StageProgress> progress, CancellationToken cancellation)
    {
        return Planned(request, 1, new()
        {
            Progress = new Told(step => progress(new(request.Version, step.Part, step.Doing))),
            Cancellation = cancellation,
        });
    }

    private static StageResult Planned(StageRequest request, int stage, Computation computation)
    {
        var reader = new ProjectReader(PieceKinds.All, PaperCatalogue.Find, [.. PaperCatalogue.All.Select(p => p.Name)], request.Beside);
        var reading = reader.Read(request.Text);
        var file = PartsPlanner.Plan(reading, (project, mirrorOf, findings) =>
        {
            using var time = project.TimeLimit is { } limit ? new CancellationTokenSource(limit) : new CancellationTokenSource();
            return Planner.Plan(project, NumberPicture.Style, findings, computation with { TimeIsUp = time.Token }, mirrorOf);
        });
        return new(request.Version, stage, reading.Project, file.Parts, file.Findings);
    }

    private sealed class Told(Action<ComputingStep> tell) : IProgress<ComputingStep>
    {
        public void Report(ComputingStep value) => tell(value);
    }
}
