using System.Globalization;
using BlockingTemplates.Drawing.Pages;
using BlockingTemplates.Drawing.Text;
using BlockingTemplates.Engine.Shapes;
using BlockingTemplates.Engine.Sheets;
using BlockingTemplates.Reference.Tests.Planning;
using NetTopologySuite.Geometries;

namespace BlockingTemplates.Reference.Tests.Guides;

// The numbers and crosses of the marks as they are seen on the taped guide, read from the PDF.
public class NumbersOnTheGuideTests
{
    private const double LeastFiguresMm = 4;
    private const double ClearMm = 8;
    private const double ReadingMm = 0.05; // PdfPig's glyph boxes are whole thousandths of the size, and ours are rounded to points

    public static TheoryData<string, string, GuideUse> Guides => new()
    {
        { Planned.Triangle, "A4", GuideUse.Prick },
        { Planned.Triangle, "Letter", GuideUse.Film },
        { Planned.Crescent, "A4", GuideUse.Frame },
        { Planned.Crescent, "Letter", GuideUse.Frame },
        { Planned.Rectangle, "Letter", GuideUse.Film },
        { Planned.Rectangle, "A3", GuideUse.Prick },
    };

    [Theory]
    [MemberData(nameof(Guides))]
    public void Every_number_stands_once_whole_where_taping_leaves_it_seen(string example, string paper, GuideUse use)
    {
        var (plan, pages) = PrintedGuide.Of(example, paper, use);
        var taped = new TapedGuide(pages);
        var numbers = taped.Sheets.SelectMany((s, i) => Numbers(s.Page).Select(n => (Sheet: s, Order: i, Text: n))).ToList();
        Assert.Equal(plan.Pins.Marks.Select(m => m.Number), numbers.Select(n => int.Parse(n.Text.Says, CultureInfo.InvariantCulture)).Order());
        foreach (var (sheet, order, text) in numbers)
        {
            var where = $"{text.Says} on {sheet.Page.Label}";
            var seen = WithBar(sheet.Page, text);
            Assert.True(sheet.Print.Holds(seen), $"{where} runs out of the print.");
            var laid = taped.Place(sheet, seen);
            Assert.True(taped.Trimmed(sheet).Holds(laid), $"{where} is cut away.");
            // Sheets are laid in the order of the pages, each over those before it.
            foreach (var later in taped.Sheets.Skip(order + 1))
                Assert.False(taped.Trimmed(later).Overlaps(laid), $"{where} is covered by {later.Page.Label}.");
        }
    }

    [Theory]
    [MemberData(nameof(Guides))]
    public void Figures_are_at_least_4_mm_high_and_8_mm_clear_outside(string example, string paper, GuideUse use)
    {
        var (plan, pages) = PrintedGuide.Of(example, paper, use);
        var taped = new TapedGuide(pages);
        var shift = GuideRulerTests.Places(plan, taped)[1] - plan.Pins.Marks[0].At;
        // Points of the outline so close that no length between two of them matters.
        var ring = plan.Pins.Pinned.Edges.SelectMany(e => Enumerable.Range(0, (int)Math.Ceiling(e.Curve.Length / 0.5)).Select(i => e.Curve.At(i / Math.Ceiling(e.Curve.Length / 0.5)) + shift)).ToArray();
        var region = new Polygon(new LinearRing([.. ring.Append(ring[0]).Select(p => new Coordinate(p.X, p.Y))]));
        var inside = 0;
        foreach (var sheet in taped.Sheets)
        {
            foreach (var text in Numbers(sheet.Page))
            {
                Assert.True(text.SizeMm * TextMeasure.FigureHeight(FontWeight.Bold) > LeastFiguresMm - 0.001, $"{text.Says} has figures of only {text.SizeMm * TextMeasure.FigureHeight(FontWeight.Bold):0.0000} mm.");
                Assert.True(text.IsLevel);
                var box = taped.Place(sheet, WithBar(sheet.Page, text));
                if (region.Contains(new NetTopologySuite.Geometries.Point(box.Centre.X, box.Centre.Y)))
                {
                    inside++;
                    continue;
                }

                var clear = ring.Min(p => Math.Sqrt(Square(box.Left - p.X, p.X - box.Right) + Square(box.Lower - p.Y, p.Y - box.Upper)));
                Assert.True(clear >= ClearMm - ReadingMm, $"{text.Says} on {sheet.Page.Label} keeps only {clear:0.00} mm off the outline.");
            }
        }

        Assert.Equal(plan.Guides[0].Numbers.Count(n => n.Spot.IsInside), inside);
    }

    [Theory]
    [MemberData(nameof(Guides))]
    public void The_cross_of_a_mark_is_on_every_sheet_that_shows_its_place_and_nowhere_else(string example, string paper, GuideUse use)
    {
        var (plan, pages) = PrintedGuide.Of(example, paper, use);
        var taped = new TapedGuide(pages);
        var shift = GuideRulerTests.Places(plan, taped)[1] - plan.Pins.Marks[0].At;
        var shown = 0;
        foreach (var sheet in taped.Sheets)
        {
            var print = taped.Place(sheet, sheet.Print);
            var here = plan.Pins.Marks.Select(m => m.At + shift).Where(p => print.Holds(p)).ToList();
            var crosses = TapedGuide.MarkCrosses(sheet).Where(c => sheet.Print.Holds(c)).Select(c => taped.Place(sheet, c)).ToList();
            Assert.Equal(here.Count, crosses.Count);
            Assert.All(here, p => Assert.Contains(crosses, c => c.DistanceTo(p) < 0.05));
            shown += here.Count;
        }

        Assert.True(shown > plan.Pins.Marks.Count, "No mark stands in an overlap.");
    }

    // Numbers of marks are the only bold figures so large on a sheet.
    private static IEnumerable<PaperText> Numbers(PaperPage page) => page.Texts.Where(t => t.IsBold && t.SizeMm > 5.2 && t.Says.All(char.IsAsciiDigit));

    // The box of a number with the bar that tells which side is down.
    private static Box WithBar(PaperPage page, PaperText text)
    {
        var bar = Assert.Single(page.Lines, l => l.IsLevel && Math.Abs(l.WidthMm - 0.5) < 0.01 && text.BaselineMm - l.From.Y is > 0 and < 2.5
            && Math.Abs(l.Middle.X - text.Box.Centre.X) < 0.5 && l.LengthMm > 0.8 * text.Box.Width);
        return text.Box with
        {
            Left = Math.Min(text.Box.Left, Math.Min(bar.From.X, bar.To.X)),
            Right = Math.Max(text.Box.Right, Math.Max(bar.From.X, bar.To.X)),
            Lower = bar.From.Y - (bar.WidthMm / 2),
        };
    }

    private static double Square(double before, double after) => Math.Max(0, Math.Max(before, after)) is var d ? d * d : 0;
}
