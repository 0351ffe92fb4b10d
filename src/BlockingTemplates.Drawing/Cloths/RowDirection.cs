using BlockingTemplates.Drawing.Pages;
using BlockingTemplates.Drawing.Text;
using BlockingTemplates.Drawing.Writing;
using BlockingTemplates.Engine;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Drawing.Cloths;

/// <summary>Which way the rows run in the plan.</summary>
internal static class RowDirection
{
    private const double HalfMm = 2.4;
    private const double HeadMm = 1.2;

    /// <summary>The direction of the rows of the piece on its lay line, length 1.</summary>
    public static Vector Of(Plan plan)
    {
        var turn = plan.Piece.Unblocked is { } unblocked && plan.Pins.LayLine is { } lay ? Angle(lay) - Angle(unblocked) : 0;
        return Vector.AtAngle(turn + (plan.Piece.Fabric.GrainDegrees * Math.PI / 180));
        static double Angle(Outline outline)
        {
            var across = outline.Edges[0].Curve.At(0.4) - outline.Edges[0].Curve.At(0);
            return Math.Atan2(across.Y, across.X);
        }
    }

    /// <summary>A caption with a double arrow that tells a direction.</summary>
    public static IEnumerable<Element> Caption(string words, Vector direction, Box box)
    {
        var text = new TextElement(words, new(box.Left, box.Lower + 2.2), TextStyle.Strong.SizeMm, FontWeight.Bold);
        yield return text;
        var middle = new Point(box.Left + TextMeasure.AdvanceMm(words, text.SizeMm, text.Weight) + 2 + HalfMm, box.Lower + 3.4);
        yield return new PathElement(PathSteps.Line(middle - (HalfMm * direction), middle + (HalfMm * direction)), new(0.35));
        foreach (var into in new[] { direction, -direction })
        {
            var tip = middle - (HalfMm * into);
            yield return new PathElement(PathSteps.Polyline([tip, tip + (HeadMm * into) + (0.5 * into.TurnedLeft), tip + (HeadMm * into) - (0.5 * into.TurnedLeft)], true), null, new Fill());
        }
    }
}
