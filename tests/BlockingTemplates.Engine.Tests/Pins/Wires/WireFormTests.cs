using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Pins.Wires;

namespace BlockingTemplates.Engine.Tests.Pins.Wires;

public class WireFormTests
{
    // Second moment of a round section, pi d^4 / 64: 0.2485 mm^4 for 1.5 mm (Machinery's Handbook, moments of inertia; recomputed).
    [Fact]
    public void Bending_stiffness_goes_with_the_fourth_power_of_the_diameter()
    {
        var thin = Form(WireKind.Stiff, 1.5).BendingStiffness;
        Assert.Equal(193_000 * 0.248505, thin, 1.0);
        Assert.Equal(16 * thin, Form(WireKind.Flexible, 3).BendingStiffness, 1e-6);
    }

    // The outermost fibre of a rod of diameter d bent to a radius R is strained by d / 2R; at the tightest radius its stress is the yield stress.
    [Theory]
    [InlineData(WireKind.Stiff, 1.5, 706)]
    [InlineData(WireKind.Flexible, 1.0, 79.5)]
    [InlineData(WireKind.Flexible, 1.5, 126.6)]
    public void The_tightest_radius_is_where_the_outer_fibre_yields(WireKind kind, double diameter, double radius)
    {
        Assert.Equal(radius, Form(kind, diameter).TightestRadiusMm, 0.5);
        Assert.True(Form(kind, 2 * diameter).TightestRadiusMm > 2 * radius * 0.99);
    }

    // Stainless spring wire thicker than 2.5 mm has rows of its own (Shigley, table 10-4: 2065 / d^0.263 up to 5 mm, 2911 / d^0.478 up to 10 mm).
    [Theory]
    [InlineData(4, 193_000 * 4 / (2 * 0.65 * 1434.1))]
    [InlineData(6, 193_000 * 6 / (2 * 0.65 * 1236.2))]
    public void Thick_spring_wire_yields_by_the_rows_of_its_own_diameters(double diameter, double radius) =>
        Assert.Equal(radius, Form(WireKind.Flexible, diameter).TightestRadiusMm, 0.1);

    private static WireForm Form(WireKind kind, double mm) => new(kind, Length.FromMillimetres(mm));
}
