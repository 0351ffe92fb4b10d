using BlockingTemplates.Engine.Fabrics;
using BlockingTemplates.Engine.Measure;
using CsCheck;

namespace BlockingTemplates.Engine.Tests.Fabrics;

public class ClothMaterialsTests
{
    private static readonly Gen<ClothRatios> AnyRatios =
        from ratio in Gen.Double[-1.5, 1.5]
        from narrowing in Gen.Double[-0.2, 0.8]
        from shear in Gen.Double[0.05, 0.8]
        select new ClothRatios(Math.Exp(ratio), narrowing, shear);

    public static TheoryData<FabricKind?> EveryKind() => [null, .. Enum.GetValues<FabricKind>().Select(k => (FabricKind?)k)];

    [Theory]
    [MemberData(nameof(EveryKind))]
    public void Every_kind_has_a_line_whose_ranges_a_cloth_can_have(FabricKind? kind)
    {
        var line = Assert.Single(ClothCatalogue.All, c => c.Kind == kind);
        Assert.All((Spread[])[line.AlongOverAcross, line.Narrowing, line.ShearShare], s => Assert.True(s.IsInOrder && s.Least > 0));
        Assert.True(line.Narrowing.Most < 1);
        var material = ClothMaterials.Of(FabricSettings.Unsaid with { Kind = kind, GrainDegrees = 30 });
        Assert.Equal(line.AlongOverAcross.Likely, material.Likely.EAlong / material.Likely.EAcross, 1e-12);
        Assert.Equal(1, material.Likely.EAlong * material.Likely.EAcross, 1e-12);
        Assert.All((OrthotropicCloth[])[material.Likely, material.Soft, material.Stiff], c => Assert.Equal(30, c.GrainDegrees));
        Assert.Null(material.NewtonsPerMetre);
        Assert.Null(material.Took);
        Assert.Equal(line.IsMeasured ? MaterialSource.MeasuredByKind : MaterialSource.AssumedByKind, material.Source);
        Assert.Contains(line.IsMeasured ? "published measurements" : "assumption", material.Told, StringComparison.Ordinal);
        Assert.Contains(line.Source, material.Told, StringComparison.Ordinal);
        if (!line.IsMeasured)
            Assert.True(line.AlongOverAcross.Most >= 5 * line.AlongOverAcross.Least && line.ShearShare.Most >= 5 * line.ShearShare.Least, "An assumption has a wide range.");
    }

    // The second way: the equilibrium itself decides which end sags more.
    [Theory]
    [MemberData(nameof(EveryKind))]
    public void The_soft_end_sags_most_between_pins_and_the_stiff_end_least(FabricKind? kind)
    {
        var material = ClothMaterials.Of(FabricSettings.Unsaid with { Kind = kind });
        var piece = PinnedPiece.Of(Outlines.Rectangle(500, 400), Outlines.Rectangle(575, 460), 80, 20, 50);
        double Sag(OrthotropicCloth cloth)
        {
            var rest = piece.Solve(cloth);
            Assert.True(rest.Converged);
            return new FreeEdge(piece.Mesh, piece.Pinned).Gaps(piece.Support, rest).Average(g => g.ScallopMm);
        }

        var (soft, likely, stiff) = (Sag(material.Soft), Sag(material.Likely), Sag(material.Stiff));
        Assert.True(soft > 1.1 * likely && likely > 1.1 * stiff, $"{soft} {likely} {stiff}");
    }

    [Fact]
    public void Strips_of_a_cloth_give_it_back_at_any_stretch() =>
        Gen.Select(AnyRatios, Gen.Double[5, 300], Gen.Double[0.03, 0.3]).Check(200, t =>
        {
            var (ratios, newtons, stretch) = t;
            var strips = StripsOf(ratios, newtons, newtons * stretch, 1e-6);
            var material = ClothMaterials.Of(FabricSettings.Unsaid with { Strips = strips });
            var found = ClothRatios.Of(material.Likely);
            Assert.Equal(ratios.AlongOverAcross, found.AlongOverAcross, 1e-6 * ratios.AlongOverAcross);
            Assert.Equal(ratios.Narrowing, found.Narrowing, 1e-6);
            Assert.Equal(ratios.ShearShare, found.ShearShare, 1e-5);
            Assert.Equal(newtons, material.NewtonsPerMetre!.Value.Likely, 1e-5 * newtons);
            Assert.Equal(MaterialSource.Strips, material.Source);
        });

    [Fact]
    public void A_heavier_weight_for_the_same_lengths_changes_no_ratio() =>
        Gen.Select(AnyRatios, Gen.Double[2, 20]).Check(100, t =>
        {
            var (ratios, heavier) = t;
            var strips = StripsOf(ratios, 100, 10, 0.2);
            var one = ClothMaterials.Of(FabricSettings.Unsaid with { Strips = strips });
            var other = ClothMaterials.Of(FabricSettings.Unsaid with { Strips = strips with { Grams = heavier * strips.Grams } });
            foreach (var (a, b) in ((OrthotropicCloth, OrthotropicCloth)[])[(one.Likely, other.Likely), (one.Soft, other.Soft), (one.Stiff, other.Stiff)])
            {
                Assert.Equal(a.EAlong, b.EAlong, 1e-9);
                Assert.Equal(a.EAcross, b.EAcross, 1e-9);
                Assert.Equal(a.Poisson, b.Poisson, 1e-9);
                Assert.Equal(a.Shear, b.Shear, 1e-9);
            }

            Assert.Equal(heavier * one.NewtonsPerMetre!.Value.Most, other.NewtonsPerMetre!.Value.Most, 1e-6);
        });

    [Fact]
    public void A_tape_read_less_closely_widens_the_range_around_what_was_read() =>
        AnyRatios.Check(100, ratios =>
        {
            var close = ClothMaterials.Of(FabricSettings.Unsaid with { Strips = StripsOf(ratios, 100, 12, 0.2) });
            var loose = ClothMaterials.Of(FabricSettings.Unsaid with { Strips = StripsOf(ratios, 100, 12, 0.8) });
            Assert.Equal(close.Likely, loose.Likely);
            double[] ease = [.. ((OrthotropicCloth[])[loose.Stiff, close.Stiff, close.Likely, close.Soft, loose.Soft]).Select(c => ScallopEase.Of(c))];
            Assert.Equal(ease.Order(), ease);
            Assert.True(loose.NewtonsPerMetre!.Value.IsInOrder && close.NewtonsPerMetre!.Value.IsInOrder);
            Assert.True(loose.NewtonsPerMetre!.Value.Most > close.NewtonsPerMetre!.Value.Most);
        });

    [Fact]
    public void A_swatch_of_evenly_pulled_cloth_gives_its_ratio_back() =>
        (from root in Gen.Double[-0.3, 0.3] from pull in Gen.Double[0.05, 0.3] select (Math.Exp(root), pull)).Check(100, t =>
        {
            // The same second Piola-Kirchhoff stress both ways: strains by the compliance of the cloth.
            var m = ClothCatalogue.Of(FabricKind.Lace).Narrowing.Likely;
            var (along, across) = (t.pull * ((1 / t.Item1) - m), t.pull * (t.Item1 - m));
            static double Stretched(double green) => Math.Sqrt(1 + (2 * green));
            static Length Mm(double mm) => Length.FromMillimetres(mm);
            var swatch = new Swatch((Mm(100), Mm(120)), (Mm(100 * Stretched(along)), Mm(120 * Stretched(across))), null);
            var material = ClothMaterials.Of(FabricSettings.Unsaid with { Kind = FabricKind.Lace, Swatch = swatch });
            Assert.Equal(MaterialSource.Swatch, material.Source);
            Assert.Equal(t.Item1 * t.Item1, material.Likely.EAlong / material.Likely.EAcross, 1e-6);
            Assert.Equal(Stretched(along) - 1, material.Took!.Value.Along, 1e-9);
            Assert.True(ScallopEase.Of(material.Soft) > ScallopEase.Of(material.Likely));
            Assert.True(ScallopEase.Of(material.Stiff) < ScallopEase.Of(material.Likely));
        });

    [Fact]
    public void A_swatch_that_shrank_one_way_leaves_the_ratio_to_the_kind_of_cloth()
    {
        static Length Mm(double mm) => Length.FromMillimetres(mm);
        var swatch = new Swatch((Mm(100), Mm(100)), (Mm(130), Mm(98)), (Mm(134), Mm(99)));
        var material = ClothMaterials.Of(FabricSettings.Unsaid with { Kind = FabricKind.Rib, Swatch = swatch });
        Assert.Equal(MaterialSource.AssumedByKind, material.Source);
        Assert.Equal(0.34, material.Took!.Value.Along, 1e-12);
        Assert.Equal(-0.01, material.Took.Value.Across, 1e-12);
    }

    [Fact]
    public void Strips_no_cloth_can_have_throw_where_they_were_not_asked_about()
    {
        var strips = StripsOf(new(1, 0.3, 0.3), 100, 10, 0.1);
        var stiffSlant = strips with { Slanted = strips.Slanted with { Pulled = Length.FromMillimetres(200.3) } };
        Assert.NotEmpty(StripProblems.Of(stiffSlant, LengthUnit.Centimetres));
        Assert.Throws<ArgumentException>(() => ClothMaterials.Of(FabricSettings.Unsaid with { Strips = stiffSlant }));
    }

    // Three strips 50 mm wide and 200 mm long as a cloth of these ratios takes them (root of its stiffnesses in newtons a metre).
    private static StripTest StripsOf(ClothRatios ratios, double newtons, double pull, double readingMm)
    {
        var cloth = ratios.Cloth(0);
        var (s1, s2, s12, s6) = (1 / cloth.EAlong, 1 / cloth.EAcross, -cloth.Poisson / cloth.EAlong, 1 / cloth.Shear);
        PulledStrip Strip(double along, double across)
        {
            // pull = stretch times stress; stress times compliance = Green's strain.
            var stretch = 1.0;
            for (var i = 0; i < 200; i++)
                stretch = (stretch + Math.Sqrt(1 + (2 * along * pull / newtons / stretch))) / 2;
            var width = Math.Sqrt(1 + (2 * across * pull / newtons / stretch));
            return new(Length.FromMillimetres(200), Length.FromMillimetres(200 * stretch), Length.FromMillimetres(50 * width));
        }

        return new(
            Length.FromMillimetres(50),
            pull * 0.05 / 9.80665e-3,
            Strip(s1, s12),
            Strip(s2, s12),
            Strip((s1 + s2 + (2 * s12) + s6) / 4, 0) with { WidthPulled = null },
            Length.FromMillimetres(readingMm));
    }
}
