using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Reference.Tests.Shapes;

/// <summary>Circular segments against published examples.</summary>
/// <remarks>
/// Sources: Machinery's Handbook, 31st ed. (Industrial Press, 2020), pages at each case; "Circular Sections", help text of
/// a published mathematics program (matheass.eu/en/help). Where the handbook rounds too far (p. 79: chord 59.86 for 59.8665;
/// p. 50: angle 67.13 for 67.1146 degrees, arc 14.06 for 14.0565), its figure is checked to a thousandth and the exact value closely.
/// </remarks>
public sealed class CircularSegmentHandbookTests
{
    [Theory]
    [InlineData(16, 6, 8.333333)] // p. 79: c = 16, h = 6, r = 8 1/3
    [InlineData(21, 6, 12.1875)] // Circular Sections
    [InlineData(59.866518, 8, 60)] // p. 79, the other way round
    [InlineData(13.266499, 2, 12)] // p. 50, the other way round
    public void Radius_from_chord_and_height(double chord, double height, double radius) =>
        Assert.Equal(radius, CircularSegment.Radius(chord, height), 1e-5);

    [Theory]
    [InlineData(60, 8, 59.86, 59.866518)] // p. 79
    [InlineData(12, 2, 13.27, 13.266499)] // p. 50
    public void Chord_from_radius_and_height(double radius, double height, double printed, double exact)
    {
        // The tool asks for chords from arc and height; the arc of radius and height is r times the angle, 2 acos(1 - h/r).
        var chord = CircularSegment.ChordFromArc(2 * radius * Math.Acos(1 - (height / radius)), height)!.Value;
        Assert.Equal(exact, chord, 1e-6);
        Assert.Equal(printed, chord, printed * 1e-3);
    }

    [Theory]
    [InlineData(13.266499, 2, 67.13, 67.114620, 14.06, 14.056453)] // p. 50
    [InlineData(21, 6, 118.97953, 118.97953, 25.308373, 25.308373)] // Circular Sections
    [InlineData(35, 4.689110868, 60, 60, 36.645, 36.651914)] // p. 78: r = 35, 60 degrees: chord 35, height 35 (1 - cos 30)
    public void Angle_and_arc_from_chord_and_height(double chord, double height, double printedAngle, double exactAngle, double printedArc, double exactArc)
    {
        var degrees = CircularSegment.Angle(chord, height) * 180 / Math.PI;
        Assert.Equal(exactAngle, degrees, 1e-4);
        Assert.Equal(printedAngle, degrees, printedAngle * 1e-3);
        Assert.Equal(exactArc, CircularSegment.Arc(chord, height), 1e-5);
        Assert.Equal(printedArc, CircularSegment.Arc(chord, height), printedArc * 1e-3);
        Assert.Equal(exactArc, new CircularArc(new(3, 4), new(3 + (0.6 * chord), 4 + (0.8 * chord)), height).Length, 1e-5);
        Assert.Equal(height, CircularSegment.BowFromArc(chord, exactArc)!.Value, 1e-4);
    }

    [Fact]
    public void Height_from_chord_and_arc_of_an_eighth_of_a_circle()
    {
        // Circular Sections: arc 1, angle 45 degrees: radius 1.2732395, chord 0.97449536, height 0.096919589.
        Assert.Equal(0.096919589, CircularSegment.BowFromArc(0.97449536, 1)!.Value, 1e-7);
        Assert.Equal(0.97449536, CircularSegment.ChordFromArc(1, 0.096919589)!.Value, 1e-7);
        Assert.Equal(1.2732395, CircularSegment.Radius(0.97449536, 0.096919589), 1e-6);
    }

    [Theory]
    [InlineData(13.266499, 2, 18.006222)] // p. 50, printed 18.01
    [InlineData(21, 6, 89.254148)] // Circular Sections
    public void Area_of_a_segment(double chord, double height, double area)
    {
        Point a = new(0, 0), b = new(chord, 0);
        var ring = new Outline([new("arc", new CircularArc(a, b, height)), new("chord", new StraightEdge(b, a))], [new("a"), new("b")]);
        Assert.Equal(area, ring.SignedArea(1e-6), 1e-4);
    }

    [Fact]
    public void A_regular_twelve_sided_figure()
    {
        // p. 78: radius 8: side 4.141, area 191.98; exactly 16 sin 15 degrees = 4.1411047 and 192.
        var corners = Enumerable.Range(0, 12).Select(i => Point.Origin + (8 * Vector.AtAngle(i * Math.PI / 6))).ToList();
        var line = new PolylineEdge([.. corners, corners[0]]);
        var ring = new Outline([new("all", line)], [new("start")]);
        Assert.Equal(12 * 4.1411047, line.Length, 1e-6);
        Assert.Equal(192, ring.SignedArea(), 1e-9);
        Assert.Equal(191.98, ring.SignedArea(), 0.192);
        Assert.InRange(line.At(1.0 / 3).DistanceTo(corners[4]), 0, 1e-9);
    }

    [Fact]
    public void The_diagonal_of_a_rectangle()
    {
        // p. 75: 12 by 5.875: diagonal 13.361.
        Assert.Equal(13.361, new StraightEdge(new(0, 0), new(12, 5.875)).Length, 5e-4);
    }
}
