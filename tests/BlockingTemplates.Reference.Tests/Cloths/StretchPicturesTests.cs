using System.Globalization;
using BlockingTemplates.Drawing.Cloths;
using BlockingTemplates.Drawing.Pages;
using BlockingTemplates.Engine;
using BlockingTemplates.Engine.Pins.Settling;
using BlockingTemplates.Engine.Shapes;
using BlockingTemplates.Reference.Tests.Planning;

namespace BlockingTemplates.Reference.Tests.Cloths;

// Greys and figures of the two stretch pictures, read back from the page and compared with the plan.
public class StretchPicturesTests
{
    private const double OutlineMm = 0.5;

    public static TheoryData<string> Pieces => [.. ClothPieces.All];

    [Theory]
    [MemberData(nameof(Pieces))]
    public void The_figures_are_the_stretch_of_the_cloth_beneath_them(string piece)
    {
        var plan = Planned.InCloth(piece);
        var page = ClothPages.Draw(plan, plan.Guides[0].Paper)[0];
        var figures = 0;
        foreach (var (outline, value) in Pictures(page, plan))
        {
            foreach (var text in page.Content.OfType<TextElement>().Where(t => t.Text.EndsWith(" %", StringComparison.Ordinal) && outline.Box.Holds(t.At)))
            {
                // A figure stands on the middle of its cell.
                var middle = text.At + new Vector(Drawing.Text.TextMeasure.AdvanceMm(text.Text, text.SizeMm) / 2, text.SizeMm * Drawing.Text.TextMeasure.FigureHeight() / 2);
                var cell = plan.Cloth!.Stretch.Cells.MinBy(c => c.At.DistanceTo(outline.Off(middle)));
                Assert.True(cell.At.DistanceTo(outline.Off(middle)) < 0.02 * plan.Cloth.Stretch.CellMm);
                Assert.Equal(Math.Round(100 * value(cell), MidpointRounding.AwayFromZero), double.Parse(text.Text[..^2], CultureInfo.InvariantCulture));
                figures++;
            }
        }

        Assert.InRange(figures, 8, 18);
    }

    [Theory]
    [MemberData(nameof(Pieces))]
    public void The_grey_of_a_place_is_the_grey_that_the_legend_gives_its_stretch(string piece)
    {
        var plan = Planned.InCloth(piece);
        var map = plan.Cloth!.Stretch;
        var page = ClothPages.Draw(plan, plan.Guides[0].Paper)[0];
        var scale = ToneScale.For(map);
        var cells = map.Cells.ToDictionary(c => (c.Column, c.Row));
        var compared = 0;
        foreach (var (outline, value) in Pictures(page, plan))
        {
            foreach (var cell in map.Cells)
            {
                // Where all eight neighbours have the same tone, so that none runs through the cell.
                var about = (from x in new[] { -1, 0, 1 } from y in new[] { -1, 0, 1 } select (cell.Column + x, cell.Row + y)).ToList();
                if (!about.TrueForAll(cells.ContainsKey) || about.Select(k => scale.Tone(value(cells[k]))).Distinct().Count() > 1)
                    continue;
                Assert.Equal(scale.Grey(scale.Tone(value(cell))), GreyAt(page, outline.On(cell.At)));
                compared++;
            }
        }

        Assert.True(compared > 200, $"{compared}");
    }

    [Theory]
    [MemberData(nameof(Pieces))]
    public void Greys_of_the_legend_can_be_told_apart_and_darken_with_the_stretch(string piece)
    {
        var plan = Planned.InCloth(piece);
        var scale = ToneScale.For(plan.Cloth!.Stretch);
        var page = ClothPages.Draw(plan, plan.Guides[0].Paper)[0];
        Assert.InRange(scale.Bounds.Count, 2, 5);
        Assert.All(Enumerable.Range(0, scale.Bounds.Count), t => Assert.True(scale.Grey(t) - scale.Grey(t + 1) > 0.09));
        Assert.True(scale.Grey(scale.Bounds.Count) >= 0.5); // black figures and lines stay readable
        Assert.All(Enumerable.Range(0, scale.Bounds.Count + 1), t => Assert.Contains(page.Content, e => e is TextElement text && text.Text == scale.Words(t)));
        Assert.All(scale.Bounds, b => Assert.Equal(Math.Round(100 * b), 100 * b, 1e-9));
    }

    [Fact]
    public void Slack_regions_are_lettered_hatched_and_told_in_words()
    {
        var plan = Planned.InCloth(ClothPieces.Slack);
        Assert.NotEmpty(plan.Cloth!.Slack);
        var page = ClothPages.Draw(plan, plan.Guides[0].Paper)[0];
        Assert.Equal(2, page.Content.Count(e => e is TextElement { Text: "A" }));
        Assert.Contains(page.Content, e => e is TextElement { Text: "slack" });
        Assert.Contains(page.Content, e => e is TextElement text && text.Text.StartsWith("A, ", StringComparison.Ordinal) && text.Text.Contains("slack", StringComparison.Ordinal));
        var without = ClothPages.Draw(Planned.InCloth(Planned.Triangle), plan.Guides[0].Paper)[0];
        Assert.DoesNotContain(without.Content, e => e is TextElement { Text: "A" or "slack" });
    }

    [Fact]
    public void Without_the_cloth_there_is_no_page_of_it()
    {
        var plan = Planned.Example(Planned.Triangle);
        Assert.Empty(ClothPages.Draw(plan, plan.Guides[0].Paper));
    }

    private static IEnumerable<(DrawnOutline Outline, Func<StretchCell, double> Value)> Pictures(Page page, Plan plan)
    {
        var outlines = page.Content.OfType<PathElement>().Where(p => p is { Stroke.WidthMm: OutlineMm, Fill: null }).Select(p => new DrawnOutline(p, plan.Pins.Pinned)).ToList();
        Assert.Equal(2, outlines.Count);
        return [(outlines[0], c => c.Along), (outlines[1], c => c.Across)];
    }

    // The last fill over a place, figures' white boxes and letters left aside: their rectangles are single paths.
    private static double GreyAt(Page page, Point at) => page.Content.OfType<PathElement>()
        .Last(p => p is { Stroke: null, Fill: not null } && p.Steps.Count > 5 && p.Steps.All(s => s.Kind != PathStepKind.Cubic) && Covers(p.Steps, at)).Fill!.Grey;

    private static bool Covers(IReadOnlyList<PathStep> steps, Point at)
    {
        for (var i = 0; i + 2 < steps.Count; i++)
        {
            if (steps[i].Kind == PathStepKind.Move && Box.Around([steps[i].To, steps[i + 2].To]).Holds(at))
                return true;
        }

        return false;
    }
}
