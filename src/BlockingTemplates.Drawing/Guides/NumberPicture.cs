using System.Globalization;
using BlockingTemplates.Drawing.Pages;
using BlockingTemplates.Drawing.Text;
using BlockingTemplates.Engine.Sheets;

namespace BlockingTemplates.Drawing.Guides;

/// <summary>The number of a mark: bold figures with a bar under them, so that 6 and 9 read from any side.</summary>
public static class NumberPicture
{
    /// <summary>How numbers are set: the widths of the guide's own font.</summary>
    public static NumberStyle Style { get; } = new(text => TextMeasure.AdvanceMm(text, TextMeasure.SizeForFigures(1, FontWeight.Bold), FontWeight.Bold));

    internal static IEnumerable<Element> Of(NumberPlace place)
    {
        var (box, height, isInside) = place.Spot;
        var text = place.Number.ToString(CultureInfo.InvariantCulture);
        var size = TextMeasure.SizeForFigures(height, FontWeight.Bold);
        var half = (box.Width / 2) - Style.PadMm;
        var bar = box.Lower + Style.PadMm + GuideInk.Bar.WidthMm;
        yield return new PathElement(PathSteps.Rectangle(box), isInside ? GuideInk.Form : null, new Fill(1));
        yield return new TextElement(text, new(box.Centre.X, box.Upper - Style.PadMm - height), size, FontWeight.Bold, TextAlign.Centre);
        yield return new PathElement(PathSteps.Line(new(box.Centre.X - half, bar), new(box.Centre.X + half, bar)), GuideInk.Bar);
    }
}
