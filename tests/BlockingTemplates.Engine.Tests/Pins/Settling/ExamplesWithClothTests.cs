using BlockingTemplates.Engine.Fabrics;
using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Pins.Settling;
using BlockingTemplates.Engine.Sheets;
using BlockingTemplates.Engine.Tests.Projects;
using Xunit.Abstractions;

namespace BlockingTemplates.Engine.Tests.Pins.Settling;

public class ExamplesWithClothTests(ITestOutputHelper output)
{
    private static readonly NumberStyle Style = new(text => 0.85 * text.Length);

    public static TheoryData<string> All => ExamplesTests.All;

    // The second and slower way: the final pins on a mesh of eight node distances a stitch, from scratch.
    [Theory]
    [MemberData(nameof(All))]
    public void The_cloth_of_an_example_comes_to_rest_and_a_finer_mesh_tells_the_same_scallops(string example)
    {
        var project = Reading.Reader.Read(File.ReadAllBytes(Path.Combine(Reading.Shared, "examples", example))).Project!;
        var findings = new Findings(project.Units);
        var plan = Planner.Plan(project, Style, findings, new() { WithEnds = false })!;
        var cloth = Assert.IsType<ClothPlan>(plan.Cloth);
        Assert.True(cloth.Residual <= 1e-7);
        Assert.Equal(plan.Pins.Marks.Count, cloth.InTurn.Count);
        using var finer = new PinnedCloth(plan.Piece, cloth.Material.Likely, nodesPerStitch: 8);
        var settled = finer.Settle(plan.Pins, null, Computation.Whole);
        Assert.True(settled.Rest.Converged, $"{settled.Rest.End} {settled.Rest.Residual}");
        var limits = SpacingLimits.Of(project.Pins);
        var sure = settled.Gaps.Where(g => g.Determined != false && !g.IsSet && project.Pins.Spacing is null).ToList();
        var worst = sure.Select(g => Math.Abs(g.ScallopMm)).DefaultIfEmpty(0).Max();
        output.WriteLine($"{example}: {plan.Pins.Marks.Count} pins, {cloth.Nodes} nodes, told {cloth.WorstScallopMm:0.00} mm; {finer.Mesh.Nodes.Count} nodes, worst of the pins that the cloth placed {worst:0.00} mm");
        Assert.True(worst <= 1.05 * limits.ScallopMm, $"{worst:0.00} mm");
    }
}
