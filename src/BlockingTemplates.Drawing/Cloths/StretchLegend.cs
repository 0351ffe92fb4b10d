using BlockingTemplates.Drawing.Pages;
using BlockingTemplates.Drawing.Text;
using BlockingTemplates.Drawing.Writing;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Drawing.Cloths;

/// <summary>What the greys and hatches of the stretch pictures mean.</summary>
internal static class StretchLegend
{
    private const double BoxWideMm = 7;
    private const double BoxHighMm = 4;
    private const double GapMm = 4;
    private const double RowMm = 6;
    private static readonly Stroke Line = new(0.2);

    /// <summary>Boxes with their words in rows as long as the column.</summary>
    public static void Draw(PageFlow flow, ToneScale scale, IReadOnlyList<NamedRegion> regions)
    {
        List<(string Words, Func<Box, IEnumerable<Element>> Box)> items =
        [
            .. Enumerable.Range(0, scale.Bounds.Count + 1).Select(t => (scale.Words(t), (Func<Box, IEnumerable<Element>>)(b => Tone(b, scale.Grey(t))))),
        ];
        if (regions.Any(r => !r.IsBeyond))
            items.Add(("slack", b => Hatched(b, false)));
        if (regions.Any(r => r.IsBeyond))
            items.Add(("beyond your swatch", b => Hatched(b, true)));
        var row = flow.Take(RowMm);
        var x = row.Left;
        foreach (var (words, draw) in items)
        {
            var width = BoxWideMm + 1.5 + TextMeasure.AdvanceMm(words, TextStyle.Small.SizeMm);
            if (x + width > row.Right)
            {
                row = flow.Take(RowMm);
                x = row.Left;
            }

            var box = new Box(x, row.Lower + 1, x + BoxWideMm, row.Lower + 1 + BoxHighMm);
            flow.Draw(draw(box));
            flow.Draw(new TextElement(words, new(box.Right + 1.5, row.Lower + 1.9), TextStyle.Small.SizeMm));
            x += width + GapMm;
        }
    }

    /// <summary>The greys alone in one row that ends at a place, small enough for a margin.</summary>
    public static IEnumerable<Element> Small(ToneScale scale, string head, Point end, double sizeMm)
    {
        var x = end.X;
        for (var tone = scale.Bounds.Count; tone >= 0; tone--)
        {
            var words = scale.Words(tone);
            x -= TextMeasure.AdvanceMm(words, sizeMm);
            yield return new TextElement(words, new(x, end.Y), sizeMm);
            var box = new Box(x - 1 - (1.2 * sizeMm), end.Y - (0.1 * sizeMm), x - 1, end.Y + (0.8 * sizeMm));
            foreach (var element in Tone(box, scale.Grey(tone)))
                yield return element;
            x = box.Left - 2.5;
        }

        yield return new TextElement(head, new(x, end.Y), sizeMm, Align: TextAlign.Right);
    }

    private static IEnumerable<Element> Tone(Box box, double grey) => [new PathElement(PathSteps.Rectangle(box), Line, new Fill(grey))];

    private static IEnumerable<Element> Hatched(Box box, bool isFalling)
    {
        yield return new PathElement(PathSteps.Rectangle(box), new(0.6), new Fill(1));
        for (var x = box.Left; x + BoxHighMm <= box.Right + 1e-9; x += 1.5)
            yield return new PathElement(isFalling ? PathSteps.Line(new(x, box.Upper), new(x + BoxHighMm, box.Lower)) : PathSteps.Line(new(x, box.Lower), new(x + BoxHighMm, box.Upper)), RegionHatch.Line);
    }
}
