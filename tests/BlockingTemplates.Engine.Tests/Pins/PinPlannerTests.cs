using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Pins;
using Xunit.Abstractions;

namespace BlockingTemplates.Engine.Tests.Pins;

public sealed class PinPlannerTests(ITestOutputHelper output)
{
    [Fact]
    public void The_demo_is_planned()
    {
        var findings = new Findings(LengthUnit.Centimetres);
        var piece = PieceMaker.Make(DemoTriangle.Request, findings);
        Assert.NotNull(piece);
        var plan = PinPlanner.Plan(piece, PinSettings.Default, findings);
        Assert.NotNull(plan);
        foreach (var note in findings.Notes)
            output.WriteLine(note.ToString());
        foreach (var edge in plan.Edges)
            output.WriteLine($"{edge} stretch {edge.Stretch}");
        foreach (var m in plan.Marks)
            output.WriteLine($"{m.Number} r{m.Round} {plan.Edges[m.Edge].Name} {m.Fraction:0.0000} {m.Count} {m.At} {m.Pull?.Length:0.0}");
        Assert.NotNull(plan.Mirror);
    }
}
