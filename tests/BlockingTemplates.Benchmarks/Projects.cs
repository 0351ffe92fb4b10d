using System.Globalization;
using System.Text;
using BlockingTemplates.Drawing.Guides;
using BlockingTemplates.Engine;
using BlockingTemplates.Engine.Fabrics;
using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Pins;
using BlockingTemplates.Engine.Projects;
using BlockingTemplates.Engine.Sheets;

namespace BlockingTemplates.Benchmarks;

/// <summary>What is measured: square blankets on A4, and the demo.</summary>
internal static class Projects
{
    /// <summary>The project text of a square blanket, invented.</summary>
    public static string Blanket(int sideMm, bool all) => string.Create(CultureInfo.InvariantCulture, $$"""
        { "format": 1, "title": "Blanket", "units": "mm",
          "piece": { "shape": "rectangle", "finished": { "width": {{sideMm}}, "length": {{sideMm}} } },
          "pins": { "spacing": 50 },
          "sheets": { "paper": "A4", "all": {{(all ? "true" : "false")}} } }
        """);

    public static Plan Planned(string text) => Planned(text, Computation.GeometryOnly);

    public static Plan PlannedWithCloth(string text) => Planned(text, Computation.Whole);

    public static string DemoText()
    {
        using var stream = typeof(Projects).Assembly.GetManifestResourceStream("lace-triangle.jsonc")!;
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }

    public static Project Demo() => Read(DemoText());

    /// <summary>The pins of a project before mats are laid.</summary>
    public static PinPlan Pins(Project project)
    {
        var findings = new Findings(project.Units);
        var request = new PieceRequest(
            project.Kind, project.Finished, project.Unblocked, project.Edges, project.FaceUp, project.MeasuredFaceUp, project.EvenOut, project.Fabric);
        return PinPlanner.Plan(PieceMaker.Make(request, findings)!, project.Pins, findings)!;
    }

    private static Plan Planned(string text, Computation computation)
    {
        var project = Read(text);
        return Planner.Plan(project, NumberPicture.Style, new Findings(project.Units), computation) ?? throw new InvalidOperationException("No plan.");
    }

    private static Project Read(string text) =>
        new ProjectReader(PieceKinds.All, PaperCatalogue.Find, [.. PaperCatalogue.All.Select(p => p.Name)]).Read(Encoding.UTF8.GetBytes(text)).Project
        ?? throw new InvalidOperationException("The project cannot be read.");
}
