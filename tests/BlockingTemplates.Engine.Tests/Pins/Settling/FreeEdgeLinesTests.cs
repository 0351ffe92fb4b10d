using BlockingTemplates.Engine.Fabrics;
using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Pins.Settling;

namespace BlockingTemplates.Engine.Tests.Pins.Settling;

// The lines that show where the free edge will lie.
public class FreeEdgeLinesTests
{
    [Theory]
    [InlineData("combed-blanket", null)]
    [InlineData("half-circle-on-wires", Holding.Comb)]
    [InlineData("stole-on-wires", null)]
    [InlineData("lace-triangle", null)]
    public void Each_line_reaches_over_its_gap_and_no_farther(string example, Holding? way)
    {
        var held = HeldExample.Of(example, way);
        using var study = ClothStudy.Of(held.Piece, held.Settings, held.Placed, Computation.Whole with { WithEnds = false }, new())!;
        var cloth = study.Settle(study.Pins, new Findings())!;
        Assert.NotEmpty(cloth.OffLine);
        foreach (var (gap, line) in cloth.GapsOffLine.Zip(cloth.OffLine))
        {
            // Two nodes of the mesh lie on each stitch of the edge, so that a line ends within half a stitch of its gap's ends.
            var stitch = NeededSpacing.StitchMm(study.Pins, gap.Edge);
            var length = line.Zip(line.Skip(1)).Sum(s => s.First.DistanceTo(s.Second));
            Assert.InRange(length, gap.WidthMm - (1.5 * stitch), (1.1 * gap.WidthMm) + stitch);
        }
    }
}
