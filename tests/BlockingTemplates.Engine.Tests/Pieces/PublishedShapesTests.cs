using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Tests.Pieces;

// Machinery's Handbook, 31st ed. (Industrial Press, 2020), pages given. The handbook rounds; each value is its own, with
// the digits it prints (0.1 %), and the exact one beside it.
public class PublishedShapesTests
{
    private static Outline Finished(string shape, params (string Name, double Millimetres)[] sizes) =>
        PieceKinds.Find(shape)!.Finished(RandomPieces.Finished(sizes.ToDictionary(s => s.Name, s => s.Millimetres)), new())!;

    private static void Near(double printed, double exact, double found)
    {
        Assert.InRange(found, printed * 0.999, printed * 1.001);
        Assert.InRange(found, exact - (1e-5 * exact), exact + (1e-5 * exact));
    }

    // P. 78: regular polygon of 12 sides in a circle of radius 8: side 4.141, area 191.98 (exact 192).
    [Fact]
    public void The_dodecagon_of_the_handbook()
    {
        var polygon = Finished("dodecagon", ("side", 4.1411047));
        Near(191.98, 192, polygon.SignedArea());
        for (var i = 0; i < 12; i++)
            Assert.Equal(8, polygon.CornerAt(i).DistanceTo(new(0, 8 * Math.Cos(Math.PI / 12))), 6);
    }

    // P. 50: radius 12, height 2: chord 13.27, arc 14.06, area 18.01 (exact 13.266499, 14.056453, 18.006222). A crescent with a straight top edge.
    [Fact]
    public void The_segment_of_the_handbook_is_a_crescent_with_a_straight_top_edge()
    {
        var segment = Finished("crescent", ("wingspan", 132.66499), ("depth", 20), ("rise", 0));
        Near(140.6, 140.56453, segment.Edges[0].Curve.Length);
        Near(1801, 1800.6222, segment.SignedArea(0.0001));
    }

    // Circular Sections, matheass.eu help text: chord 21, height 6: arc 25.308373, segment area 89.254148.
    [Fact]
    public void The_segment_of_the_help_text()
    {
        var segment = Finished("crescent", ("wingspan", 210), ("depth", 60), ("rise", 0));
        Assert.Equal(253.08373, segment.Edges[0].Curve.Length, 4);
        Assert.InRange(segment.SignedArea(0.0001), 8925.39, 8925.43);
    }

    // P. 78: sector of radius 35 and 60 degrees: arc 36.645 printed (exact 36.651914), area 641.41 (exact 641.4085). A collar is a
    // larger sector less a smaller one: here of radii 35 and 7 (arc 7 pi / 3, area 49 pi / 6).
    [Fact]
    public void The_sector_of_the_handbook_less_a_small_one_is_a_collar()
    {
        double smallArc = 70 * Math.PI / 3, smallArea = 4900 * Math.PI / 6;
        var collar = Finished("collar", ("innerEdge", smallArc), ("outerEdge", 366.51914), ("depth", 280));
        Near(64141 - smallArea, 64140.85 - smallArea, collar.SignedArea(0.0001));
        // 60 degrees between the ends, and the chord of radius 35 over 60 degrees is 35.
        Assert.Equal(350, collar.CornerAt(0).DistanceTo(collar.CornerAt(1)), 3);
        Assert.InRange(Math.Acos(collar.Edges[1].Curve.Direction(0).Dot(collar.Edges[3].Curve.Reversed().Direction(0))) * 180 / Math.PI, 59.999, 60.001);
    }

    // P. 79: circular ring of diameters 12 and 8: area 62.83. Three quarters of it are a collar past the half circle.
    [Fact]
    public void Three_quarters_of_the_ring_of_the_handbook_are_a_collar()
    {
        var collar = Finished("collar", ("innerEdge", 60 * Math.PI), ("outerEdge", 90 * Math.PI), ("depth", 20));
        Near(0.75 * 6283, 0.75 * 6283.185, collar.SignedArea(0.0001));
    }

    // P. 75: rectangle 12 x 5.875: diagonal 13.361 (exact 13.36098).
    [Fact]
    public void The_diagonal_of_the_handbooks_rectangle()
    {
        var rectangle = Finished("rectangle", ("width", 120), ("length", 58.75));
        Near(133.61, 133.6098, rectangle.CornerAt(0).DistanceTo(rectangle.CornerAt(2)));
    }
}
