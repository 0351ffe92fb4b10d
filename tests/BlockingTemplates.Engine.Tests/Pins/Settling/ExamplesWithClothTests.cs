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

    [Theory]
    [MemberData(nameof(All))]
    public void The_cloth_of_an_example_comes_to_rest_and_every_pull_in_turn_is_known(string example)
    {
        var project = Reading.Reader.Read(File.ReadAllBytes(Path.Combine(Reading.Shared, "examples", example))).Project!;
        var findings = new Findings(project.Units);
        var plan = Planner.Plan(project, Style, findings, new() { WithEnds = false })!;
        var cloth = Assert.IsType<ClothPlan>(plan.Cloth);
        Assert.True(cloth.Residual <= 1e-7);
        Assert.Equal(plan.Pins.Marks.Count, cloth.InTurn.Count);
        output.WriteLine($"{example}: {plan.Pins.Marks.Count} pins, {cloth.Nodes} nodes, {cloth.Steps} steps, residual {cloth.Residual:0e0}, worst {cloth.WorstScallopMm:0.00} mm");
    }
}
