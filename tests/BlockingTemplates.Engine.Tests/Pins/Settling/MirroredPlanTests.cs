using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Projects;
using BlockingTemplates.Engine.Sheets;
using BlockingTemplates.Engine.Tests.Projects;

namespace BlockingTemplates.Engine.Tests.Pins.Settling;

public class MirroredPlanTests
{
    private static readonly NumberStyle Style = new(text => 0.85 * text.Length);

    // A pair that is not symmetric in itself, its straight edges on wires.
    [Fact]
    public void The_mirrored_piece_is_told_of_its_edges_what_the_other_is_told_on_the_computed_cloth()
    {
        var reading = Reading.Reader.Read(File.ReadAllBytes(Path.Combine(Reading.Shared, "examples", "cardigan-fronts.jsonc")));
        var file = PartsPlanner.Plan(reading, (project, mirrorOf, findings) => Planner.Plan(OnWires(project), Style, findings, new() { WithEnds = false }, mirrorOf));
        var plans = file.Parts.Select(p => p.Plan).ToList();
        Assert.Equal(2, plans.Count);
        var (one, other, last) = (plans[0], plans[1], plans[0].Pins.Edges.Count - 1);
        Assert.NotEmpty(one.Pins.Wired);
        Assert.NotNull(one.Pins.SinglePins);
        foreach (var advice in one.Advice)
        {
            var mirrored = other.Advice.Single(a => a.Edge == last - advice.Edge);
            Assert.Equal(advice.Why.Replace(one.Pins.Edges[advice.Edge].Name, other.Pins.Edges[mirrored.Edge].Name, StringComparison.Ordinal), mirrored.Why);
            Assert.Equal(advice.Ways.Select(w => (w.Pins, w.Combs, w.Wires.Count)), mirrored.Ways.Select(w => (w.Pins, w.Combs, w.Wires.Count)));
        }

        for (var e = 0; e <= last; e++)
            Assert.Equal(one.Pins.Edges[e].SpacingMm, other.Pins.Edges[last - e].SpacingMm, 1e-6);
    }

    private static Project OnWires(Project project) => project with
    {
        Edges = new Dictionary<string, EdgeTreatment>
        {
            ["hem"] = project.Edges["hem"] with { Hold = Holding.Wire },
            ["side"] = EdgeTreatment.Unsaid with { Hold = Holding.Wire },
        },
    };
}
