using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Reference.Tests.Shapes;

/// <summary>Quarters of ellipses against the complete elliptic integral of the second kind.</summary>
/// <remarks>
/// E by the arithmetic-geometric mean: Abramowitz and Stegun, Handbook of Mathematical Functions (1964), 17.6. Values of
/// E(m) from the same book, table 17.1, as far as remembered: E(0.5) = 1.3506438810; E(0.75) = 1.2110560276.
/// </remarks>
public sealed class EllipseTests
{
    [Theory]
    [InlineData(0.5, 1.3506438810)]
    [InlineData(0.75, 1.2110560276)]
    [InlineData(0, Math.PI / 2)]
    public void The_mean_gives_the_tabled_integral(double m, double e) => Assert.Equal(e, CompleteIntegral(m), 1e-9);

    [Theory]
    [InlineData(1, 1.03)]
    [InlineData(1, 0.5)]
    [InlineData(2, 1)]
    [InlineData(1, 0.1)]
    [InlineData(1.05, 1.02)]
    public void A_quarter_is_as_long_as_the_integral_says(double along, double across)
    {
        const double R = 300;
        var quarter = new CircularArc(new(R, 0), new(0, R), R * (1 - Math.Sqrt(0.5)));
        foreach (var grain in new[] { 0, Math.PI / 2 })
        {
            var mapped = quarter.Mapped(Affine.Stretch(Point.Origin, grain, along, across));
            double a = R * Math.Max(along, across), b = R * Math.Min(along, across);
            Assert.Equal(a * CompleteIntegral(1 - (b * b / (a * a))), mapped.Length, 1e-8);
            Assert.Equal(mapped.Length, mapped.Reversed().Length, 1e-9);
        }
    }

    [Fact]
    public void Half_an_ellipse_is_halved_at_its_vertex()
    {
        var half = new CircularArc(new(200, 0), new(-200, 0), 200).Mapped(Affine.Stretch(Point.Origin, 0, 1.3, 0.8));
        Assert.InRange(half.At(0.5).DistanceTo(new(0, 160)), 0, 1e-9);
    }

    private static double CompleteIntegral(double m)
    {
        double a = 1, g = Math.Sqrt(1 - m), c = Math.Sqrt(m), sum = m / 2, power = 0.5;
        while (c > 1e-15)
        {
            (a, g, c) = ((a + g) / 2, Math.Sqrt(a * g), (a - g) / 2);
            power *= 2;
            sum += power * c * c;
        }

        return Math.PI / (2 * a) * (1 - sum);
    }
}
