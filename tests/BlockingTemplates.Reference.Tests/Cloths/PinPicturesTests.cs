using System.Globalization;
using System.Text.RegularExpressions;
using BlockingTemplates.Drawing.Cloths;
using BlockingTemplates.Drawing.Guides;
using BlockingTemplates.Drawing.Pages;
using BlockingTemplates.Engine;
using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Shapes;
using BlockingTemplates.Reference.Tests.Planning;

namespace BlockingTemplates.Reference.Tests.Cloths;

// Loads, free edge, tables and words of the cloth, read back from the pages and compared with the plan.
public class PinPicturesTests
{
    public static TheoryData<string> Pieces => [.. ClothPieces.All];

    [Theory]
    [MemberData(nameof(Pieces))]
    public void Bars_stand_at_their_marks_and_are_as_long_as_the_loads(string piece)
    {
        var plan = Planned.InCloth(piece);
        var page = PinPage(plan);
        var bars = page.Content.OfType<PathElement>().Where(p => p is { Stroke: { WidthMm: 0.8, Grey: 0.15 }, Steps.Count: 2 }).Select(p => (From: p.Steps[0].To, To: p.Steps[1].To)).ToList();
        Assert.Equal(plan.Pins.Marks.Count, bars.Count);
        var outline = new DrawnOutline(page.Content.OfType<PathElement>().Single(p => p is { Stroke: { WidthMm: 0.3, Grey: 0.3 }, Fill.Grey: 0.95 }), plan.Pins.Pinned);
        var longest = bars.Max(b => b.From.DistanceTo(b.To));
        foreach (var (mark, bar) in plan.Pins.Marks.Zip(bars))
        {
            Assert.Equal(0, bar.From.DistanceTo(outline.On(mark.At)), 0.001);
            Assert.Equal(Math.Max(plan.Cloth!.LoadShares[mark.Number - 1], 0.3 / longest), bar.From.DistanceTo(bar.To) / longest, 0.001);
        }

        // The heaviest is named in words.
        var heaviest = plan.Pins.Marks.MaxBy(m => plan.Cloth!.LoadShares[m.Number - 1])!;
        Assert.Contains($"the longest at mark {heaviest.Number.ToString(CultureInfo.InvariantCulture)}", Words([page]), StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Pieces))]
    public void The_free_edge_is_drawn_off_its_line_as_many_times_as_the_words_say(string piece)
    {
        var plan = Planned.InCloth(piece);
        var page = PinPage(plan);
        var lines = page.Content.OfType<PathElement>().Where(p => p is { Stroke: { WidthMm: 0.4, Grey: 0 }, Fill: null } && p.Steps[^1].Kind != PathStepKind.Close).ToList();
        Assert.Equal(plan.Cloth!.OffLine.Count, lines.Count);
        var outline = new DrawnOutline(page.Content.OfType<PathElement>().Single(p => p is { Stroke: { WidthMm: 0.2, Grey: 0.35 } }), plan.Pins.Pinned);
        var enlarged = Regex.Match(Words([page]), @"drawn (\d+) times") is { Success: true } said ? double.Parse(said.Groups[1].Value, CultureInfo.InvariantCulture) : 1;
        var ring = plan.Pins.Pinned.Ring();
        foreach (var (line, drawn) in plan.Cloth.OffLine.Zip(lines))
        {
            Assert.Equal(line.Count, drawn.Steps.Count);
            foreach (var (p, step) in line.Zip(drawn.Steps))
            {
                // Drawn at nearest + k (p - nearest), so it is k - 1 times the distance away from where p itself would be drawn.
                var off = outline.On(p).DistanceTo(step.To) / outline.Scale;
                Assert.Equal((enlarged - 1) * FromRing(ring, p), off, enlarged * 0.35);
            }
        }
    }

    [Theory]
    [MemberData(nameof(Pieces))]
    public void The_table_of_edges_has_every_edges_worst_gap(string piece)
    {
        var plan = Planned.InCloth(piece);
        var texts = ClothPages.Draw(plan, plan.Guides[0].Paper).SelectMany(p => p.Content).OfType<TextElement>().ToList();
        for (var i = 0; i < plan.Pins.Edges.Count; i++)
        {
            var name = texts.Single(t => t.Text == plan.Pins.Edges[i].Name && t.Weight == FontWeight.Bold && t.SizeMm == 3.6 && t.At.X < 25 && !texts.Any(a => a.Text.Contains('%', StringComparison.Ordinal) && a.At.Y == t.At.Y));
            var row = texts.Where(t => t.At.Y == name.At.Y && t.SizeMm == 3.6).Select(t => t.Text).ToList();
            var hold = plan.Cloth!.Edges[i]!;
            var own = plan.Cloth.Gaps.Where(g => g.Edge == i && g.Determined != false).ToList();
            Assert.Contains(plan.Pins.Marks.Count(m => m.Edge == i).ToString(CultureInfo.InvariantCulture), row);
            if (hold.Worst is { } worst)
            {
                Assert.Equal(own.Max(g => Math.Abs(g.ScallopMm)), Math.Abs(worst.ScallopMm));
                Assert.Contains(FormattableString.Invariant($"{worst.From} and {worst.To}"), row);
                Assert.Contains(row, t => t.Contains(LengthWords.Of(Length.FromMillimetres(Math.Abs(worst.ScallopMm)), plan.Project.Units), StringComparison.Ordinal));
            }

            var kept = own.TrueForAll(g => Math.Abs(g.ScallopMm) <= 1.001 * plan.Project.Pins.Scallop.Millimetres);
            Assert.Contains(row, t => kept ? t.StartsWith("yes", StringComparison.Ordinal) || t == "not determined" : t == "no");
        }
    }

    [Theory]
    [MemberData(nameof(Pieces))]
    public void Anchors_material_and_ends_are_told(string piece)
    {
        var plan = Planned.InCloth(piece);
        var words = Words(ClothPages.Draw(plan, plan.Guides[0].Paper));
        var cloth = plan.Cloth!;
        Assert.Contains(cloth.Material.Told.Split(' ').First(), words, StringComparison.Ordinal);
        Assert.Contains(string.Join(' ', cloth.Material.Told.Split(' ', StringSplitOptions.RemoveEmptyEntries)), words, StringComparison.Ordinal);
        Assert.All(cloth.Anchors, a => Assert.Contains(FormattableString.Invariant($"{a.Anchor} {100 * a.ForceShare:0} %"), words, StringComparison.Ordinal));
        foreach (var end in new[] { cloth.Soft, cloth.Stiff })
        {
            if (end?.Pins is { } pins && pins != plan.Pins.Marks.Count)
                Assert.Contains(FormattableString.Invariant($"it would need {pins} pins"), words, StringComparison.Ordinal);
        }
    }

    [Theory]
    [MemberData(nameof(Pieces))]
    public void The_pin_table_has_every_pull_in_turn_the_approximate_ones_marked(string piece)
    {
        var plan = Planned.InCloth(piece);
        var pages = GuideDocument.Draw(plan, plan.Guides[0]).Pages.Where(p => p.Label.StartsWith("pins", StringComparison.Ordinal)).ToList();
        var found = 0;
        foreach (var texts in pages.Select(p => p.Content.OfType<TextElement>().ToList()))
        {
            var heads = texts.Where(t => t.Text == "In turn").ToList();
            foreach (var number in texts.Where(t => t is { Weight: FontWeight.Bold, SizeMm: 3.6 } && t.At.X < 30 && int.TryParse(t.Text, NumberStyles.None, CultureInfo.InvariantCulture, out _)))
            {
                var mark = plan.Pins.Marks[int.Parse(number.Text, CultureInfo.InvariantCulture) - 1];
                var turn = plan.Cloth!.InTurn[mark.Number - 1];
                var cell = texts.Single(t => t.At.Y == number.At.Y && t.At.X == heads[0].At.X);
                Assert.Equal((turn.IsApproximate ? "about " : "") + LengthWords.Number(Length.FromMillimetres(mark.At.DistanceTo(turn.Rest)), plan.Project.Units), cell.Text);
                found++;
            }
        }

        Assert.Equal(plan.Pins.Marks.Count, found);
        Assert.DoesNotContain(GuideDocument.Draw(Planned.Example(Planned.Triangle), Planned.Example(Planned.Triangle).Guides[0]).Pages.SelectMany(p => p.Content), e => e is TextElement { Text: "In turn" });
    }

    [Theory]
    [MemberData(nameof(Pieces))]
    public void The_cover_says_of_every_edge_whether_it_is_kept(string piece)
    {
        var plan = Planned.InCloth(piece);
        var words = Words(GuideDocument.Draw(plan, plan.Guides[0]).Pages.Where(p => p.Label.StartsWith("cover", StringComparison.Ordinal)));
        Assert.DoesNotContain("may dip", words, StringComparison.Ordinal);
        foreach (var (edge, i) in plan.Pins.Edges.Select((e, i) => (e, i)))
        {
            var hold = plan.Cloth!.Edges[i]!;
            var line = Regex.Match(words, $@"\b{edge.Name} edge: (.*?)(?= \w[\w ]* edge: | Kept: )").Groups[1].Value;
            Assert.Matches(hold switch
            {
                { Worst: null } => "slack between its pins",
                { Worst: { } worst } when Math.Abs(worst.ScallopMm) < 0.5 && hold.Slack.Count == 0 => "straight between pins",
                { Worst: { } worst } => FormattableString.Invariant($"{(hold.IsKept ? "kept" : "NOT kept")}.* at marks {worst.From}-{worst.To}$"),
            }, line);
        }
    }

    private static Page PinPage(Plan plan) => ClothPages.Draw(plan, plan.Guides[0].Paper).Single(p => p.Content.Any(e => e is TextElement { Text: "Load of each pin" }));

    // All texts as one line, in the order in which they were written.
    private static string Words(IEnumerable<Page> pages) => string.Join(' ', pages.SelectMany(p => p.Content).OfType<TextElement>().Select(t => t.Text));

    private static double FromRing(IReadOnlyList<Point> ring, Point p) => Enumerable.Range(0, ring.Count).Min(i =>
    {
        var (a, b) = (ring[i], ring[(i + 1) % ring.Count]);
        var along = b - a;
        return a.Toward(b, Math.Clamp((p - a).Dot(along) / along.Dot(along), 0, 1)).DistanceTo(p);
    });
}
