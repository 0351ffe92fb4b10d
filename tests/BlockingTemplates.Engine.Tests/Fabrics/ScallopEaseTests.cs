using BlockingTemplates.Engine.Fabrics;

namespace BlockingTemplates.Engine.Tests.Fabrics;

public class ScallopEaseTests
{
    [Theory]
    [InlineData(0)]
    [InlineData(0.3)]
    [InlineData(0.5)]
    public void Cloth_alike_in_all_directions_has_the_line_loads_2_over_E_times_its_even_pull(double poisson)
    {
        // Flamant 1892: sag (2 / E) sigma / pi ...; an even stretch e pulls sigma = E e / (1 - nu).
        var cloth = OrthotropicCloth.Isotropic(7, poisson);
        for (var k = 0; k < 12; k++)
            Assert.Equal(2 / (1 - poisson), ScallopEase.Of(cloth, k * Math.PI / 12), 1e-6);
        Assert.Equal(2 / (1 - poisson), ScallopEase.Of(cloth), 1e-6);
    }

    [Theory]
    [InlineData(2.5, 0.4, 0.25)]
    [InlineData(0.4, 0.2, 1.5)]
    public void Along_the_rows_and_across_it_is_the_closed_form_of_orthotropic_half_planes(double ratio, double poisson, double shear)
    {
        // A = sqrt(a22 (2 a12 + a66 + 2 sqrt(a11 a22))) with 1 along the edge (as for isotropic: 2 / E).
        var cloth = new OrthotropicCloth(ratio, 1, poisson, shear);
        double Closed(double a11, double a22, double pull) =>
            Math.Sqrt(a22 * ((-2 * poisson / ratio) + (1 / shear) + (2 * Math.Sqrt(a11 * a22)))) * pull;
        Assert.Equal(Closed(1 / ratio, 1, cloth.Stiffness.C22 + cloth.Stiffness.C12), ScallopEase.Of(cloth, 0), 1e-9);
        Assert.Equal(Closed(1, 1 / ratio, cloth.Stiffness.C11 + cloth.Stiffness.C12), ScallopEase.Of(cloth, Math.PI / 2), 1e-9);
    }

    [Fact]
    public void It_is_free_of_the_unit_and_of_which_way_is_called_along()
    {
        var cloth = new OrthotropicCloth(3, 1.2, 0.5, 0.4);
        var ease = ScallopEase.Of(cloth);
        Assert.Equal(ease, ScallopEase.Of(new(3000, 1200, 0.5, 400)), 1e-9);
        Assert.Equal(ease, ScallopEase.Of(new(1.2, 3, 0.5 * 1.2 / 3, 0.4)), 1e-9);
    }

    [Fact]
    public void More_narrowing_and_less_shear_stiffness_sag_more()
    {
        Assert.True(ScallopEase.Of(new(1, 1, 0.5, 0.3)) > 1.5 * ScallopEase.Of(new(1, 1, 0, 0.3)));
        Assert.True(ScallopEase.Of(new(1, 1, 0.3, 0.1)) > 1.7 * ScallopEase.Of(new(1, 1, 0.3, 0.8)));
    }
}
