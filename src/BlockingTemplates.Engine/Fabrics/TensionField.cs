namespace BlockingTemplates.Engine.Fabrics;

/// <summary>Cloth that is linear in Green-Lagrange strain and carries no compression.</summary>
/// <remarks>
/// Relaxed energy W(E) = max over S >= 0 of S:E - S:M:S / 2 with the compliance M (A. C. Pipkin, The relaxed energy density
/// for isotropic elastic membranes, IMA J. Appl. Math. 36 (1986) 85-99; H. Le Dret and A. Raoult, J. Math. Pures Appl. 74
/// (1995) 549-578). It is convex in the deformation, so that an equilibrium has least energy. Taut: S = C E has no
/// compression. Slack: E has no extension. Else wrinkled: S = (e / c) N for the direction of greatest e^2 / 2c, where
/// e is the strain and c the compliance along it.
/// </remarks>
public sealed class TensionField
{
    private const int Samples = 24;
    private const int MostSteps = 30;
    private static readonly (double Sin, double Cos)[] Directions =
        [.. Enumerable.Range(0, Samples).Select(k => Math.SinCos(Math.PI * k / Samples))];

    private readonly PlaneStiffness _stiffness;
    private readonly PlaneStiffness _compliance;
    private readonly bool _carriesCompression;
    private readonly double[] _sampleCompliance;

    /// <summary>The law of a cloth.</summary>
    /// <param name="stiffness">Its stiffness, positive definite.</param>
    /// <param name="carriesCompression">True for the plain linear law without wrinkles, to compare with elastic sheets.</param>
    public TensionField(PlaneStiffness stiffness, bool carriesCompression = false)
    {
        if (!(stiffness.C11 > 0) || !((stiffness.C11 * stiffness.C22) - (stiffness.C12 * stiffness.C12) > 0) || !(stiffness.Determinant > 0))
            throw new ArgumentException("The stiffness must be positive definite.", nameof(stiffness));
        _stiffness = stiffness;
        _compliance = stiffness.Inverse();
        _carriesCompression = carriesCompression;
        _sampleCompliance = [.. Directions.Select(d => Along(d.Sin, d.Cos, default).C)];
    }

    /// <summary>The answer to a strain.</summary>
    public MembraneResponse At(PlaneTensor strain)
    {
        var (s1, s2, s3) = _stiffness.Times(strain.Along, strain.Across, 2 * strain.Shear);
        var stress = new PlaneTensor(s1, s2, s3);
        if (_carriesCompression || (stress.Trace >= 0 && stress.Determinant >= 0))
            return new(ClothState.Taut, ((s1 * strain.Along) + (s2 * strain.Across) + (2 * s3 * strain.Shear)) / 2, stress, _stiffness);
        if (strain.Trace <= 0 && strain.Determinant >= 0)
            return new(ClothState.Slack, 0, default, default);
        return Wrinkled(strain);
    }

    private MembraneResponse Wrinkled(PlaneTensor strain)
    {
        var best = -1;
        var most = 0.0;
        for (var k = 0; k < Samples; k++)
        {
            var (s, c) = Directions[k];
            var e = (c * c * strain.Along) + (s * s * strain.Across) + (2 * s * c * strain.Shear);
            if (e > 0 && e * e / _sampleCompliance[k] > most)
                (best, most) = (k, e * e / _sampleCompliance[k]);
        }

        const double Step = Math.PI / Samples;
        var angle = best >= 0 ? best * Step : Math.Atan2(2 * strain.Shear, strain.Along - strain.Across) / 2;
        var (low, high) = (angle - Step, angle + Step);
        for (var n = 0; n < MostSteps; n++)
        {
            var (sin, cos) = Math.SinCos(angle);
            var a = Along(sin, cos, strain);
            if (a.Rise > 0)
                low = angle;
            else
                high = angle;
            var next = a.Bend < 0 ? angle - (a.Rise / a.Bend) : double.NaN;
            if (!(next >= low && next <= high))
                next = (low + high) / 2;
            var moved = Math.Abs(next - angle);
            angle = next;
            if (moved < 1e-14)
                break;
        }

        return Wrinkled(strain, angle);
    }

    private MembraneResponse Wrinkled(PlaneTensor strain, double angle)
    {
        var (sin, cos) = Math.SinCos(angle);
        var a = Along(sin, cos, strain);
        var pull = a.E / a.C;
        if (!(pull > 0))
            return new(ClothState.Slack, 0, default, default);
        var (n1, n2, n3) = (cos * cos, sin * sin, sin * cos);
        var stress = new PlaneTensor(pull * n1, pull * n2, pull * n3);
        var slope = ((a.DE * a.C) - (a.E * a.DC)) / (a.C * a.C);
        var (g1, g2, g3) = ((slope * n1) - (pull * 2 * n3), (slope * n2) + (pull * 2 * n3), (slope * n3) + (pull * (n1 - n2)));
        var turn = a.Curvature < 0 ? -1 / a.Curvature : 0;
        return new(
            ClothState.Wrinkled,
            a.E * pull / 2,
            stress,
            new(
                (n1 * n1 / a.C) + (turn * g1 * g1),
                (n1 * n2 / a.C) + (turn * g1 * g2),
                (n2 * n2 / a.C) + (turn * g2 * g2),
                (n1 * n3 / a.C) + (turn * g1 * g3),
                (n2 * n3 / a.C) + (turn * g2 * g3),
                (n3 * n3 / a.C) + (turn * g3 * g3)));
    }

    /// <summary>
    /// Strain e and compliance c along a direction, their changes with its angle, the second derivative of e^2 / 2c, and
    /// rise = sqrt(c) d(e / sqrt(c)), which has the same zero but keeps its sense where e is negative, with its derivative.
    /// </summary>
    private (double E, double C, double DE, double DC, double Curvature, double Rise, double Bend) Along(double sin, double cos, PlaneTensor strain)
    {
        var (n1, n2, n3) = (cos * cos, sin * sin, sin * cos);
        var (d1, d2, d3) = (-2 * n3, 2 * n3, n1 - n2);
        var (q1, q2, q3) = (2 * (n2 - n1), 2 * (n1 - n2), -4 * n3);
        var (m1, m2, m3) = _compliance.Times(n1, n2, n3);
        var (k1, k2, k3) = _compliance.Times(d1, d2, d3);
        var shear = 2 * strain.Shear;
        var e = (n1 * strain.Along) + (n2 * strain.Across) + (n3 * shear);
        var de = (d1 * strain.Along) + (d2 * strain.Across) + (d3 * shear);
        var dde = (q1 * strain.Along) + (q2 * strain.Across) + (q3 * shear);
        var c = (n1 * m1) + (n2 * m2) + (n3 * m3);
        var dc = 2 * ((d1 * m1) + (d2 * m2) + (d3 * m3));
        var ddc = 2 * ((q1 * m1) + (q2 * m2) + (q3 * m3) + (d1 * k1) + (d2 * k2) + (d3 * k3));
        var rise = de - (e * dc / (2 * c));
        var bend = dde - (de * dc / (2 * c)) - (e * ddc / (2 * c)) + (e * dc * dc / (2 * c * c));
        var curvature = (((de * de) + (e * dde)) / c) - (2 * e * de * dc / (c * c)) - (e * e * ddc / (2 * c * c)) + (e * e * dc * dc / (c * c * c));
        return (e, c, de, dc, curvature, rise, bend);
    }
}
