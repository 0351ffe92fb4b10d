using System.Collections.Concurrent;
using System.Text;
using BlockingTemplates.Drawing.Guides;
using BlockingTemplates.Engine;
using BlockingTemplates.Engine.Fabrics;
using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Projects;
using BlockingTemplates.Engine.Sheets;

namespace BlockingTemplates.Reference.Tests.Planning;

// Project texts through the real stages: reading, then planning.
internal static class Planned
{
    public const string Triangle = "lace-triangle";
    public const string Crescent = "crescent-outline";
    public const string Rectangle = "rectangle-with-short-edge";

    private static readonly ConcurrentDictionary<string, Lazy<Plan>> Plans = new();
    private static readonly ConcurrentDictionary<string, Lazy<Plan>> ClothPlans = new();

    public static string[] Examples { get; } = [Triangle, Crescent, Rectangle];

    public static Plan Example(string name) =>
        Plans.GetOrAdd(name, n => new(() => Of(Repository.Example(n)))).Value;

    // With the cloth and its soft and stiff end: a few plans, each computed once for all tests.
    public static Plan InCloth(string name) => ClothPlans.GetOrAdd(name, n => new(() =>
    {
        var (plan, findings) = Try(n == ClothPieces.Slack ? ClothPieces.SlackText : Repository.Example(n), null, Computation.Whole);
        Assert.Empty(findings.Problems);
        Assert.NotNull(plan!.Cloth);
        return plan;
    })).Value;

    // With the cloth, its soft and stiff end left out.
    public static Plan WithCloth(string text, Func<Project, Project>? change = null)
    {
        var (plan, findings) = Try(text, change, new() { WithEnds = false });
        Assert.Empty(findings.Problems);
        return plan!;
    }

    public static Plan Of(string text, Func<Project, Project>? change = null)
    {
        var (plan, findings) = Try(text, change);
        Assert.Empty(findings.Problems);
        return plan!;
    }

    // By geometry alone unless a computation is given.
    public static (Plan? Plan, Findings Findings) Try(string text, Func<Project, Project>? change = null, Computation? computation = null)
    {
        var reader = new ProjectReader(PieceKinds.All, PaperCatalogue.Find, [.. PaperCatalogue.All.Select(p => p.Name)]);
        var reading = reader.Read(Encoding.UTF8.GetBytes(text));
        var findings = new Findings(reading.Project?.Units ?? LengthUnit.Millimetres);
        findings.AddAll(reading.Findings);
        if (reading.Project is not { } project)
            return (null, findings);
        return (Planner.Plan(change is null ? project : change(project), NumberPicture.Style, findings, computation ?? Computation.GeometryOnly), findings);
    }

    // A project asked to be printed otherwise than its file says.
    public static Func<Project, Project> On(string paper, GuideUse use = GuideUse.Prick, (double Short, double Long)? measuredMm = null) =>
        project => project with
        {
            Sheets = project.Sheets with
            {
                Papers = [PaperCatalogue.Find(paper)!],
                Use = use,
                Measured = measuredMm is { } m ? (Length.FromMillimetres(m.Short), Length.FromMillimetres(m.Long)) : null,
            },
        };
}
