using BlockingTemplates.Drawing.Guides;
using BlockingTemplates.Drawing.MatCharts;
using BlockingTemplates.Drawing.Overviews;
using BlockingTemplates.Drawing.Pages;
using BlockingTemplates.Engine;
using BlockingTemplates.Engine.Sheets;
using BlockingTemplates.Reference.Tests.Guides;
using BlockingTemplates.Reference.Tests.Planning;

namespace BlockingTemplates.Reference.Tests.Texts;

public class TextCollisionTests
{
    // The widest unprintable border in common printer descriptions: 18 points.
    private const double UnprintableMm = 6.35;

    public static TheoryData<string, string, GuideUse> Examples => new()
    {
        { Planned.Triangle, "A4", GuideUse.Prick },
        { Planned.Triangle, "Letter", GuideUse.Film },
        { Planned.Triangle, "A3", GuideUse.Frame },
        { Planned.Crescent, "A4", GuideUse.Frame },
        { Planned.Crescent, "Letter", GuideUse.Frame },
        { Planned.Rectangle, "Letter", GuideUse.Film },
        { Planned.Rectangle, "A4", GuideUse.Frame },
        { Planned.Rectangle, "A3", GuideUse.Prick },
    };

    public static TheoryData<string> ClothExamples => [.. ClothPieces.All];

    [Theory]
    [MemberData(nameof(Examples))]
    public void No_two_texts_of_an_example_touch_and_none_leaves_the_paper(string example, string paper, GuideUse use) =>
        AssertReadable(PrintedGuide.Of(example, paper, use).Plan);

    [Theory]
    [InlineData(1, "A4", "prick")]
    [InlineData(2, "Letter", "frame")]
    [InlineData(3, "A3", "film")]
    [InlineData(4, "A4", "frame")]
    [InlineData(5, "Letter", "prick")]
    [InlineData(6, "A4", "film")]
    [InlineData(7, "A3", "frame")]
    [InlineData(8, "Letter", "film")]
    public void No_two_texts_of_a_made_up_piece_touch_and_none_leaves_the_paper(int seed, string paper, string use) =>
        AssertReadable(Planned.Of(MadeUpPieces.Text(new Random(seed), paper, use)));

    [Theory]
    [MemberData(nameof(ClothExamples))]
    public void No_two_texts_touch_and_none_leaves_the_paper_with_the_cloth(string piece) => AssertReadable(Planned.InCloth(piece));

    [Fact]
    public void A_corrected_guide_has_no_texts_that_touch() =>
        AssertReadable(Planned.Of(Repository.Example(Planned.Triangle), Planned.On("A4", measuredMm: (147, 244))));

    [Theory]
    [InlineData("A4", true, false)]
    [InlineData("Letter", true, false)]
    [InlineData("roll 610", false, false)]
    [InlineData("A3", false, true)]
    [InlineData("A5", true, true)]
    public void Halves_rolls_and_whole_fields_have_no_texts_that_touch(string paper, bool half, bool all)
    {
        var plan = Planned.Of(Repository.Example(Planned.Triangle), p => p with { Sheets = p.Sheets with { Papers = [PaperCatalogue.Find(paper)!], Half = half, All = all } });
        AssertReadable(plan);
        Assert.Equal(half, plan.Guides[0].Half is not null);
        Assert.Equal(!half, plan.Guides[0].Numbers.Count == plan.Pins.Marks.Count);
        Assert.All(plan.Pins.Marks, m => Assert.NotNull(plan.Guides[0].PlaceOf(m.Number)));
    }

    [Fact]
    public void Texts_put_on_one_another_are_found()
    {
        Page page = new(100, 100, [new TextElement("12", new(50, 50), 5), new PlacedElement([new TextElement("34", new(25, 24), 2)], new(0, 2), 2)]);
        Assert.Contains(Faults(page), f => f.Contains("touches", StringComparison.Ordinal));
        Assert.Contains(Faults(new(100, 100, [new TextElement("12", new(5, 50), 5)])), f => f.Contains("leaves", StringComparison.Ordinal));
        Assert.Empty(Faults(new(100, 100, [new TextElement("12", new(50, 50), 5), new TextElement("34", new(50, 60), 5, AngleDegrees: 90)])));
        Assert.Contains(Faults(new(100, 100, [new TextElement("12", new(50, 50), 5), new TextElement("34567", new(45, 45), 5, AngleDegrees: 45)])), f => f.Contains("touches", StringComparison.Ordinal));
        Assert.Empty(Faults(new(100, 100, [new TextElement("12", new(50, 50), 5), new TextElement("34567", new(56, 46), 5, AngleDegrees: 45)])));
    }

    private static void AssertReadable(Plan plan)
    {
        var pages = GuideDocument.Draw(plan, plan.Guides[0]).Pages.Append(OverviewPicture.Draw(plan)).Concat(MatChart.Draw(plan).Pages).Concat(PlotDocument.Draw(plan).Pages);
        var faults = pages.SelectMany(Faults).ToList();
        Assert.True(faults.Count == 0, $"{plan.Project.Kind.Shape}, {plan.Pins.Marks.Count} marks, {faults.Count} faults:\n{string.Join('\n', faults)}");
    }

    private static IEnumerable<string> Faults(Page page)
    {
        var texts = PageTexts.Of(page).OrderBy(t => t.Seen.Left).ToList();
        var paper = new Engine.Shapes.Box(0, 0, page.WidthMm, page.HeightMm).Grown(-UnprintableMm);
        for (var i = 0; i < texts.Count; i++)
        {
            var text = texts[i];
            if (text.IsCut)
                yield return $"{page.Label}: \"{text.Text}\" is cut off at {Of(text)}";
            if (!paper.Holds(text.Seen) && page.Label != "overview")
                yield return $"{page.Label}: \"{text.Text}\" leaves the paper at {Of(text)}";
            for (var k = i + 1; k < texts.Count && texts[k].Seen.Left < text.Seen.Right; k++)
            {
                if (text.Overlaps(texts[k]))
                    yield return $"{page.Label}: \"{text.Text}\" at {Of(text)} touches \"{texts[k].Text}\" at {Of(texts[k])}";
            }
        }
    }

    private static string Of(SeenText text) => FormattableString.Invariant($"({text.Seen.Left:0.0}, {text.Seen.Lower:0.0})");
}
