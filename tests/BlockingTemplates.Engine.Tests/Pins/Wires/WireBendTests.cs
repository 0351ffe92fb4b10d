using BlockingTemplates.Engine.Pins.Wires;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Tests.Pins.Wires;

public class WireBendTests
{
    [Fact]
    public void An_arc_turns_by_its_radius_everywhere_and_a_straight_line_not_at_all()
    {
        var radius = ((500.0 * 500) + (4 * 60 * 60)) / (8 * 60);
        Assert.Equal(radius, WireBend.Tightest(CircularArc.Between(new(0, 0), new(500, 0), 60)).RadiusMm, 1e-6 * radius);
        Assert.Equal(double.PositiveInfinity, WireBend.Tightest(new StraightEdge(new(0, 0), new(500, 300))).RadiusMm);
    }

    [Fact]
    public void The_tightest_place_of_a_bent_line_is_its_bend()
    {
        var bend = WireBend.Tightest(new PolylineEdge([new(0, 0), new(300, 0), new(500, 50)]));
        Assert.Equal(300.0 / (300 + Math.Sqrt(42500)), bend.Fraction, 0.03);
        Assert.Equal(20 / Math.Atan2(50, 200), bend.RadiusMm, 0.1);
    }
}
