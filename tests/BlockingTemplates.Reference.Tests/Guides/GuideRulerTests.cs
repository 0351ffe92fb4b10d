using BlockingTemplates.Engine;
using BlockingTemplates.Engine.Shapes;
using BlockingTemplates.Engine.Sheets;
using BlockingTemplates.Reference.Tests.Planning;
using UglyToad.PdfPig;

namespace BlockingTemplates.Reference.Tests.Guides;

// A ruler on the finished guide: PdfPig reads what PDFsharp wrote.
public class GuideRulerTests
{
    private const double OverTheWholeMm = 0.05;

    [Theory]
    // ISO 216 and the 72nd part of the inch of 1959; ASME Y14.1 size A.
    [InlineData("A4", 595.2756, 841.8898)]
    [InlineData("Letter", 612, 792)]
    [InlineData("A3", 841.8898, 1190.5512)]
    public void Every_page_is_exactly_the_paper_upright_or_on_its_side(string paper, double narrow, double wide)
    {
        var (plan, pages) = PrintedGuide.Of(Planned.Triangle, paper);
        var landscape = plan.Guides[0].Layout.Landscape;
        Assert.Contains(pages, p => p.Label == "1-1" || p.Label.Contains('-', StringComparison.Ordinal));
        foreach (var page in pages)
        {
            var isSheet = char.IsAsciiDigit(page.Label[0]);
            var isRead = !isSheet && page.Label != "check";
            var (shortSide, longSide) = isRead && paper == "A3" ? (595.2756, 841.8898) : (narrow, wide);
            var onItsSide = isSheet ? landscape : page.Label.StartsWith("strips", StringComparison.Ordinal);
            Assert.Equal(onItsSide ? longSide : shortSide, page.WidthPoints, 4);
            Assert.Equal(onItsSide ? shortSide : longSide, page.HeightPoints, 4);
        }
    }

    [Theory]
    [InlineData("A4")]
    [InlineData("Letter")]
    public void The_printer_check_comes_first_with_bars_of_150_and_240_mm(string paper)
    {
        var check = PrintedGuide.Of(Planned.Triangle, paper, measuredMm: (149, 241.5)).Pages[0];
        Assert.Equal("check", check.Label);
        // Never corrected, whatever the printer measured.
        AssertBar(check, 150, upright: false);
        AssertBar(check, 240, upright: true);
    }

    [Theory]
    [InlineData(Planned.Triangle, "A4")]
    [InlineData(Planned.Triangle, "Letter")]
    [InlineData(Planned.Crescent, "A4")]
    public void Every_sheet_has_a_bar_of_100_mm_and_one_of_4_inches(string example, string paper)
    {
        var sheets = new TapedGuide(PrintedGuide.Of(example, paper).Pages).Sheets;
        Assert.True(sheets.Count > 10);
        foreach (var sheet in sheets)
        {
            AssertBar(sheet.Page, 100, upright: false);
            AssertBar(sheet.Page, 101.6, upright: true);
        }
    }

    [Fact]
    public void The_taped_demo_has_its_top_edge_and_spine_as_the_project_file_asks()
    {
        var (plan, pages) = PrintedGuide.Of(Planned.Triangle, "A4");
        var places = Places(plan, new TapedGuide(pages));
        var top = plan.Pins.Edges.ToList().FindIndex(e => e.Name == "top");
        var alongTop = plan.Pins.Marks.Where(m => m.Edge == top).OrderBy(m => m.Fraction).Select(m => places[m.Number]).ToList();
        var leftTip = places[plan.Pins.Marks.Single(m => m.IsCorner && m.Edge == top + 1).Number];
        var foot = places[plan.Pins.Marks.Single(m => m.IsCorner && m.Edge == 0).Number];
        alongTop.Add(leftTip);

        // By hand from the file: 1480 mm and 740 mm, and 3 % spring-back; the top edge is straight.
        Assert.Equal(1524.4, alongTop[0].DistanceTo(leftTip), OverTheWholeMm);
        Assert.Equal(762.2, Math.Abs(alongTop.Average(p => p.Y) - foot.Y), OverTheWholeMm);
        Assert.All(alongTop, p => Assert.Equal(alongTop[0].Y, p.Y, OverTheWholeMm));
        Assert.Equal(1524.4, alongTop.Zip(alongTop.Skip(1), (a, b) => a.DistanceTo(b)).Sum(), OverTheWholeMm);
    }

    [Theory]
    [InlineData(Planned.Triangle, "A4", GuideUse.Prick)]
    [InlineData(Planned.Triangle, "Letter", GuideUse.Frame)]
    [InlineData(Planned.Crescent, "A4", GuideUse.Frame)]
    [InlineData(Planned.Crescent, "Letter", GuideUse.Film)]
    [InlineData(Planned.Rectangle, "A3", GuideUse.Prick)]
    public void The_marks_on_all_sheets_lie_as_planned_once_the_sheets_are_joined_by_their_crosses(string example, string paper, GuideUse use)
    {
        var (plan, pages) = PrintedGuide.Of(example, paper, use);
        AssertLiesAsPlanned(plan, new(pages));
    }

    [Theory]
    [InlineData(Planned.Triangle, "A4")]
    [InlineData(Planned.Rectangle, "Letter")]
    public void A_printer_that_was_measured_is_made_up_for(string example, string paper)
    {
        var (plan, pages) = PrintedGuide.Of(example, paper, measuredMm: (149, 241.5));
        double alongShort = 149 / 150.0, alongLong = 241.5 / 240;
        var landscape = plan.Guides[0].Layout.Landscape;
        Point Printer(Point p) => landscape ? new(p.X * alongLong, p.Y * alongShort) : new(p.X * alongShort, p.Y * alongLong);
        AssertLiesAsPlanned(plan, new(pages, Printer));
        foreach (var sheet in new TapedGuide(pages, Printer).Sheets)
        {
            var bars = sheet.Page.Lines.Select(l => Printer(l.From).DistanceTo(Printer(l.To))).ToList();
            Assert.Contains(bars, b => Math.Abs(b - 100) < 0.01);
            Assert.Contains(bars, b => Math.Abs(b - 101.6) < 0.01);
        }

        // A printer that prints true would show that the guide is no longer what was planned.
        var uncorrected = Places(plan, new TapedGuide(pages));
        Assert.Contains(Pairs(plan), p => Math.Abs(uncorrected[p.A.Number].DistanceTo(uncorrected[p.B.Number]) - p.A.At.DistanceTo(p.B.At)) > 1);
    }

    [Fact]
    public void The_taped_crescent_has_its_lower_edge_on_the_circle_the_file_asks_for()
    {
        var (plan, pages) = PrintedGuide.Of(Planned.Crescent, "A4");
        var places = Places(plan, new TapedGuide(pages));
        Point Corner(string name) => places[plan.Pins.Marks.Single(m => m.IsCorner && plan.Pins.Pinned.Corners[m.Edge].Name == name).Number];
        Point left = Corner("left tip"), right = Corner("right tip");

        // By hand: chord 1560 mm and height 500 mm, enlarged by 2 % spring-back; radius (c²/4 + h²) / 2h.
        const double chord = 1560 * 1.02, height = 500 * 1.02, radius = ((chord * chord / 4) + (height * height)) / (2 * height);
        Assert.Equal(chord, left.DistanceTo(right), OverTheWholeMm);
        var centre = left.Toward(right, 0.5) + ((radius - height) * (right - left).Unit.TurnedLeft);
        var lower = plan.Pins.Edges.ToList().FindIndex(e => e.Name == "lower");
        var marks = plan.Pins.Marks.Where(m => m.Edge == lower).ToList();
        Assert.True(marks.Count > 30);
        Assert.All(marks, m => Assert.Equal(radius, places[m.Number].DistanceTo(centre), OverTheWholeMm));
    }

    [Fact]
    public void The_guide_asks_to_be_printed_at_its_size_and_finds_its_parts()
    {
        using var document = PdfDocument.Open(PrintedGuide.Pdf(Planned.Example(Planned.Triangle)));
        Assert.Equal("None", PdfFacts.Preference(document, "PrintScaling"));
        Assert.Equal("true", PdfFacts.Preference(document, "PickTrayByPDFSize"));
        Assert.Subset(PdfFacts.Layers(document).ToHashSet(), new HashSet<string>(["arrows", "lay line", "mats", "numbers", "outline and marks"]));
        Assert.True(document.TryGetBookmarks(out var bookmarks));
        Assert.Equal(["Printer check", "Cover", "Taping map", "Mat map", "Pin table", "Edge strips", "Sheets"], bookmarks.Roots.Select(b => b.Title));
        var labels = PdfFacts.Labels(document);
        Assert.Equal(labels.Count, labels.Distinct().Count());
        Assert.Equal(Planned.Example(Planned.Triangle).Guides[0].Layout.Sheets.Select(s => s.Name), labels.Where(l => char.IsAsciiDigit(l[0])));
    }

    // For the number of each mark its place on the taped guide, up to one shift of the whole: the nearest cross.
    internal static Dictionary<int, Point> Places(Plan plan, TapedGuide taped)
    {
        var found = taped.Marks();
        Assert.Equal(plan.Pins.Marks.Count, found.Count);
        Box there = Box.Around(found), here = Box.Around(plan.Pins.Marks.Select(m => m.At));
        var shift = there.Centre - here.Centre;
        var places = plan.Pins.Marks.ToDictionary(m => m.Number, m => found.MinBy(p => p.DistanceTo(m.At + shift)));
        Assert.Equal(found.Count, places.Values.Distinct().Count());
        return places;
    }

    private static void AssertLiesAsPlanned(Plan plan, TapedGuide taped)
    {
        Assert.True(taped.Joints > 10);
        Assert.InRange(taped.WorstJointMm, 0, 0.01);
        var places = Places(plan, taped);
        foreach (var (a, b) in Pairs(plan))
            Assert.Equal(a.At.DistanceTo(b.At), places[a.Number].DistanceTo(places[b.Number]), OverTheWholeMm);
    }

    private static IEnumerable<(Engine.Pins.Mark A, Engine.Pins.Mark B)> Pairs(Plan plan) =>
        from a in plan.Pins.Marks from b in plan.Pins.Marks where a.Number < b.Number select (a, b);

    // A line of a length with a tick at each end.
    private static void AssertBar(PaperPage page, double lengthMm, bool upright)
    {
        var ticks = page.Lines.Where(l => upright ? l.IsLevel : l.IsUpright).ToList();
        Assert.Contains(page.Lines, l => (upright ? l.IsUpright : l.IsLevel) && Math.Abs(l.LengthMm - lengthMm) < 0.001
            && new[] { l.From, l.To }.All(end => ticks.Exists(t => t.LengthMm is > 2 and < 4 && (Math.Min(t.From.DistanceTo(end), t.Middle.DistanceTo(end)) < 0.001))));
    }
}
