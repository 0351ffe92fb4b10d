using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Tests.Shapes;

public class LatticeCoverTests
{
    private const double ContactMm = 0.01;

    public static TheoryData<int, double, double, double> RandomRegions()
    {
        var data = new TheoryData<int, double, double, double>();
        double[] borders = [3, 0, 1.27, 5.08];
        (double X, double Y)[] pitches = [(12, 12), (12, 9), (7.62, 11)];
        for (var seed = 0; seed < 24; seed++)
            data.Add(seed, borders[seed % 4], pitches[seed % 3].X, pitches[seed % 3].Y);
        return data;
    }

    [Theory]
    [MemberData(nameof(RandomRegions))]
    public void Every_shift_meets_the_cells_that_a_slow_count_finds(int seed, double border, double pitchX, double pitchY)
    {
        var ring = RandomRings.Of(seed, 31);
        var box = Box.Around(ring);
        var origin = new Point(box.Left - border, box.Lower - border);
        var cover = new LatticeCover(new RegionShadow(ring, border, ContactMm), origin, pitchX, pitchY);
        var region = SlowCounts.Polygon(ring);
        Assert.Equal(Math.Ceiling(pitchX), cover.ShiftsX);
        Assert.Equal(Math.Ceiling(pitchY), cover.ShiftsY);
        var least = int.MaxValue;
        for (var x = 0; x < cover.ShiftsX; x++)
        {
            for (var y = 0; y < cover.ShiftsY; y++)
            {
                var slow = SlowCounts.Met(region, border, origin + new Vector(x, y), pitchX, pitchY).ToHashSet();
                Assert.True(slow.SetEquals(cover.Cells(x, y)), $"shift {x}, {y}: {Text(slow)} but {Text(cover.Cells(x, y))}");
                Assert.Equal(slow.Count, cover.Count(x, y));
                Assert.All(slow.SelectMany(c => c.Beside), c => Assert.Equal(slow.Contains(c), cover.Meets(x, y, c)));
                var columns = slow.Max(c => c.Column) - slow.Min(c => c.Column) + 1;
                Assert.Equal(columns * (slow.Max(c => c.Row) - slow.Min(c => c.Row) + 1), cover.BoxSize(x, y));
                least = Math.Min(least, slow.Count);
            }
        }

        Assert.Equal(least, cover.Least);
        Assert.All(cover.LeastShifts(), s => Assert.Equal(least, cover.Count(s.X, s.Y)));
        var shape = new RegionShadow(ring, border, ContactMm);
        int[] bounds = [.. Enumerable.Range(1, 12).Select(together => LatticeCover.LowerBound(shape, origin, pitchX, pitchY, together))];
        Assert.Equal(least, bounds[0]);
        Assert.All(bounds, b => Assert.InRange(b, 0, least));
        Assert.InRange(bounds[1], least / 2, least);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(5)]
    [InlineData(7)]
    [InlineData(8)]
    [InlineData(9)]
    [InlineData(10)]
    [InlineData(11)]
    [InlineData(-1)]
    [InlineData(-2)]
    [InlineData(-3)]
    [InlineData(-4)]
    [InlineData(-5)]
    [InlineData(-6)]
    public void Every_shift_holds_the_line_in_the_cells_that_a_walk_along_it_finds(int seed)
    {
        var ring = seed < 0 ? Aligned(seed) : RandomRings.Of(seed, 31).Select(p => new Point(Math.Round(p.X, 3), Math.Round(p.Y, 3))).ToArray();
        Point[] marks = [new(3, 50), new(-20.5, 7), new(3, 51)];
        var box = Box.Around(ring);
        var origin = new Point(box.Left, box.Lower);
        var (pitchX, pitchY) = seed % 2 == 0 ? (12, 9) : (7.62, 11);
        var cover = new LatticeCover(new LineShadow([ring], marks), origin, pitchX, pitchY);
        for (var x = 0; x < cover.ShiftsX; x++)
        {
            for (var y = 0; y < cover.ShiftsY; y++)
            {
                var slow = SlowCounts.Held(ring, marks, origin + new Vector(x, y), pitchX, pitchY);
                Assert.True(slow.SetEquals(cover.Cells(x, y)), $"shift {x}, {y}: {Text(slow)} but {Text(cover.Cells(x, y))}");
                Assert.Equal(slow.Count, cover.Count(x, y));
            }
        }
    }

    [Fact]
    public void The_way_round_and_doubled_points_do_not_matter()
    {
        var ring = RandomRings.Of(3, 31);
        var other = ring.Reverse().SelectMany(p => new[] { p, p }).ToArray();
        var one = new LatticeCover(new RegionShadow(ring, 2, ContactMm), Point.Origin, 12, 9);
        var two = new LatticeCover(new RegionShadow(other, 2, ContactMm), Point.Origin, 12, 9);
        for (var x = 0; x < 12; x++)
        {
            for (var y = 0; y < 9; y++)
                Assert.Equal(one.Cells(x, y), two.Cells(x, y));
        }
    }

    [Fact]
    public void Rectangles_take_columns_times_rows_and_no_mat_for_contact()
    {
        var random = new Random(5);
        for (var i = 0; i < 40; i++)
        {
            // Source: check by hand, ceil(W/s) x ceil(H/s) for a rectangle with no border.
            var (side, width, height) = (20 + (30 * random.NextDouble()), 1 + (200 * random.NextDouble()), 1 + (200 * random.NextDouble()));
            if (i % 4 == 0)
                (width, height) = (3 * side, 2 * side); // exact: the mats beyond only touch
            var cover = new LatticeCover(new RegionShadow(RandomRings.Rectangle(width, height), 0, ContactMm), Point.Origin, side, side);
            Assert.Equal(Math.Ceiling((width / side) - 1e-9) * Math.Ceiling((height / side) - 1e-9), cover.Least);
        }
    }

    [Fact]
    public void A_border_that_fits_exactly_takes_no_further_mats()
    {
        // 21 in wide with 1 1/2 in border on both sides are two mats of 12 in, though no whole number of millimetres.
        var inch = Length.FromInches(1).Millimetres;
        var ring = RandomRings.Rectangle(21 * inch, 33 * inch, left: 3.3);
        var origin = new Point(3.3 - (1.5 * inch), -1.5 * inch);
        Assert.Equal(2 * 3, new LatticeCover(new RegionShadow(ring, 1.5 * inch, ContactMm), origin, 12 * inch, 12 * inch).Least);
        Assert.Equal(2 * 3, new LatticeCover(new RegionShadow(ring, (1.5 * inch) + 0.009, ContactMm), origin, 12 * inch, 12 * inch).Least);
        // A little more, and a column and a row are added, but for their common mat, which only the cut-off round corner would reach.
        Assert.Equal((3 * 4) - 1, new LatticeCover(new RegionShadow(ring, (1.5 * inch) + 0.1, ContactMm), origin, 12 * inch, 12 * inch).Least);
    }

    /// <summary>Edges that run along lines of the grid and through its corners, as rounding may leave them.</summary>
    private static Point[] Aligned(int seed)
    {
        Point[] ring = seed switch
        {
            -1 => [new(15, 0), new(30, 15), new(15, 30), new(0, 15)],
            -2 => [new(0, 0), new(24, 0), new(24, 18), new(0, 18)],
            -3 => [new(0, 0), new(36, 27), new(24, 27), new(24, 20)],
            -4 => [new(12, 0), new(24, 18), new(12, 36), new(0, 18)],
            -5 => [new(0, 0), new(15.24, 22), new(7.62, 22), new(7.62, 33), new(0, 33)],
            _ => [new(0, 27), new(24, 0), new(24, 9), new(12, 18), new(12, 27)],
        };
        var random = new Random(seed);
        return [.. ring.Select(p => p + (4e-13 * new Vector(random.NextDouble() - 0.5, random.NextDouble() - 0.5)))];
    }

    private static string Text(IEnumerable<Cell> cells) =>
        string.Join(' ', cells.OrderBy(c => c.Column).ThenBy(c => c.Row).Select(c => $"{c.Column},{c.Row}"));
}
