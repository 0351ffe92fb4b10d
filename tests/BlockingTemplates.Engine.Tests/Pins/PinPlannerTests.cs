using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Pins;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Tests.Pins;

public sealed class PinPlannerTests
{
    [Fact]
    public void The_demo_is_planned_as_reckoned_by_hand()
    {
        var findings = new Findings(LengthUnit.Centimetres);
        var piece = Assert.IsType<Piece>(PieceMaker.Make(DemoTriangle.Request, findings));
        var plan = Assert.IsType<PinPlan>(PinPlanner.Plan(piece, PinSettings.Default, findings));
        Assert.Empty(findings.Problems);

        // Pinned 3 % larger: wingspan 1524.4 mm, depth 762.2 mm.
        Assert.Equal(1524.4, plan.Edges[1].PinnedMm, 1e-9);
        Assert.Equal(762.2 * Math.Sqrt(2), plan.Edges[0].PinnedMm, 1e-9);
        Assert.Equal((plan.Edges[0].PinnedMm / CircularSegment.Arc(920, 50)) - 1, plan.Edges[0].Stretch!.Value, 1e-12);
        Assert.Equal((1524.4 / CircularSegment.Arc(1280, 30)) - 1, plan.Edges[1].Stretch!.Value, 1e-12);
        Assert.Equal(1524.4 / 180, plan.Edges[1].StitchMm!.Value, 1e-12);

        // The foot is the anchor; the spine is the axis; the lay line stands upright on it, its tips unblocked below and inside the marks.
        Assert.Equal("foot", plan.Anchor.Name);
        Assert.Equal([2, 1, 0], plan.Mirror!.Partner);
        var foot = plan.Marks[0];
        Assert.InRange(foot.Pull!.Value.Length, 0, 1e-9);
        var rightTip = Assert.Single(plan.Marks, m => m is { Edge: 1, Fraction: 0 });
        var tip = new Point(640, Math.Sqrt((920 * 920) - (640 * 640)));
        Assert.InRange(rightTip.Rest!.Value.DistanceTo(foot.At + (tip - Point.Origin)), 0, 1e-6);
        Assert.All(plan.Marks.Where(m => m.Edge == 1), m => Assert.Equal(Math.Floor(m.Count!.Value), m.Count));
    }
}
