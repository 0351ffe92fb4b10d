using BlockingTemplates.Drawing.Pages;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Drawing.Tests.Pages;

public class PathStepsTests
{
    [Fact]
    public void A_circle_of_four_cubics_is_round_within_its_stated_error()
    {
        var (centre, radius) = (new Point(12, -7), 80.0);
        var steps = PathSteps.Circle(centre, radius);
        var at = steps[0].To;
        var furthest = 0.0;
        var area = 0.0;
        foreach (var step in steps.Where(s => s.Kind == PathStepKind.Cubic))
        {
            var last = at;
            for (var i = 1; i <= 1000; i++)
            {
                var (t, u) = (i / 1000.0, 1 - (i / 1000.0));
                var p = new Point(
                    (u * u * u * at.X) + (3 * u * u * t * step.Control1.X) + (3 * u * t * t * step.Control2.X) + (t * t * t * step.To.X),
                    (u * u * u * at.Y) + (3 * u * u * t * step.Control1.Y) + (3 * u * t * t * step.Control2.Y) + (t * t * t * step.To.Y));
                furthest = Math.Max(furthest, Math.Abs(p.DistanceTo(centre) - radius));
                area += (last - centre).Cross(p - centre) / 2;
                last = p;
            }

            at = step.To;
        }

        Assert.InRange(furthest / radius, 0.0002, 0.000275);
        Assert.InRange(area / (Math.PI * radius * radius), 1, 1.0004); // positive: counter-clockwise
        Assert.Equal(PathStepKind.Close, steps[^1].Kind);
    }

    [Fact]
    public void A_rectangle_runs_counter_clockwise_from_its_lower_left()
    {
        var steps = PathSteps.Rectangle(new Box(1, 2, 4, 8));
        Assert.Equal([new(1, 2), new(4, 2), new(4, 8), new(1, 8)], steps.Take(4).Select(s => s.To));
        Assert.Equal([PathStepKind.Move, PathStepKind.Line, PathStepKind.Line, PathStepKind.Line, PathStepKind.Close], steps.Select(s => s.Kind));
    }

    [Fact]
    public void A_polyline_closes_only_when_asked()
    {
        Assert.Equal(2, PathSteps.Polyline([new(0, 0), new(1, 0)], closed: false).Count);
        Assert.Equal(PathStepKind.Close, PathSteps.Polyline([new(0, 0), new(1, 0)], closed: true)[^1].Kind);
        Assert.Throws<ArgumentException>(() => PathSteps.Polyline([], closed: false));
        Assert.Throws<ArgumentOutOfRangeException>(() => PathSteps.Circle(Point.Origin, 0));
    }
}
