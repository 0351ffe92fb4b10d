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
        var line = (1 + Style.BarOverHeight) * height;
        var below = box.Upper - Style.PadMm - line;
        yield return new PathElement(PathSteps.Rectangle(box), isInside ? GuideInk.Form : null, new Fill(1));
        yield return new TextElement(text, new(box.Centre.X, box.Upper - Style.PadMm - height), size, FontWeight.Bold, TextAlign.Centre);
        yield return Bar(text, size, box.Centre.X, below);
        if (place.Partner is not { } partner)
            yield break;
        // The partner's number in mirror writing: it reads when the sheet is turned over and seen against the light.
        var back = partner.ToString(CultureInfo.InvariantCulture);
        var backSize = Style.PartnerOverHeight * size;
        yield return new PathElement(GlyphOutline.Mirrored(back, new(box.Centre.X, below - (Style.PartnerOverHeight * height)), backSize, FontWeight.Bold), GuideInk.Leader, null);
        yield return Bar(back, backSize, box.Centre.X, below - (Style.PartnerOverHeight * line));
    }

    private static PathElement Bar(string text, double size, double x, double lower)
    {
        var half = TextMeasure.AdvanceMm(text, size, FontWeight.Bold) / 2;
        var y = lower + GuideInk.Bar.WidthMm;
        return new(PathSteps.Line(new(x - half, y), new(x + half, y)), GuideInk.Bar);
    }
}
