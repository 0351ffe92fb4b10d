using BlockingTemplates.Engine.Shapes;
using CsCheck;

namespace BlockingTemplates.Engine.Tests.Shapes;

public sealed class CircularSegmentTests
{
    private static readonly Gen<(double Chord, double Bow)> Segment =
        Gen.Select(Gen.Double[1, 3000], Gen.Double[-7, 0], (chord, power) => (chord, chord / 2 * Math.Pow(10, power)));

    [Fact]
    public void The_bow_comes_back_from_chord_and_arc() => Segment.Check(2000, s =>
    {
        var found = CircularSegment.BowFromArc(s.Chord, CircularSegment.Arc(s.Chord, s.Bow));
        Assert.NotNull(found);
        // The arc holds only the square of a flat bow: what is lost is under a thousandth of a millimetre.
        Assert.Equal(s.Bow, found.Value, 1e-3);
        Assert.Equal(CircularSegment.Arc(s.Chord, s.Bow), CircularSegment.Arc(s.Chord, found.Value), 1e-8);
    });

    [Fact]
    public void The_chord_comes_back_from_arc_and_bow() => Segment.Check(2000, s =>
    {
        var found = CircularSegment.ChordFromArc(CircularSegment.Arc(s.Chord, s.Bow), s.Bow);
        Assert.NotNull(found);
        Assert.Equal(s.Chord, found.Value, 1e-7);
    });

    [Fact]
    public void The_half_circle_is_the_last_that_is_found()
    {
        Assert.Equal(50, CircularSegment.BowFromArc(100, 50 * Math.PI)!.Value, 1e-6);
        Assert.Equal(100, CircularSegment.ChordFromArc(50 * Math.PI, 50)!.Value, 1e-6);
        Assert.Null(CircularSegment.BowFromArc(100, 158));
        Assert.Null(CircularSegment.ChordFromArc(100, 32));
        Assert.Null(CircularSegment.BowFromArc(100, 99.999));
        Assert.Equal(0, CircularSegment.BowFromArc(100, 100));
        Assert.Equal(100, CircularSegment.ChordFromArc(100, 0));
    }
}
