using BlockingTemplates.Engine.Fabrics;
using CsCheck;

namespace BlockingTemplates.Engine.Tests.Fabrics;

public class TensionFieldTests
{
    private static readonly Gen<OrthotropicCloth> Cloths =
        Gen.Select(Gen.Double[0.1, 10], Gen.Double[0, 0.95], Gen.Double[0.05, 2], (ratio, poisson, shear) => new OrthotropicCloth(1, ratio, poisson / Math.Sqrt(ratio), shear * Math.Sqrt(ratio)));

    private static readonly Gen<PlaneTensor> Strains =
        Gen.Select(Gen.Double[-0.3, 0.4], Gen.Double[-0.3, 0.4], Gen.Double[-0.3, 0.3], (a, b, c) => new PlaneTensor(a, b, c));

    [Fact]
    public void The_stress_is_the_best_of_all_stresses_without_compression()
    {
        // Slow and obvious: W(E) = max over S >= 0 of S:E - S:M:S / 2 by a fine net over directions and both principal stresses.
        Gen.Select(Cloths, Strains).Sample(
            (cloth, strain) =>
            {
                var answer = new TensionField(cloth.Stiffness).At(strain);
                var compliance = cloth.Stiffness.Inverse();
                var best = 0.0;
                for (var k = 0; k < 720; k++)
                    best = Math.Max(best, BestAtAngle(Math.PI * k / 720, compliance, strain));
                Assert.True(best <= answer.Energy + 1e-12, $"{best} above {answer.Energy}");
                Assert.Equal(answer.Energy, best, (0.01 * answer.Energy) + 1e-7);
                Assert.Equal(answer.Energy, Value(answer.Stress, compliance, strain), 1e-12);
                Assert.True(answer.Stress.Trace >= 0 && answer.Stress.Determinant >= -1e-14);
            },
            iter: 400,
            seed: "0000000000001");
    }

    [Fact]
    public void No_stress_without_compression_does_better_near_the_answer_in_any_direction()
    {
        // Exact optimality (Karush, Kuhn and Tucker): with R = E - M S, no direction n has n.R.n above 0, and S:R = 0.
        Gen.Select(Cloths, Strains).Sample(
            (cloth, strain) =>
            {
                var s = new TensionField(cloth.Stiffness).At(strain).Stress;
                var (r1, r2, r3) = cloth.Stiffness.Inverse().Times(s.Along, s.Across, s.Shear);
                var rest = new PlaneTensor(strain.Along - r1, strain.Across - r2, strain.Shear - (r3 / 2));
                var greatest = (rest.Trace / 2) + Math.Sqrt(Math.Max(0, (rest.Trace * rest.Trace / 4) - rest.Determinant));
                Assert.True(greatest <= 1e-9, $"{greatest}");
                Assert.Equal(0, (s.Along * rest.Along) + (s.Across * rest.Across) + (2 * s.Shear * rest.Shear), 1e-10);
            },
            iter: 4000,
            seed: "0000000000002");
    }

    [Fact]
    public void Stress_and_tangent_are_the_derivatives_of_the_energy()
    {
        const double H = 1e-6;
        Gen.Select(Cloths, Strains).Sample(
            (cloth, strain) =>
            {
                var law = new TensionField(cloth.Stiffness);
                var at = law.At(strain);
                (double A, double B, double C)[] unit = [(1, 0, 0), (0, 1, 0), (0, 0, 0.5)];
                double[] stress = [at.Stress.Along, at.Stress.Across, at.Stress.Shear];
                double[][] tangent =
                [
                    [at.Tangent.C11, at.Tangent.C12, at.Tangent.C13],
                    [at.Tangent.C12, at.Tangent.C22, at.Tangent.C23],
                    [at.Tangent.C13, at.Tangent.C23, at.Tangent.C33],
                ];
                for (var i = 0; i < 3; i++)
                {
                    var (a, b, c) = unit[i];
                    var plus = law.At(new(strain.Along + (H * a), strain.Across + (H * b), strain.Shear + (H * c)));
                    var minus = law.At(new(strain.Along - (H * a), strain.Across - (H * b), strain.Shear - (H * c)));

                    // Where the state changes the stress has a corner, and the quotient is off by up to H times the stiffness.
                    var size = Math.Abs(strain.Along) + Math.Abs(strain.Across) + Math.Abs(strain.Shear);
                    var smooth = plus.State == minus.State && plus.State == at.State && size > 1e-3;
                    Assert.Equal(stress[i], (plus.Energy - minus.Energy) / (2 * H), smooth ? 1e-7 : H * cloth.Stiffness.C11 * (1 + cloth.EAcross));
                    if (!smooth)
                        continue;
                    double[] difference = [plus.Stress.Along - minus.Stress.Along, plus.Stress.Across - minus.Stress.Across, plus.Stress.Shear - minus.Stress.Shear];
                    for (var j = 0; j < 3; j++)
                        Assert.Equal(tangent[j][i], difference[j] / (2 * H), 1e-4 * (1 + Math.Abs(tangent[j][i])));
                }
            },
            iter: 2000,
            seed: "0000000000003");
    }

    [Fact]
    public void Knows_taut_wrinkled_and_slack_cloth()
    {
        var law = new TensionField(OrthotropicCloth.Isotropic(1, 0.3).Stiffness);
        Assert.Equal(ClothState.Taut, law.At(new(0.1, 0.1, 0)).State);
        Assert.Equal(ClothState.Taut, law.At(new(0.1, -0.0299, 0)).State);
        Assert.Equal(ClothState.Wrinkled, law.At(new(0.1, -0.0301, 0)).State);
        Assert.Equal(ClothState.Slack, law.At(new(-0.1, -0.01, 0)).State);
        Assert.Equal(ClothState.Taut, new TensionField(OrthotropicCloth.Isotropic(1, 0.3).Stiffness, carriesCompression: true).At(new(-0.1, -0.01, 0)).State);
    }

    [Fact]
    public void Wrinkled_cloth_pulls_as_a_strip_does()
    {
        // Isotropic tension field: S = E times the greatest strain along its direction (Reissner 1938, as in Pipkin 1986).
        var answer = new TensionField(OrthotropicCloth.Isotropic(2, 0.3).Stiffness).At(new(0.1, -0.2, 0));
        Assert.Equal(0.2, answer.Stress.Along, 1e-14);
        Assert.Equal(0, answer.Stress.Across, 1e-14);
        Assert.Equal(0.01, answer.Energy, 1e-14);
    }

    [Theory]
    [InlineData(0, 1, 0, 1)]
    [InlineData(1, 0, 0, 1)]
    [InlineData(1, 1, 1, 1)]
    [InlineData(1, 1, 0.3, 0)]
    [InlineData(1, 4, 0.5, 1)]
    [InlineData(double.NaN, 1, 0.3, 1)]
    public void Refuses_constants_no_cloth_can_have(double along, double across, double poisson, double shear)
    {
        Assert.NotNull(OrthotropicCloth.Objection(along, across, poisson, shear));
        Assert.Throws<ArgumentException>(() => new OrthotropicCloth(along, across, poisson, shear));
    }

    [Fact]
    public void Stiffness_and_constants_say_the_same()
    {
        Cloths.Sample(
            cloth =>
            {
                var m = cloth.Stiffness.Inverse();
                Assert.Equal(1 / cloth.EAlong, m.C11, 1e-9 * m.C11);
                Assert.Equal(1 / cloth.EAcross, m.C22, 1e-9 * m.C22);
                Assert.Equal(-cloth.Poisson / cloth.EAlong, m.C12, 1e-9 * m.C11);
                var c = cloth.Stiffness;
                var again = OrthotropicCloth.FromStiffness(c.C11, c.C12, c.C22, c.C33);
                Assert.Equal(cloth.EAlong, again.EAlong, 1e-9);
                Assert.Equal(cloth.Poisson, again.Poisson, 1e-9);
            },
            iter: 500,
            seed: "0000000000004");
    }

    private static double BestAtAngle(double angle, PlaneStiffness m, PlaneTensor strain)
    {
        var (s, c) = Math.SinCos(angle);
        (double A, double B, double C) n = (c * c, s * s, s * c), t = (s * s, c * c, -s * c);
        var (en, et) = (Pair(n, strain), Pair(t, strain));
        var (mn, mt) = (m.Times(n.A, n.B, n.C), m.Times(t.A, t.B, t.C));
        var (nn, nt, tt) = (Dot(n, mn), Dot(n, mt), Dot(t, mt));
        var best = Math.Max(Math.Max(0, en) * en / (2 * nn), Math.Max(0, et) * et / (2 * tt));
        var d = (nn * tt) - (nt * nt);
        var (p, q) = (((en * tt) - (et * nt)) / d, ((et * nn) - (en * nt)) / d);
        return p >= 0 && q >= 0 ? Math.Max(best, ((p * en) + (q * et)) / 2) : best;

        static double Pair((double A, double B, double C) a, PlaneTensor e) => (a.A * e.Along) + (a.B * e.Across) + (2 * a.C * e.Shear);
        static double Dot((double A, double B, double C) a, (double A, double B, double C) b) => (a.A * b.A) + (a.B * b.B) + (a.C * b.C);
    }

    private static double Value(PlaneTensor s, PlaneStiffness m, PlaneTensor e)
    {
        var (a, b, c) = m.Times(s.Along, s.Across, s.Shear);
        return (s.Along * e.Along) + (s.Across * e.Across) + (2 * s.Shear * e.Shear) - (((s.Along * a) + (s.Across * b) + (s.Shear * c)) / 2);
    }
}
