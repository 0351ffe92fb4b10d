using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Shapes;
using BlockingTemplates.Engine.Sheets;

namespace BlockingTemplates.Engine.Tests.Sheets;

public class TapingTests
{
    /// <summary>Taping simulated on squares of 1 mm: each sheet is cut, laid down and hides what was there.</summary>
    [Fact]
    public void A_box_shows_whole_where_taping_square_by_square_leaves_all_of_it()
    {
        var random = new Random(7);
        for (var i = 0; i < 40; i++)
        {
            var (pitchX, pitchY, overlap, margin) = (random.Next(8, 14), random.Next(8, 14), random.Next(0, 6), random.Next(0, 5));
            var sheets = Sheets(random, pitchX, pitchY);
            var layout = new SheetLayout(Paper(pitchX, pitchY, overlap, margin), false, sheets, pitchX, pitchY, overlap, margin);
            var seen = Taped(sheets, pitchX, pitchY, overlap, margin);
            for (var k = 0; k < 400; k++)
            {
                var (x, y) = (random.Next(0, 70), random.Next(0, 60));
                var box = new Box(x, y, x + random.Next(1, 8), y + random.Next(1, 6));
                var shown = layout.Sheets.Where(s => Squares(box).All(q => seen.TryGetValue(q, out var top) && top == (s.Name, true))).ToArray();
                Assert.Equal(shown, layout.Sheets.Where(s => layout.ShowsWhole(s, box)));
                Assert.Equal(shown.FirstOrDefault(), layout.SheetHolding(box));
            }
        }
    }

    [Fact]
    public void A_sheet_lies_trimmed_over_the_sheet_before_it_and_keeps_its_margin_on_free_sides()
    {
        Sheet[] sheets = [Sheet(1, 1, 10, 10), Sheet(1, 2, 10, 10)];
        var layout = new SheetLayout(Paper(10, 10, 3, 2), false, sheets, 10, 10, 3, 2);
        Assert.Equal(new Box(0, 0, 13, 13), layout.PrintedBox(sheets[0]));
        Assert.Equal(new Box(-2, -2, 15, 15), layout.PaperBox(sheets[0]));
        Assert.Equal(new Box(10, -2, 25, 15), layout.PaperBox(sheets[1]));
        Assert.Equal(sheets[0], layout.SheetHolding(new(4, 4, 10, 6)));
        Assert.Equal(sheets[1], layout.SheetHolding(new(10, 4, 12, 6)));
        Assert.Null(layout.SheetHolding(new(9, 4, 11, 6)));
        Assert.Equal(sheets[0], layout.SheetHolding(new(4, 10, 6, 13)));
    }

    [Fact]
    public void A_place_in_the_overlap_shows_on_all_sheets_that_print_it()
    {
        Sheet[] sheets = [Sheet(1, 1, 10, 10), Sheet(1, 2, 10, 10), Sheet(2, 1, 10, 10), Sheet(2, 2, 10, 10)];
        var layout = new SheetLayout(Paper(10, 10, 3, 2), false, sheets, 10, 10, 3, 2);
        Assert.Equal(sheets, layout.SheetsShowing(new(11, 12)));
        Assert.Equal(sheets, layout.SheetsShowing(new(10, 10)));
        Assert.Equal([sheets[0]], layout.SheetsShowing(new(9, 9)));
        Assert.Equal([sheets[1], sheets[3]], layout.SheetsShowing(new(14, 10)));
        Assert.Empty(layout.SheetsShowing(new(-1, 5)));
        Assert.Equal(sheets[3], layout.Owner(new(11, 12)));
        Assert.Null(layout.Owner(new(-1, 5)));
    }

    private static Dictionary<(int X, int Y), (string Sheet, bool Printed)> Taped(
        IReadOnlyList<Sheet> sheets, int pitchX, int pitchY, int overlap, int margin)
    {
        var top = new Dictionary<(int, int), (string, bool)>();
        foreach (var sheet in sheets)
        {
            var (left, lower) = ((sheet.Column - 1) * pitchX, (sheet.Row - 1) * pitchY);
            var cutLeft = sheets.Any(s => s.Row == sheet.Row && s.Column == sheet.Column - 1);
            var cutLower = sheets.Any(s => s.Row == sheet.Row - 1 && s.Column == sheet.Column);
            for (var x = left - margin; x < left + pitchX + overlap + margin; x++)
            {
                for (var y = lower - margin; y < lower + pitchY + overlap + margin; y++)
                {
                    if ((x < left && cutLeft) || (y < lower && cutLower))
                        continue;
                    var printed = x >= left && y >= lower && x < left + pitchX + overlap && y < lower + pitchY + overlap;
                    top[(x, y)] = (sheet.Name, printed);
                }
            }
        }

        return top;
    }

    private static IEnumerable<(int, int)> Squares(Box box) =>
        from x in Enumerable.Range((int)box.Left, (int)box.Width) from y in Enumerable.Range((int)box.Lower, (int)box.Height) select (x, y);

    private static Sheet[] Sheets(Random random, int pitchX, int pitchY)
    {
        var all = from row in Enumerable.Range(1, 5) from column in Enumerable.Range(1, 5) select Sheet(row, column, pitchX, pitchY);
        return [.. all.Where(s => s.Row + s.Column == 2 || random.NextDouble() < 0.6)];
    }

    private static Sheet Sheet(int row, int column, int pitchX, int pitchY)
    {
        var (x, y) = ((column - 1) * pitchX, (row - 1) * pitchY);
        return new(row, column, new(x, y, x + pitchX, y + pitchY), false);
    }

    private static Paper Paper(int pitchX, int pitchY, int overlap, int margin)
    {
        var (x, y) = (pitchX + overlap + (2 * margin), pitchY + overlap + (2 * margin));
        return new("test", Length.FromMillimetres(Math.Min(x, y)), Length.FromMillimetres(Math.Max(x, y)));
    }
}
