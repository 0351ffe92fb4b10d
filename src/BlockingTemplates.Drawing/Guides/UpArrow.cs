using BlockingTemplates.Drawing.Pages;
using BlockingTemplates.Engine;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Drawing.Guides;

/// <summary>The arrow that tells where the piece's upper side lies, turned as the piece is.</summary>
internal static class UpArrow
{
    /// <summary>Length of the arrow, in millimetres.</summary>
    public const double LengthMm = 4.6;

    private const double HeadMm = 2.2;
    private const double HalfHeadMm = 1.2;

    /// <summary>What the arrow points to.</summary>
    public static string Words(Plan plan) => plan.Pins.Edges.Any(e => e.Name == "top") ? "top edge" : "upper side";

    /// <summary>The arrow about its middle.</summary>
    public static IEnumerable<Element> At(Point middle, Plan plan)
    {
        var up = Vector.AtAngle((Math.PI / 2) + plan.PieceTurn);
        var tip = middle + (LengthMm / 2 * up);
        yield return new PathElement(PathSteps.Line(tip - (2 * up), tip - (LengthMm * up)), GuideInk.Bar);
        yield return new PathElement(
            PathSteps.Polyline([tip, tip - (HeadMm * up) + (HalfHeadMm * up.TurnedLeft), tip - (HeadMm * up) + (HalfHeadMm * up.TurnedRight)], true), null, new Fill());
    }

    /// <summary>The arrow with its words to the right of it.</summary>
    /// <param name="left">Left end on the words' baseline.</param>
    /// <param name="plan">The plan.</param>
    public static IEnumerable<Element> WithWords(Point left, Plan plan)
    {
        const double sizeMm = 3.4;
        return [.. At(left + new Vector(LengthMm / 2, sizeMm / 3), plan), new TextElement(Words(plan), left + new Vector(LengthMm + 1.5, 0), sizeMm, FontWeight.Bold)];
    }
}
