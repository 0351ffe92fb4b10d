using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Shapes;
using BlockingTemplates.Engine.Sheets;

namespace BlockingTemplates.Engine.Tests.Sheets;

public class JoiningSheetsTests
{
    private static readonly Paper Paper = new("test", Length.FromMillimetres(10), Length.FromMillimetres(10));

    [Fact]
    public void As_few_sheets_are_added_as_by_trying_all_sets()
    {
        var random = new Random(11);
        for (var i = 0; i < 60; i++)
        {
            var (columns, rows) = (3 + (i % 3), 3 + (i % 2));
            var cells = Cells(columns, rows).Where(_ => random.NextDouble() < 0.3).Append(new(0, 0)).ToHashSet();
            var layout = Layout(cells);
            Assert.True(HangTogether(Cells(layout)));
            Assert.Equal(Fewest(cells), layout.JoiningCount);
            Assert.True(cells.SetEquals(layout.Sheets.Where(s => !s.Joining).Select(s => new Cell(s.Column - 1, s.Row - 1))));
        }
    }

    [Fact]
    public void Very_many_groups_still_hang_together()
    {
        var cells = Cells(13, 9).Where(c => c.Column % 2 == 0 && c.Row % 2 == 0).ToHashSet();
        var layout = Layout(cells);
        Assert.True(HangTogether(Cells(layout)));
        Assert.Equal(7 * 5 - 1, layout.JoiningCount); // each joining sheet joins at most two of the 35 here
    }

    private static SheetLayout Layout(HashSet<Cell> cells)
    {
        // A speck of an outline in the first sheet, and a mark in the middle of every other.
        Point[] speck = [new(0, 0), new(1, 0), new(1, 1)];
        return PageGrid.Search(Paper, Length.Zero, Length.Zero, speck, [.. cells.Select(c => new Point((c.Column * 10) + 5, (c.Row * 10) + 5))])
            .Layout(new(false, 0, 0));
    }

    private static IEnumerable<Cell> Cells(int columns, int rows) =>
        from row in Enumerable.Range(0, rows) from column in Enumerable.Range(0, columns) select new Cell(column, row);

    private static HashSet<Cell> Cells(SheetLayout layout) => [.. layout.Sheets.Select(s => new Cell(s.Column - 1, s.Row - 1))];

    private static bool HangTogether(HashSet<Cell> cells)
    {
        HashSet<Cell> reached = [cells.First()];
        while (reached.SelectMany(c => c.Beside).Where(cells.Contains).Except(reached).ToArray() is { Length: > 0 } more)
            reached.UnionWith(more);
        return reached.Count == cells.Count;
    }

    private static int Fewest(HashSet<Cell> cells)
    {
        var free = Cells(cells.Max(c => c.Column) + 1, cells.Max(c => c.Row) + 1).Except(cells).ToArray();
        for (var count = 0; ; count++)
        {
            if (Sets(free.Length, count, 0).Any(set => HangTogether([.. cells, .. set.Select(i => free[i])])))
                return count;
        }
    }

    private static IEnumerable<int[]> Sets(int of, int count, int from) => count == 0
        ? [[]]
        : Enumerable.Range(from, of - from).SelectMany(i => Sets(of, count - 1, i + 1).Select(rest => (int[])[i, .. rest]));
}
