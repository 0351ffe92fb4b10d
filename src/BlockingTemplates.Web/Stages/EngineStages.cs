using BlockingTemplates.Drawing.Guides;
using BlockingTemplates.Engine;
using BlockingTemplates.Engine.Fabrics;
using BlockingTemplates.Engine.Measure;
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
        return result with { IsFinal = result.Plan?.Pins.LayLine is null };
    }

    /// <summary>The whole plan, as the command line makes it.</summary>
    public static StageResult Cloth(StageRequest request, StageResult? before, Action<StageProgress> progress, CancellationToken cancellation)
    {
        using var time = before?.Project?.TimeLimit is { } limit ? new CancellationTokenSource(limit) : new CancellationTokenSource();
        return Planned(request, 1, new()
        {
            Progress = new Told(step => progress(new(request.Version, step.Part, step.Doing))),
            Cancellation = cancellation,
            TimeIsUp = time.Token,
        });
    }

    private static StageResult Planned(StageRequest request, int stage, Computation computation)
    {
        var reader = new ProjectReader(PieceKinds.All, PaperCatalogue.Find, [.. PaperCatalogue.All.Select(p => p.Name)], request.Beside);
        var reading = reader.Read(request.Text);
        var findings = new Findings(reading.Project?.Units ?? LengthUnit.Millimetres);
        findings.AddAll(reading.Findings);
        if (reading.Project is not { } project)
            return new(request.Version, stage, null, null, reading.Lines.WithLines(findings));
        if (reading.Sizes.Count > 1)
            findings.Note("sizes", FormattableString.Invariant($"The file lists {reading.Sizes.Count} sizes; this is the first, {project.Size}."), "Plan the file on the command line for a packet of each.");
        if (project.Pair is { } pair)
            findings.Note("piece.pair", $"This is {pair.Measured}; {pair.Mirrored} is its mirror image.", "Plan the file on the command line for a packet of both.");
        var plan = Planner.Plan(project, NumberPicture.Style, findings, computation);
        var located = reading.Lines.WithLines(findings);
        return new(request.Version, stage, project, plan is null ? null : plan with { Notes = located.Notes }, located);
    }

    private sealed class Told(Action<ComputingStep> tell) : IProgress<ComputingStep>
    {
        public void Report(ComputingStep value) => tell(value);
    }
}
