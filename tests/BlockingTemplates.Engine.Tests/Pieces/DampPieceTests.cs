using BlockingTemplates.Engine.Fabrics;
using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Pins;
using BlockingTemplates.Engine.Tests.Pins;
using CsCheck;

namespace BlockingTemplates.Engine.Tests.Pieces;

public class DampPieceTests
{
    // D. L. Munden, J. Text. Inst. 50 (1959): courses 5.0 to 5.3, wales 3.8 to 4.1; Knapton and others (1968): 5.5 and 4.2.
    [Fact]
    public void Plain_wool_closes_up_as_published()
    {
        Assert.Equal(-0.073, WetChange.PlainWoolWetted.Along, 5e-4);
        Assert.Equal(-0.057, WetChange.PlainWoolWetted.Across, 5e-4);
        Assert.Equal(-0.095, WetChange.PlainWoolWashed.Along, 5e-4);
        Assert.Equal(-0.091, WetChange.PlainWoolWashed.Across, 5e-4);
    }

    [Fact]
    public void A_piece_measured_dry_changes_along_and_across_its_rows() => Tests.Pins.RandomPieces.Any.Check(40, given =>
    {
        var change = new WetChange(-0.07, 0.03);
        var piece = given.Piece with { Fabric = given.Piece.Fabric with { Measured = Dampness.Dry, WetChange = change, GrainDegrees = 30 } };
        var damp = DampPiece.Of(piece, new());
        Assert.Same(piece.Unblocked, damp.MeasuredDry);
        Assert.Equal(0.93 * 1.03 * piece.Unblocked!.SignedArea(1e-3), damp.Unblocked!.SignedArea(1e-3), 4.0);
        Assert.Equal(0.93 * 7.1, damp.Fabric.Stitch!.Value.Along.Millimetres, 1e-9);
        Assert.Equal(1.03 * 6, damp.Fabric.Stitch!.Value.Across.Millimetres, 1e-9);
        // Slow and obvious: parts of a side along and across the rows, each changed by itself.
        var (rows, columns) = (Engine.Shapes.Vector.AtAngle(Math.PI / 6), Engine.Shapes.Vector.AtAngle((Math.PI / 6) + (Math.PI / 2)));
        for (var i = 0; i < piece.Unblocked.Edges.Count; i++)
        {
            var (dry, wet) = (piece.Unblocked.Edges[i].Curve, damp.Unblocked.Edges[i].Curve);
            Assert.Equal(0.93 * (dry.End - dry.Start).Dot(rows), (wet.End - wet.Start).Dot(rows), 1e-8);
            Assert.Equal(1.03 * (dry.End - dry.Start).Dot(columns), (wet.End - wet.Start).Dot(columns), 1e-8);
        }
    });

    [Theory]
    [InlineData(null, "closes up once wet: by about 7 % along the rows and 6 % across, up to 10 % and 9 %")]
    [InlineData("wool", "closes up once wet")]
    [InlineData("alpaca", "alpaca often grows once wet")]
    [InlineData("silk", "silk often grows once wet")]
    public void Measured_dry_without_a_factor_is_a_note_with_the_likely_range(string? fibre, string what)
    {
        var (piece, findings) = Of(f => f with { Fibre = fibre is null ? null : FibreCatalogue.Find(fibre), Measured = Dampness.Dry });
        Assert.Same(piece, DampPiece.Of(piece, findings));
        var note = Assert.Single(findings.Notes);
        Assert.Equal("fabric.measured", note.Place);
        Assert.Contains(what, note.What, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(Dampness.Damp, "fabric.wetChange")]
    [InlineData(null, "fabric.wetChange")]
    public void A_factor_that_does_not_serve_is_a_note(Dampness? measured, string place)
    {
        var (piece, findings) = Of(f => f with { Measured = measured, WetChange = new(-0.05, -0.05) });
        Assert.Same(piece, DampPiece.Of(piece, findings));
        Assert.Equal(place, Assert.Single(findings.Notes).Place);
    }

    [Fact]
    public void Measured_damp_says_nothing()
    {
        var (piece, findings) = Of(f => f with { Measured = Dampness.Damp });
        Assert.Same(piece, DampPiece.Of(piece, findings));
        Assert.Empty(findings.Notes);
    }

    [Fact]
    public void The_effect_on_pulls_and_stretch_is_told()
    {
        var (piece, findings) = Of(f => f with { Measured = Dampness.Dry, WetChange = new(-0.05, -0.05) });
        var damp = DampPiece.Of(piece, findings);
        var plan = PinPlanner.Plan(damp, PinSettings.Default, findings)!;
        var dry = PinPlanner.Plan(piece with { Fabric = piece.Fabric with { Measured = null } }, PinSettings.Default, new())!;
        var note = Assert.Single(findings.Notes, n => n.Place == "fabric.wetChange");
        // A piece 5 % smaller all round: its stretch is (1 + old) / 0.95 - 1.
        var top = plan.Edges.Single(e => e.Name == "top");
        Assert.Equal((1 + dry.Edges.Single(e => e.Name == "top").Stretch!.Value) / 0.95, 1 + top.Stretch!.Value, 1e-9);
        Assert.Equal(dry.Edges.Single(e => e.Name == "top").UnblockedMm!.Value, top.DryMm!.Value, 1e-9);
        Assert.Contains(FormattableString.Invariant($"top {100 * top.Stretch.Value:0.#} % instead of {100 * ((0.95 * (1 + top.Stretch.Value)) - 1):0.#} %"), note.What, StringComparison.Ordinal);
        Assert.Contains($"The longest pull is {findings.Say(plan.Marks.Max(m => m.Pull!.Value.Length))} instead of {findings.Say(dry.Marks.Max(m => m.Pull!.Value.Length))}", note.What, StringComparison.Ordinal);
    }

    private static (Piece Piece, Findings Findings) Of(Func<FabricSettings, FabricSettings> fabric)
    {
        var findings = new Findings(LengthUnit.Centimetres);
        return (PieceMaker.Make(DemoTriangle.Request with { Fabric = fabric(DemoTriangle.Request.Fabric) }, findings)!, findings);
    }
}
