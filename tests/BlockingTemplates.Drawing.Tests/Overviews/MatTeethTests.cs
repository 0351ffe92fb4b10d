using BlockingTemplates.Drawing.Overviews;
using BlockingTemplates.Drawing.Pages;
using BlockingTemplates.Engine.Mats;
using NetTopologySuite.Geometries;
using Point = BlockingTemplates.Engine.Shapes.Point;

namespace BlockingTemplates.Drawing.Tests.Overviews;

public class MatTeethTests
{
    [Theory]
    [InlineData(300, 300)]
    [InlineData(600, 300)]
    [InlineData(304.8, 609.6)]
    [InlineData(50, 70)]
    public void Mats_interlock_without_gap_or_overlap(double pitchX, double pitchY)
    {
        var mat = Polygon(pitchX, pitchY, 0, 0);
        Assert.True(mat.IsValid);
        Assert.True(mat.Shell.IsCCW);
        Assert.Equal(pitchX * pitchY, mat.Area, 6);
        Polygon[] others = [Polygon(pitchX, pitchY, 1, 0), Polygon(pitchX, pitchY, 0, 1), Polygon(pitchX, pitchY, 1, 1), Polygon(pitchX, pitchY, -1, 1)];
        foreach (var other in others)
            Assert.InRange(mat.Intersection(other).Area, 0, 1e-6);
        // Four mats make one larger piece without holes, as large as four pitches.
        var joined = NetTopologySuite.Operation.Union.CascadedPolygonUnion.Union([mat.Buffer(1e-6), others[0].Buffer(1e-6), others[1].Buffer(1e-6), others[2].Buffer(1e-6)]);
        Assert.Equal(0, Assert.IsType<Polygon>(joined).NumInteriorRings);
        Assert.Equal(4 * pitchX * pitchY, joined.Area, 1);
    }

    [Fact]
    public void Teeth_reach_past_the_seam_and_no_further_than_said()
    {
        var ring = MatTeeth.Ring(300, 300);
        Assert.Equal(150 + MatTeeth.ReachMm, ring.Max(p => Math.Max(Math.Abs(p.X), Math.Abs(p.Y))), 9);
        // One tooth or gap every half of a tooth and gap, but for the plain corners.
        Assert.Equal((2 * 300 / (int)MatTeeth.ToothAndGapMm) - 2, ring.Zip(ring.Skip(1)).Count(p => p.First.Y < -140 && p.First.Y == p.Second.Y && Math.Abs(p.First.Y + 150) > 1));
    }

    [Fact]
    public void A_field_is_one_small_drawing_placed_once_for_each_mat()
    {
        var mats = new MatLayout
        {
            PitchX = 600,
            PitchY = 300,
            TurnDegrees = 0,
            Columns = 2,
            Rows = 1,
            Mats = [new("A1", 0, 0, Point.Origin), new("B1", 1, 0, new(600, 0))],
            Seats = [],
            CrossedSeams = [],
        };
        var drawn = MatTeeth.Of(mats, new(0.1, new(20, 30))).Cast<SymbolElement>().ToArray();
        Assert.Equal([new Point(50, 45), new Point(110, 45)], drawn.Select(d => d.At));
        var symbol = Assert.Single(drawn.Select(d => d.Symbol).Distinct());
        var path = Assert.IsType<PathElement>(Assert.Single(symbol.Content));
        Assert.All(path.Steps, s => Assert.InRange(Math.Max(Math.Abs(s.To.X), Math.Abs(s.To.Y)), 0, symbol.HalfSizeMm));
    }

    private static Polygon Polygon(double pitchX, double pitchY, int column, int row)
    {
        var ring = MatTeeth.Ring(pitchX, pitchY);
        return new(new LinearRing([.. ring.Append(ring[0]).Select(p => new Coordinate(p.X + (column * pitchX), p.Y + (row * pitchY)))]));
    }
}
