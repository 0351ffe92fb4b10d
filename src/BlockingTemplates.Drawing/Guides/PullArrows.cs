using BlockingTemplates.Drawing.Pages;
using BlockingTemplates.Engine.Pins;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Drawing.Guides;

/// <summary>Thin arrows from the lay line to the marks: how far and which way each point is pulled.</summary>
internal static class PullArrows
{
    private const double ShortOfMarkMm = 6;
    private const double HeadMm = 2.2;
    private const double LeastMm = 10;

    public static IEnumerable<Element> In(IReadOnlyList<Mark> marks, Box box)
    {
        foreach (var mark in marks)
        {
            if (mark is not { Rest: { } rest, Pull: { } pull } || pull.Length < LeastMm || !SegmentBox.Meets(rest, mark.At, box.Grown(HeadMm)))
                continue;
            var tip = mark.At - (ShortOfMarkMm * pull.Unit);
            Vector back = HeadMm * pull.Unit, side = HeadMm / 2.6 * pull.Unit.TurnedLeft;
            yield return new PathElement(PathSteps.Line(rest, tip - back), GuideInk.Arrow);
            yield return new PathElement(PathSteps.Polyline([tip, tip - back + side, tip - back - side], true), null, new Fill(GuideInk.Arrow.Grey));
        }
    }
}
