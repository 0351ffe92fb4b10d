using BlockingTemplates.Engine.Fabrics;
using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Pins;
using BlockingTemplates.Engine.Pins.Settling;
using Xunit.Abstractions;

namespace BlockingTemplates.Engine.Tests.Pins.Settling;

// A second and slower way that no plan uses: the same pins on a mesh of eight node distances a stitch.
public class VerificationTests(ITestOutputHelper output)
{
    [Fact]
    public void On_a_mesh_four_times_finer_every_determined_gap_of_ten_random_pieces_stays_within_the_tolerance_and_5_percent()
    {
        var random = new Random(8);
        var limits = SpacingLimits.Of(PinSettings.Default);
        List<string> failing = [];
        for (var k = 1; k <= 10; k++)
        {
            var piece = PulledPieces.Random(random);
            var material = ClothMaterials.Of(piece.Fabric).Likely;
            var cloth = new PinnedCloth(piece, material);
            var pins = new ClothSpacing(cloth, piece, limits, Computation.Whole).Find(PinPlanner.Placed(piece, PinSettings.Default, new Findings())!)!;
            Assert.All(pins.Gaps, g => Assert.True(limits.Keeps(g)));
            var finer = new PinnedCloth(piece, material, nodesPerStitch: 8);
            var settled = finer.Settle(pins.Plan, null, Computation.Whole);
            Assert.True(settled.Rest.Converged, $"piece {k}: {settled.Rest.End}");
            var sure = settled.Gaps.Where(g => g.Determined != false).ToList();
            var worst = sure.Max(g => Math.Abs(g.ScallopMm));
            output.WriteLine($"piece {k}: {piece.Edges.Count} edges, {pins.Plan.Marks.Count} pins, {cloth.Mesh.Nodes.Count} nodes, worst {pins.Gaps.Where(g => g.Determined != false).Max(g => Math.Abs(g.ScallopMm)):0.00} mm; {finer.Mesh.Nodes.Count} nodes, worst {worst:0.00} mm; {settled.Gaps.Count - sure.Count} of {settled.Gaps.Count} gaps not determined");
            if (worst > 1.05 * limits.ScallopMm)
                failing.Add($"piece {k}: {worst:0.00} mm");
        }

        Assert.Empty(failing);
    }
}
