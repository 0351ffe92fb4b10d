using BlockingTemplates.Engine.Pins.Wires;
using CsCheck;
using MathNet.Numerics.LinearAlgebra;

namespace BlockingTemplates.Engine.Tests.Pins.Wires;

public class ContinuousBeamTests
{
    // Slow and obvious: cubic beam elements with the element matrices written out, loads as equivalent nodal forces, a dense solve.
    [Fact]
    public void Agrees_with_beam_elements_on_any_spans() =>
        Gen.Select(Gen.Double[20, 400].Array[1, 7], Gen.Double[0.001, 0.2], Gen.Double[1e3, 1e6]).Sample(
            (spans, load, stiffness) =>
            {
                var beam = new ContinuousBeam(stiffness, spans, load);
                var (at, sag) = Elements(stiffness, spans, load, 8);
                var most = sag.Max(Math.Abs);
                for (var i = 0; i < at.Count; i++)
                    Assert.Equal(sag[i], beam.SagAt(at[i].Span, at[i].Along), 1e-7 * most);
            },
            iter: 200);

    [Fact]
    public void A_wire_bent_over_an_arc_lies_on_the_arc_but_for_its_ends()
    {
        // Marks every s on a circle of radius R: the natural cubic spline, whose end spans cut in by 0.0491 s^2 / R
        // (moments fall from the end by 2 - sqrt 3 a span; worked out by hand).
        const double s = 50, r = 1000;
        var spans = Enumerable.Repeat(s, 30).ToArray();
        var beam = new ContinuousBeam(5e4, spans, 0, [.. Enumerable.Repeat(s / r, 29)]);
        double Bulge(double x) => x * (s - x) / 2 / r;
        Assert.Equal(0, beam.SagAt(15, s / 2) + Bulge(s / 2), 1e-6);
        Assert.Equal(5e4 / r, beam.SupportMoments[15], 1e-3);
        Assert.Equal(0.0491 * s * s / r, Enumerable.Range(1, 99).Max(k => beam.SagAt(0, s * k / 100) + Bulge(s * k / 100)), 2e-4 * s * s / r);
    }

    [Fact]
    public void Refuses_what_is_no_beam()
    {
        Assert.Throws<ArgumentException>(() => new ContinuousBeam(0, [100], 1));
        Assert.Throws<ArgumentException>(() => new ContinuousBeam(1, [100, 0], 1));
        Assert.Throws<ArgumentException>(() => new ContinuousBeam(1, [], 1));
        Assert.Throws<ArgumentException>(() => new ContinuousBeam(1, [100, 100], 1, [0, 0]));
    }

    private static (List<(int Span, double Along)> At, List<double> Sag) Elements(double stiffness, double[] spans, double load, int parts)
    {
        var nodes = (spans.Length * parts) + 1;
        var k = Matrix<double>.Build.Dense(2 * nodes, 2 * nodes);
        var f = Vector<double>.Build.Dense(2 * nodes);
        for (var e = 0; e < nodes - 1; e++)
        {
            var l = spans[e / parts] / parts;
            double[,] element = { { 12, 6 * l, -12, 6 * l }, { 6 * l, 4 * l * l, -6 * l, 2 * l * l }, { -12, -6 * l, 12, -6 * l }, { 6 * l, 2 * l * l, -6 * l, 4 * l * l } };
            double[] forces = [load * l / 2, load * l * l / 12, load * l / 2, -load * l * l / 12];
            for (var i = 0; i < 4; i++)
            {
                f[(2 * e) + i] += forces[i];
                for (var j = 0; j < 4; j++)
                    k[(2 * e) + i, (2 * e) + j] += stiffness / (l * l * l) * element[i, j];
            }
        }

        for (var node = 0; node < nodes; node += parts)
        {
            k.ClearRow(2 * node);
            k.ClearColumn(2 * node);
            k[2 * node, 2 * node] = 1;
            f[2 * node] = 0;
        }

        var u = k.Solve(f);
        List<(int, double)> at = [];
        List<double> sag = [];
        for (var node = 0; node < nodes - 1; node++)
        {
            at.Add((node / parts, node % parts * spans[node / parts] / parts));
            sag.Add(u[2 * node]);
        }

        return (at, sag);
    }
}
