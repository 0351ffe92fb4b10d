using BlockingTemplates.Engine.Fabrics;
using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Pins;
using BlockingTemplates.Engine.Pins.Settling;
using BlockingTemplates.Engine.Tests.Projects;
using Xunit.Abstractions;

namespace BlockingTemplates.Engine.Tests.Pins.Settling;

public class FewerPinsTests(ITestOutputHelper output)
{
    private static readonly PinSettings Uncapped = PinSettings.Default with { MaxSpacing = null };

    [Theory]
    [InlineData(1400, 350, 0.2, 4, 0)]
    [InlineData(900, 180, 0.2, 6, 0)]
    public void On_a_triangle_pulled_by_a_fifth_with_one_edge_bowed_by_a_tenth_the_cloth_needs_at_least_35_percent_fewer_pins_than_the_best_even_spacing_of_each_edge(
        double wingspan, double depth, double stretch, double stitch, int bowed)
    {
        var (ours, even) = Both(PulledPieces.FlatTriangle(wingspan, depth, stretch, stitch, bowed));
        output.WriteLine($"triangle {wingspan} x {depth} mm, stitch {stitch} mm: {ours} pins by the cloth, {even} evenly: {100 - (100.0 * ours / even):0} % fewer");
        Assert.True(ours <= 0.65 * even, $"{ours} of {even}");
    }

    [Fact]
    public void The_demo_takes_no_more_pins_than_the_best_even_spacing_with_and_without_a_cap()
    {
        var project = Reading.Reader.Read(File.ReadAllBytes(Path.Combine(Reading.Shared, "examples", "lace-triangle.jsonc"))).Project!;
        var piece = PieceMaker.Make(new(project.Kind, project.Finished, project.Unblocked, project.Edges, project.FaceUp, project.MeasuredFaceUp, project.EvenOut, project.Fabric), new Findings())!;
        var (ours, even) = Both(piece);
        var (capped, _) = Both(piece, PinSettings.Default);
        output.WriteLine($"the demo: {ours} pins by the cloth, {even} evenly; with the default cap {capped}");
        Assert.True(ours <= even, $"{ours} of {even}");
        Assert.True(capped >= ours);
    }

    [Fact]
    public void On_random_pieces_the_cloth_never_needs_more_pins_than_even_spacing()
    {
        var random = new Random(20261125);
        var worse = 0;
        for (var k = 1; k <= 8; k++)
        {
            var (ours, even) = Both(PulledPieces.Random(random));
            output.WriteLine($"piece {k}: {ours} pins by the cloth, {even} evenly");
            worse += ours > even ? 1 : 0;
        }

        Assert.Equal(0, worse);
    }

    private static (int Ours, int Even) Both(Piece piece, PinSettings? asked = null)
    {
        var settings = asked ?? Uncapped;
        var plan = PinPlanner.Placed(piece, settings with { Anchor = PinSettings.NoAnchor }, new Findings())!;
        var cloth = new PinnedCloth(piece, ClothMaterials.Of(piece.Fabric).Likely);
        var limits = SpacingLimits.Of(settings);
        var ours = new ClothSpacing(cloth, piece, limits, Computation.Whole).Find(plan)!;
        Assert.All(ours.Gaps, g => Assert.True(limits.Keeps(g)));
        return (ours.Plan.Marks.Count, EvenPins.Best(cloth, piece, plan, limits).Plan.Marks.Count);
    }
}
