using BlockingTemplates.Drawing.Pages;
using BlockingTemplates.Engine.Shapes;
using BlockingTemplates.Engine.Sheets;

namespace BlockingTemplates.Drawing.Guides;

/// <summary>The cross on a cut line: thin, without a form, with open corners, so that it is not taken for a pin's mark.</summary>
internal static class JointCross
{
    private const double Arm = JointCrosses.HalfSizeMm;

    public static Symbol Symbol { get; } = new("joint-cross", Arm,
    [
        new PathElement(PathSteps.Line(new(-Arm, 0), new(Arm, 0)), GuideInk.Leader),
        new PathElement(PathSteps.Line(new(0, -Arm), new(0, Arm)), GuideInk.Leader),
        .. from sx in new[] { -1, 1 }
           from sy in new[] { -1, 1 }
           select new PathElement(PathSteps.Polyline([new(1.2 * sx, 2.6 * sy), new(2.6 * sx, 2.6 * sy), new Point(2.6 * sx, 1.2 * sy)], false), GuideInk.Leader),
    ]);
}
