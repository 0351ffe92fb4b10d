using BlockingTemplates.Engine.Pins;

namespace BlockingTemplates.Reference.Tests.Pins;

/// <summary>The closed form of the dip between pins.</summary>
/// <remarks>
/// Sum of Flamant's line loads (A. Flamant, Comptes Rendus 114, 1892) at even spacing s: dip from the load's edge (half-width
/// a) to the middle is (2 P / (pi E)) ln(1 / sin(pi a / s)); K. L. Johnson, Contact Mechanics (1985), ch. 2 and 13. The
/// factors ln(1 / sin(pi a / s)) were derived from that law and computed apart.
/// </remarks>
public sealed class ScallopEstimateTests
{
    [Theory]
    [InlineData(0.01, 3.4606)]
    [InlineData(0.02, 2.7680)]
    [InlineData(0.05, 1.8551)]
    [InlineData(0.10, 1.1744)]
    public void The_logarithm_of_the_closed_form(double halfWidthOverGap, double factor)
    {
        const double Gap = 50, Strain = 0.1;
        var stitch = halfWidthOverGap * Gap / ScallopEstimate.HalfWidthOverWidth;
        // P = E strain gap for every pin: dip = (2 strain gap / pi) factor.
        Assert.Equal(2 * Strain * Gap / Math.PI * factor, ScallopEstimate.MayDip(Strain, Gap, stitch), 2 * Strain * Gap / Math.PI * 5e-5);
    }

    [Fact]
    public void The_closed_form_is_the_slow_sum_of_line_loads()
    {
        // One load P gives the surface the dip (2 P / pi E) ln r; loads at 0, +-s, +-2s ...: half-way less beside the pin.
        const double Gap = 50, Strain = 0.2, Stitch = 6;
        var a = ScallopEstimate.HalfWidthOverWidth * Stitch;
        var sum = Math.Log(Gap / 2 / a);
        for (var k = 1; k <= 2_000_000; k++)
            sum += Math.Log(((k * Gap) + (Gap / 2)) / ((k * Gap) + a) * (((k * Gap) - (Gap / 2)) / ((k * Gap) - a)));
        Assert.Equal(2 * Strain * Gap / Math.PI * sum, ScallopEstimate.MayDip(Strain, Gap, Stitch), 1e-5);
    }

    [Fact]
    public void A_stitch_of_even_load_has_an_effective_half_width_of_0_223_of_its_width() =>
        Assert.Equal(0.2231, ScallopEstimate.HalfWidthOverWidth, 5e-5);

    [Fact]
    public void Without_strain_or_with_a_stitch_as_wide_as_its_gap_there_is_little_to_dip()
    {
        Assert.Equal(0, ScallopEstimate.MayDip(0, 50, 6));
        Assert.InRange(ScallopEstimate.MayDip(0.1, 50, 50), 0, 2 * 0.1 * 50 / Math.PI * 0.5);
    }
}
