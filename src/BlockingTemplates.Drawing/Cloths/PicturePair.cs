using BlockingTemplates.Drawing.Pages;
using BlockingTemplates.Drawing.Writing;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Drawing.Cloths;

/// <summary>Two pictures of one shape with their captions: one above the other or side by side, as they come out larger.</summary>
internal static class PicturePair
{
    private const double CaptionMm = 6.5;
    private const double GapMm = 5;

    /// <summary>Draws the pair.</summary>
    /// <param name="flow">Where.</param>
    /// <param name="shape">What is drawn, for its proportions.</param>
    /// <param name="mostMm">Greatest height of the pair.</param>
    /// <param name="first">Caption and picture in its box.</param>
    /// <param name="second">The same of the other; null for a single picture.</param>
    public static void Draw(PageFlow flow, Box shape, double mostMm, (Func<Box, IEnumerable<Element>> Caption, Func<Box, IEnumerable<Element>> Picture) first, (Func<Box, IEnumerable<Element>> Caption, Func<Box, IEnumerable<Element>> Picture)? second)
    {
        var aspect = shape.Height / shape.Width;
        var wide = flow.Column.Width;
        // Heights of a picture each way, as high as the shape asks and the room allows.
        var stacked = Math.Min(wide * aspect, second is null ? mostMm - CaptionMm : ((mostMm - GapMm) / 2) - CaptionMm);
        var beside = Math.Min((wide - GapMm) / 2 * aspect, mostMm - CaptionMm);
        if (second is not { } other)
        {
            One(flow.Take(stacked + CaptionMm), first);
        }
        else if (stacked >= beside)
        {
            One(flow.Take(stacked + CaptionMm), first);
            flow.Gap(GapMm);
            One(flow.Take(stacked + CaptionMm), other);
        }
        else
        {
            var both = flow.Take(beside + CaptionMm);
            One(both with { Right = both.Centre.X - (GapMm / 2) }, first);
            One(both with { Left = both.Centre.X + (GapMm / 2) }, other);
        }

        void One(Box box, (Func<Box, IEnumerable<Element>> Caption, Func<Box, IEnumerable<Element>> Picture) drawn)
        {
            flow.Draw(drawn.Caption(box with { Lower = box.Upper - CaptionMm }));
            flow.Draw(drawn.Picture(box with { Upper = box.Upper - CaptionMm }));
        }
    }
}
