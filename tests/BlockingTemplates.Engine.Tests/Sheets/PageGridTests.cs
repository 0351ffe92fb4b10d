using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Shapes;
using BlockingTemplates.Engine.Sheets;
using BlockingTemplates.Engine.Tests.Shapes;

namespace BlockingTemplates.Engine.Tests.Sheets;

public class PageGridTests
{
    /// <summary>A paper whose pitch is 12 x 9.5 mm with 2 mm margin and 1 mm overlap.</summary>
    private static readonly Paper Small = new("small", Length.FromMillimetres(14.5), Length.FromMillimetres(17));

    private static readonly bool[] BothWays = [false, true];

    private static readonly Length Margin = Length.FromMillimetres(2);

    private static readonly Length Overlap = Length.FromMillimetres(1);

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(5)]
    [InlineData(10)]
    public void The_fewest_sheets_and_all_ties_are_those_found_by_trying_every_way(int seed)
    {
        var ring = Rounded(RandomRings.Of(seed, 40));
        var cut = Rounded(RandomRings.Of(seed, 43));
        Point[] marks = [new(33, 5), ring[0]];
        var grid = PageGrid.Search(Small, Margin, Overlap, ring, marks, cut);
        var box = Box.Around(ring);
        var slow = from landscape in BothWays
                   let pitch = landscape ? new Vector(12, 9.5) : new Vector(9.5, 12)
                   from x in Enumerable.Range(0, (int)Math.Ceiling(pitch.X))
                   from y in Enumerable.Range(0, (int)Math.Ceiling(pitch.Y))
                   let corner = new Point(box.Left + x, box.Lower + y)
                   let cells = SlowCounts.Held(ring, marks, corner, pitch.X, pitch.Y).Union(SlowCounts.Held(cut, [], corner, pitch.X, pitch.Y)).Count()
                   select (Placing: new PagePlacing(landscape, x, y), Count: cells);
        var least = slow.Min(s => s.Count);
        Assert.Equal(least, grid.Least);
        Assert.Equal(slow.Where(s => s.Count == least).Select(s => s.Placing), grid.Tied);
        Assert.Equal(grid.Tied[0], grid.Best());
        var layout = grid.Layout(grid.Tied[^1]);
        Assert.Equal(least, layout.Sheets.Count - layout.JoiningCount);
    }

    [Fact]
    public void Every_point_has_one_owner_whose_window_has_its_left_and_lower_side_only()
    {
        var layout = PageGrid.Search(Small, Margin, Overlap, RandomRings.Rectangle(36, 38), [], all: true).Layout(new(true, 0, 0));
        foreach (var sheet in layout.Sheets)
        {
            var w = sheet.Window;
            Assert.Equal(sheet, layout.Owner(new(w.Left, w.Lower)));
            Assert.Equal(sheet, layout.Owner(new(w.Left, w.Upper - 0.001)));
            Assert.Equal(sheet, layout.Owner(new(w.Right - 0.001, w.Lower)));
            Assert.Equal(layout.At(sheet.Row, sheet.Column + 1), layout.Owner(new(w.Right, w.Lower)));
            Assert.Equal(layout.At(sheet.Row + 1, sheet.Column), layout.Owner(new(w.Left, w.Upper)));
            Assert.Equal(layout.At(sheet.Row + 1, sheet.Column + 1), layout.Owner(new(w.Right, w.Upper)));
        }

        var random = new Random(3);
        for (var i = 0; i < 500; i++)
        {
            var p = new Point(36 * random.NextDouble(), 38 * random.NextDouble());
            Assert.Equal(layout.Sheets.Single(s => p.X >= s.Window.Left && p.X < s.Window.Right && p.Y >= s.Window.Lower && p.Y < s.Window.Upper), layout.Owner(p));
        }
    }

    [Fact]
    public void An_edge_along_a_line_of_the_grid_belongs_to_the_windows_on_its_right_or_above()
    {
        // Three windows of 12 mm wide, two of 9.5 mm high; the right and upper edge lie on the next windows' sides.
        for (var i = 0; i < 20; i++)
        {
            var noise = (i - 10) * 3e-14;
            Point[] ring = [new(5, 7), new(41 + noise, 7 - noise), new(41 - noise, 26 + noise), new(5 + noise, 26)];
            var layout = PageGrid.Search(Small, Margin, Overlap, ring, []).Layout(new(true, 0, 0));
            Assert.Equal(
                ["1-1", "1-2", "1-3", "1-4", "2-1", "2-4", "3-1", "3-2", "3-3", "3-4"],
                layout.Sheets.Select(s => s.Name));
            Assert.Equal(5, layout.Sheets[0].Window.Left, 9);
        }
    }

    [Fact]
    public void A_mark_off_the_outline_asks_for_its_sheet_and_the_inside_asks_for_none()
    {
        var ring = RandomRings.Rectangle(59, 47);
        var without = PageGrid.Search(Small, Margin, Overlap, ring, []).Layout(new(true, 0, 0));
        Assert.Equal((2 * 5) + (2 * 3), without.Sheets.Count);
        var with = PageGrid.Search(Small, Margin, Overlap, ring, [new(30, 30)]).Layout(new(true, 0, 0));
        Assert.Contains(with.Sheets, s => s.Name == "4-3" && !s.Joining);
        Assert.Equal(0, with.JoiningCount);
        var all = PageGrid.Search(Small, Margin, Overlap, ring, [], all: true);
        Assert.Equal(5 * 5, all.Layout(new(true, 0, 0)).Sheets.Count);
        Assert.Equal(5 * 5, all.Least);
    }

    [Fact]
    public void The_score_decides_between_ties_and_only_ties_are_scored()
    {
        var grid = PageGrid.Search(Small, Margin, Overlap, RandomRings.Rectangle(31, 22), []);
        Assert.True(grid.Tied.Count > 3);
        var asked = new List<PagePlacing>();
        var best = grid.Best(p =>
        {
            asked.Add(p);
            return p == grid.Tied[2] || p == grid.Tied[3] ? 1 : 2;
        });
        Assert.Equal(grid.Tied[2], best);
        Assert.Equal(grid.Tied, asked);
        asked.Clear();
        Assert.Equal(grid.Tied[1], grid.Best(p =>
        {
            asked.Add(p);
            return p == grid.Tied[1] ? 0 : 5;
        }));
        Assert.Equal(2, asked.Count);
    }

    [Fact]
    public void Pitch_is_paper_less_margins_less_one_overlap()
    {
        var pitch = PageGrid.Pitch(PaperCatalogue.Find("A4")!, true, Length.FromMillimetres(12), Length.FromMillimetres(15));
        Assert.Equal((297 - 24 - 15, 210 - 24 - 15), pitch);
        Assert.Throws<ArgumentOutOfRangeException>(() => PageGrid.Search(Small, Length.FromMillimetres(8), Overlap, RandomRings.Rectangle(9, 9), []));
    }

    private static Point[] Rounded(IReadOnlyList<Point> ring) => [.. ring.Select(p => new Point(Math.Round(p.X, 3), Math.Round(p.Y, 3)))];
}
