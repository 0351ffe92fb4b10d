using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Reference.Tests.Shapes;

/// <summary>Edges sampled from a parabola against published lengths and the closed form.</summary>
/// <remarks>
/// Sources: Machinery's Handbook, 31st ed. (2020), p. 80 (its worked length is a misprint, see below); the cable series
/// L/l = 1 + 8/3 n^2 - 32/5 n^4 + 256/7 n^6 of textbooks on structural analysis (Karnovsky and Lebed, Advanced Methods of
/// Structural Analysis, Springer 2010, ch. 5, as far as remembered); Archimedes, Quadrature of the Parabola.
/// </remarks>
public sealed class ParabolaTests
{
    [Fact]
    public void The_handbooks_half_parabola_is_24_11_long_not_24_04()
    {
        // p. 80: x = 2, y = 24: 24 x 1.0046 is printed as 24.04; the product is 24.11, the exact length 24.110653.
        Assert.Equal(24.110653, Length(48, 2) / 2, 1e-6);
        Assert.Equal(24.110653, Spline(48, 2, 200).Length / 2, 1e-4);
        Assert.Equal(24 * 1.0046, Spline(48, 2, 200).Length / 2, 1e-3);
        Assert.True(Math.Abs((Spline(48, 2, 200).Length / 2) - 24.04) > 0.05);
    }

    [Theory]
    [InlineData(0.02, 1.0010656)]
    [InlineData(0.05, 1.0066272)]
    [InlineData(0.10, 1.0260606)]
    [InlineData(0.20, 1.0982301)]
    public void Length_over_span_by_sag_over_span(double sag, double ratio)
    {
        Assert.Equal(ratio, Length(1000, 1000 * sag) / 1000, 1e-7);
        Assert.Equal(ratio, Spline(1000, 1000 * sag, 400).Length / 1000, 2e-6);
        Assert.Equal(ratio, Polyline(1000, 1000 * sag, 2000).Length / 1000, 1e-6);
        if (sag > 0.1)
            return;
        var n = sag;
        var series = 1 + (8.0 / 3 * n * n) - (32.0 / 5 * Math.Pow(n, 4)) + (256.0 / 7 * Math.Pow(n, 6));
        Assert.Equal(series, Spline(1000, 1000 * sag, 400).Length / 1000, 5e-6);
    }

    [Fact]
    public void The_area_of_a_segment_is_two_thirds_of_chord_times_height()
    {
        // Machinery's Handbook p. 80: chord 19.5, height 2.25: 29.25.
        var ring = new Outline(
            [new("curve", Spline(19.5, 2.25, 300)), new("chord", new StraightEdge(new(19.5, 0), new(0, 0)))], [new("a"), new("b")]);
        Assert.Equal(29.25, ring.SignedArea(1e-6), 1e-3);
    }

    [Fact]
    public void Points_along_a_parabola_stand_at_their_arc_lengths()
    {
        var edge = Spline(1000, 150, 400);
        for (var f = 0.05; f < 1; f += 0.05)
        {
            var at = edge.At(f);
            // Arc from the middle to x, both ways: the closed form of half a parabola of that half-span.
            var half = Math.Abs(at.X - 500);
            var fromMiddle = Length(2 * half, 150 * Math.Pow(half / 500, 2)) / 2;
            Assert.Equal(Math.Abs(f - 0.5) * Length(1000, 150), fromMiddle, 5e-3);
        }
    }

    /// <summary>Closed form: with s = 4 sag / span, half the length is (span/4) (sqrt(1 + s^2) + asinh(s) / s).</summary>
    private static double Length(double span, double sag)
    {
        var s = 4 * sag / span;
        return span / 2 * (Math.Sqrt(1 + (s * s)) + (Math.Asinh(s) / s));
    }

    private static SplineEdge Spline(double span, double sag, int parts) =>
        new(new(0, 0), new(span, 0), [.. Enumerable.Range(1, parts - 1).Select(i => (span * i / parts, Out(sag, (double)i / parts)))]);

    private static PolylineEdge Polyline(double span, double sag, int parts) =>
        new([.. Enumerable.Range(0, parts + 1).Select(i => new Point(span * i / parts, -Out(sag, (double)i / parts)))]);

    private static double Out(double sag, double t) => 4 * sag * t * (1 - t);
}
