using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Tests.Shapes;

/// <summary>Counts of lattice cells against published sequences.</summary>
/// <remarks>
/// Sequences A281795, A119677, A242118, A046109 and A074712 of The On-Line Encyclopedia of Integer Sequences
/// (OEIS Foundation Inc., https://oeis.org), terms used under CC BY-SA 4.0. One square of the grid is one mat.
/// </remarks>
public class PublishedLatticeCountsTests
{
    private const int Side = 40;

    private static readonly int[] A281795 =
        [0, 4, 16, 36, 60, 88, 132, 172, 224, 284, 344, 416, 484, 568, 664, 756, 856, 956, 1076, 1200, 1324, 1452, 1600, 1740, 1884, 2040];

    private static readonly int[] A119677 =
        [0, 0, 4, 16, 32, 60, 88, 120, 164, 216, 276, 332, 392, 476, 556, 648, 732, 832, 936, 1052, 1176, 1288, 1428, 1560, 1696, 1860];

    private static readonly int[] A242118 =
        [0, 4, 12, 20, 28, 28, 44, 52, 60, 68, 68, 84, 92, 92, 108, 108, 124, 124, 140, 148, 148, 164, 172, 180, 188, 180];

    [Fact]
    public void A_disc_on_a_corner_meets_as_many_squares_as_A281795_says()
    {
        for (var n = 1; n < A281795.Length; n++)
            Assert.Equal(A281795[n], Disc(n * Side).Count(0, 0));
    }

    /// <summary>
    /// Squares cut by the circle and squares wholly inside. Half-open windows also hold points of the grid that the circle
    /// touches from their lower left: one of the four at (+-a, +-b) on each side of the centre's diagonal, and two of the
    /// four on the axes, so half of all A046109(n) = 8n - A242118(n) points of the grid on the circle.
    /// </summary>
    [Fact]
    public void A_circle_on_a_corner_cuts_and_encloses_as_many_squares_as_A242118_and_A119677_say()
    {
        for (var n = 1; n < A242118.Length; n++)
        {
            var onCircle = Enumerable.Range(-n, (2 * n) + 1).SelectMany(x => Enumerable.Range(-n, (2 * n) + 1).Where(y => (x * x) + (y * y) == n * n).Select(y => Math.Atan2(y, x))).ToArray();
            var circle = Enumerable.Range(0, 20_000).Select(i => i * Math.Tau / 20_000 - Math.PI).Concat(onCircle).Order()
                .Select(a => Point.Origin + (n * Side * Vector.AtAngle(a))).ToArray();
            var corner = new Point(-n * Side, -n * Side);
            var held = new LatticeCover(new LineShadow([circle], []), corner, Side, Side).Count(0, 0);
            var cut = held - (onCircle.Length / 2);
            Assert.Equal(8 * n - onCircle.Length, A242118[n]);
            Assert.Equal(A242118[n], cut);
            Assert.Equal(A119677[n], Disc(n * Side).Count(0, 0) - cut);
        }
    }

    [Theory]
    [InlineData(3, 4, 6)]
    [InlineData(4, 6, 8)]
    [InlineData(5, 8, 12)]
    [InlineData(6, 9, 12)]
    [InlineData(3, 7, 9)]
    public void A_diagonal_crosses_as_many_squares_as_A074712_says(int columns, int rows, int crossed)
    {
        var end = new Point(columns * Side, rows * Side);
        Point[] thin = [Point.Origin, end, end.Toward(Point.Origin, 0.5) + new Vector(0, 0.001)];
        Assert.Equal(crossed, new LatticeCover(new RegionShadow(thin, 0, 0.01), Point.Origin, Side, Side).Count(0, 0));

        // The line itself, ended just short of the last corner, which would belong to one more half-open square.
        Point[] line = [Point.Origin, Point.Origin.Toward(end, 0.9999)];
        Assert.Equal(crossed, new LatticeCover(new LineShadow([line], []), Point.Origin, Side, Side).Count(0, 0));
    }

    /// <summary>Own exhaustive numbers with shifts of 1/40 mat, not a published source.</summary>
    [Fact]
    public void Discs_of_one_to_eight_mats_take_the_fewest_mats_found_by_trying_all_shifts()
    {
        int[] fewest = [1, 4, 9, 16, 25, 36, 45, 60];
        int[] onCorner = [4, 4, 16, 16, 32, 36, 52, 60];
        int[] inMiddle = [1, 9, 9, 21, 25, 45, 45, 69];
        for (var d = 1; d <= 8; d++)
        {
            var disc = Disc(d * Side / 2.0);
            Assert.Equal(fewest[d - 1], disc.Least);
            var half = d * Side / 2 % Side;
            Assert.Equal(onCorner[d - 1], disc.Count(half, half));
            Assert.Equal(inMiddle[d - 1], disc.Count((half + (Side / 2)) % Side, (half + (Side / 2)) % Side));
        }
    }

    /// <summary>A disc as a border of true arcs round a speck; with no shift a corner of the lattice at its box.</summary>
    private static LatticeCover Disc(double radius)
    {
        Point[] speck = [new(0, -1e-9), new(1e-9, 0), new(0, 1e-9)];
        return new(new RegionShadow(speck, radius, 0.01), new(-radius, -radius), Side, Side);
    }
}
