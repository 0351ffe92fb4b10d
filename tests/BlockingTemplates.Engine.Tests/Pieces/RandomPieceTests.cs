using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Tests.Pieces;

public class RandomPieceTests
{
    private const int Cases = 60;

    public static TheoryData<string> Shapes => [.. RandomPieces.Shapes];

    public static TheoryData<string> BySides => [.. PieceKinds.All.Where(k => k.IsMeasuredBySides).Select(k => k.Shape)];

    public static TheoryData<string> MeasuredAlike => [.. PieceKinds.All.Where(k => !k.GivenByCorners && ReferenceEquals(k.FinishedSizes, k.UnblockedSizes)).Select(k => k.Shape)];

    private static IEnumerable<(PieceKind Kind, Dictionary<string, double> Sizes, Outline Outline)> Made(string shape)
    {
        var kind = PieceKinds.Find(shape)!;
        var random = new Random(20261125);
        for (var i = 0; i < Cases; i++)
        {
            var sizes = RandomPieces.Sizes(shape, random);
            var findings = new Findings();
            var outline = kind.Finished(RandomPieces.Finished(sizes), findings);
            Assert.Empty(findings.Problems);
            yield return (kind, sizes, outline!);
        }
    }

    [Theory]
    [MemberData(nameof(Shapes))]
    public void The_outline_is_closed_simple_and_counter_clockwise_with_the_kinds_names(string shape)
    {
        foreach (var (kind, _, outline) in Made(shape))
        {
            Assert.Equal(kind.EdgeNames, outline.Edges.Select(e => e.Name));
            Assert.Equal(kind.CornerNames, outline.Corners.Select(c => c.Name));
            Assert.All(outline.Corners, c => Assert.Equal(kind.IsRound, c.Smooth));
            Assert.Equal(outline.Edges[^1].Curve.End.X, outline.CornerAt(0).X, 9);
            Assert.Equal(outline.Edges[^1].Curve.End.Y, outline.CornerAt(0).Y, 9);
            Assert.Null(OutlineCrossing.Find(outline));
            Assert.True(outline.SignedArea() > 0);
            Assert.Equal(kind.EdgeNames.Count + kind.CornerNames.Count, kind.EdgeNames.Concat(kind.CornerNames).Distinct().Count());
        }
    }

    [Theory]
    [MemberData(nameof(Shapes))]
    public void The_finished_measurements_can_be_measured_back(string shape)
    {
        foreach (var (_, sizes, outline) in Made(shape))
        {
            var back = MeasuredBack.Sizes(shape, outline);
            foreach (var (name, millimetres) in sizes)
                Assert.InRange(back[name] - millimetres, -0.002, 0.002);
        }
    }

    [Theory]
    [MemberData(nameof(Shapes))]
    public void The_area_is_that_of_the_formula(string shape)
    {
        foreach (var (_, sizes, outline) in Made(shape))
        {
            var whole = MeasuredBack.Sizes(shape, outline);
            foreach (var (name, millimetres) in sizes)
                whole[name] = millimetres;
            var expected = MeasuredBack.Area(shape, whole, outline.Edges.Count);
            // Lines within 0.001 mm of the outline hide at most that on each millimetre of it.
            Assert.InRange(outline.SignedArea(0.001) - expected, -0.001 * outline.Length, 0.001 * outline.Length);
        }
    }

    [Theory]
    [MemberData(nameof(BySides))]
    public void A_piece_taped_by_its_sides_comes_out_as_it_was(string shape)
    {
        foreach (var (kind, _, outline) in Made(shape))
        {
            var corners = Enumerable.Range(0, outline.Edges.Count).Select(outline.CornerAt).ToList();
            var findings = new Findings();
            var unblocked = kind.Unblocked(
                new()
                {
                    Path = "piece.unblocked",
                    Sides = outline.Edges.ToDictionary(e => e.Name, e => Length.FromMillimetres(e.Curve.Length)),
                    Diagonal = kind.TakesDiagonal ? new(kind.CornerNames[0], kind.CornerNames[2], Length.FromMillimetres(corners[0].DistanceTo(corners[2]))) : null,
                },
                findings);
            Assert.Empty(findings.Problems);
            // Moved, not turned over: all distances between corners are as they were, and the area has its sign.
            for (var i = 0; i < corners.Count; i++)
            {
                for (var k = 0; k < i; k++)
                    Assert.Equal(corners[i].DistanceTo(corners[k]), unblocked!.CornerAt(i).DistanceTo(unblocked.CornerAt(k)), 6);
            }

            Assert.Equal(outline.SignedArea(), unblocked!.SignedArea(), 3);
        }
    }

    [Theory]
    [MemberData(nameof(MeasuredAlike))]
    public void A_kind_measured_alike_finished_and_unblocked_gives_the_same_outline_both_times(string shape)
    {
        foreach (var (kind, sizes, outline) in Made(shape))
            Assert.Equal(outline.Ring(), kind.Unblocked(RandomPieces.Finished(sizes) with { Path = "piece.unblocked" }, new())!.Ring());
    }

    [Theory]
    [InlineData("semicircle", "wingspan", "depth")]
    [InlineData("circle", "width", "height")]
    [InlineData("pentagon", "width", "height")]
    [InlineData("hexagon", "width", "height")]
    [InlineData("octagon", "width", "height")]
    [InlineData("dodecagon", "width", "height")]
    public void Two_tapes_at_a_right_angle_are_measured_back_on_the_unblocked_outline(string shape, string across, string up)
    {
        var random = new Random(8);
        for (var i = 0; i < Cases; i++)
        {
            double width = random.Next(100, 1500), height = random.Next(100, 1500);
            var unblocked = PieceKinds.Find(shape)!.Unblocked(RandomPieces.Finished(new() { [across] = width, [up] = height }) with { Path = "piece.unblocked" }, new())!;
            var box = Box.Around(unblocked.Ring(0.001));
            Assert.InRange(box.Width - width, -0.01, 0.01);
            Assert.InRange(box.Height - height, -0.01, 0.01);
        }
    }

    [Theory]
    [MemberData(nameof(Shapes))]
    public void Left_and_right_are_the_same_in_a_kind_without_an_offset(string shape)
    {
        foreach (var (kind, _, outline) in Made(shape).Where(m => !m.Sizes.ContainsKey("offset")).Take(10))
        {
            var pairing = MirrorPairing.Of(outline);
            Assert.NotNull(pairing);
            var behind = LeftAndRight.Renamed(outline.SeenFromBehind());
            Assert.Equal(kind.EdgeNames.Order(StringComparer.Ordinal), behind.Edges.Select(e => e.Name).Order(StringComparer.Ordinal));
            var box = Box.Around(outline.Ring());
            var back = new Vector(box.Left + box.Right, 0);
            foreach (var edge in behind.Edges)
                Assert.InRange((edge.Curve.At(0.5) + back).DistanceTo(outline.Edges.Single(e => e.Name == edge.Name).Curve.At(0.5)), 0, 1e-6);
        }
    }

    [Fact]
    public void Three_sides_give_the_triangle_that_has_them()
    {
        foreach (var (kind, sizes, outline) in Made("triangle"))
        {
            double right = outline.Edges[0].Curve.Length, left = outline.Edges[2].Curve.Length;
            var same = kind.Finished(RandomPieces.Finished(new() { ["wingspan"] = sizes["wingspan"], ["rightSide"] = right, ["leftSide"] = left }), new())!;
            for (var i = 0; i < 3; i++)
                Assert.InRange(same.CornerAt(i).DistanceTo(outline.CornerAt(i)), 0, 1e-6);
        }
    }
}
