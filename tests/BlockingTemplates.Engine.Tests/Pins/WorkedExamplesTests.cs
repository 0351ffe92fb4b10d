using System.Globalization;
using BlockingTemplates.Engine.Fabrics;
using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Pins;
using BlockingTemplates.Engine.Pins.Settling;
using BlockingTemplates.Engine.Pins.Wires;
using BlockingTemplates.Engine.Tests.Projects;

namespace BlockingTemplates.Engine.Tests.Pins;

// Every figure of shared/examples/holding.md against what is planned: from geometry alone, and on the computed cloth.
public class WorkedExamplesTests
{
    private static readonly string Told = File.ReadAllText(Path.Combine(Reading.Shared, "examples", "holding.md"));

    [Fact]
    public void A_wire_edge()
    {
        var (plan, _, _) = Planned("stole-on-wires");
        var wired = plan.Wired.Single(w => plan.Edges[w.Edge].Name == "lower");
        Says($"E I = {wired.Form.BendingStiffness:0} N mm²", $"I = π d⁴ / 64 = {wired.Form.BendingStiffness / WireForm.Modulus:0.0000} mm⁴");
        Says($"stretched by {100 * wired.Pull.Stretch:0} % across this edge", $"pulls with {1000 * wired.Pull.Least:0.0} to {1000 * wired.Pull.Most:0.0} N a metre");
        Says($"= {Span(wired.Pull.Most):0} mm at the stiff end of the range, {Span(wired.Pull.Least):0} mm at the soft end");
        var reaches = plan.Wires.Where(w => w.Edge == wired.Edge).Select(w => Text($"wire {w.Number} from {w.FromMm / 10:0.0} to {w.ToMm / 10:0.0} cm"));
        Says($"The edge is {plan.Edges[wired.Edge].PinnedMm / 10:0.0} cm long", $"Wires of {string.Join(", ", wired.Lengths.SkipLast(1).Select(l => Text($"{l.LengthMm / 10:0}")))} and {wired.Lengths[^1].LengthMm / 10:0} cm", $"{string.Join(", ", reaches)}, each through every row");
        var (pinned, _, _) = Planned("stole-on-wires", Holding.Pins);
        Says($"Marks: {wired.Marks.Count}, corners included, for the stiff end; {wired.MarksIfSoft} would do for the soft end", $"the edge would take {OnEdge(pinned, wired.Edge)}");
        double Span(double load) => Math.Pow(384 * wired.Form.BendingStiffness * wired.ToleranceMm / load, 0.25);
    }

    [Fact]
    public void A_flexible_wire_on_a_curve()
    {
        var (plan, _, _) = Planned("half-circle-on-wires");
        var (round, top) = (plan.Wired.Single(w => plan.Edges[w.Edge].Name == "lower"), plan.Wired.Single(w => plan.Edges[w.Edge].Name == "top"));
        Says($"a radius of {round.Tightest.RadiusMm / 10:0.0} cm everywhere");
        Says($"R = {top.Form.TightestRadiusMm / 10:0.0} cm, so it would stay bent here", $"R = {round.Form.TightestRadiusMm / 10:0.0} cm, so it follows", $"E I = {round.Form.BendingStiffness:0} N mm²");
        Says($"{round.Marks.Count} on {plan.Edges[round.Edge].PinnedMm / 10:0.0} cm, corners included", $"takes {top.Marks.Count} on {plan.Edges[top.Edge].PinnedMm / 10:0.0} cm");
        Assert.True(round.Follows && top.Follows && round.Form.Kind == WireKind.Flexible && top.Form.Kind == WireKind.Stiff);
        Assert.True(top.Form.TightestRadiusMm > round.Tightest.RadiusMm);
    }

    [Fact]
    public void Comb_edges()
    {
        var (plan, piece, settings) = Planned("combed-blanket");
        var right = plan.Marks.Where(m => plan.Edges[m.Edge].Name == "right" && m.Fraction > 0).OrderBy(m => m.Fraction).ToList();
        Assert.All(right, m => Assert.Equal(PinKind.Comb, m.Kind));
        var advice = EdgeAdvisor.Of(plan, piece, settings).Single(a => plan.Edges[a.Edge].Name == "right");
        Says($"On a straight edge of 80 cm {right.Count} combs stand for {advice.Ways[0].Pins} single pins: gaps of {(right[1].Bar!.FromFraction - right[0].Bar!.ToFraction) * 80:0.0} cm");
        Assert.Equal((right[1].Bar!.FromFraction - right[0].Bar!.ToFraction) / 2, right[0].Bar!.FromFraction, 0.004);
        // On the half circle every comb fits, and its bar lies as far off as the sagitta says.
        var (round, _, _) = Planned("half-circle-on-wires", Holding.Comb);
        var lower = round.Edges.ToList().FindIndex(e => e.Name == "lower");
        var combs = round.Marks.Where(m => m.Edge == lower && m.Bar is not null).ToList();
        Assert.True(combs.Count > 10);
        foreach (var comb in combs)
        {
            var off = comb.Bar!.From.Toward(comb.Bar.To, 0.5).DistanceTo(round.Pinned.Edges[lower].Curve.At((comb.Bar.FromFraction + comb.Bar.ToFraction) / 2));
            Assert.Equal(1.7, off, 0.05);
        }

        Says($"90² / (8 · 600) = {90.0 * 90 / 8 / 600:0.0} mm", $"R = c² / (8 · 5) + 5 / 2 = {(90.0 * 90 / 40) + 2.5:0} mm");
    }

    [Fact]
    public void Measured_dry()
    {
        var (plan, piece, settings) = Planned("combed-blanket");
        EdgePlan lower = plan.Edges.Single(e => e.Name == "lower"), right = plan.Edges.Single(e => e.Name == "right");
        Says($"measured {lower.DryMm / 10:0.#} cm dry", $": {lower.UnblockedMm / 10:0.0} cm damp. To reach 80 cm it is stretched by {100 * lower.Stretch:0.0} %, not by {100 * ((lower.PinnedMm / lower.DryMm!.Value) - 1):0.0} %");
        Says($"measured {right.DryMm / 10:0.0} cm; across", $": {right.UnblockedMm / 10:0.0} cm damp, stretched by {100 * right.Stretch:0.0} %, not by {100 * ((right.PinnedMm / right.DryMm!.Value) - 1):0.0} %");
        var findings = new Findings(LengthUnit.Centimetres);
        DryAndDamp.AddNote(plan, piece, findings);
        var pull = findings.Say(plan.Marks.Max(m => m.Pull!.Value.Length));
        Says($"The longest pull is {pull} instead of 4.0 cm");
        Assert.Contains($"The longest pull is {pull} instead of 4.0 cm", findings.Notes.Single().What, StringComparison.Ordinal);
        Assert.Equal(Length.FromCentimetres(9), settings.Combs.Length);
    }

    [Fact]
    public void The_same_on_the_computed_cloth()
    {
        var (stole, advice) = Settled("stole-on-wires");
        var lower = stole.Wired.Single(w => stole.Edges[w.Edge].Name == "lower");
        Says($"bears as a beam under {1000 * lower.Pull.Least:0.0} to {1000 * lower.Pull.Most:0.0} N a metre", $"{lower.Marks.Count} marks, corners included, instead of 15");
        Says($"single pins would take {advice.Single(a => a.Edge == lower.Edge).Ways[0].Pins} between the corners");
        var (half, _) = Settled("half-circle-on-wires");
        var marks = half.Wired.ToDictionary(w => half.Edges[w.Edge].Name, w => w.Marks.Count);
        Says($"the round edge of the half circle takes {marks["lower"]} instead of 15, its straight top {marks["top"]} instead of 7");
    }

    private static (PinPlan Plan, IReadOnlyList<EdgeAdvice> Advice) Settled(string example)
    {
        var (placed, piece, settings) = Planned(example);
        using var study = ClothStudy.Of(piece, settings, placed, Computation.Whole with { WithEnds = false }, new())!;
        return (study.Pins, EdgeAdvisor.Of(study.Pins, piece, settings));
    }

    private static int OnEdge(PinPlan plan, int edge) => plan.Marks.Count(m => m.Edge == edge) + 1;

    private static void Says(params FormattableString[] texts) =>
        Assert.All(texts, t => Assert.True(Told.Contains(Text(t), StringComparison.Ordinal), $"holding.md should say: {Text(t)}"));

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);

    private static (PinPlan Plan, Piece Piece, PinSettings Settings) Planned(string example, Holding? way = null)
    {
        var project = Reading.Reader.Read(File.ReadAllBytes(Path.Combine(Reading.Shared, "examples", example + ".jsonc"))).Project!;
        var request = new PieceRequest(project.Kind, project.Finished, project.Unblocked, project.Edges, project.FaceUp, project.MeasuredFaceUp, project.EvenOut, project.Fabric);
        var piece = DampPiece.Of(PieceMaker.Make(request, new())!, new());
        if (way is { } hold)
            piece = piece with { Edges = [.. piece.Edges.Select(e => e with { Hold = hold })] };
        return (PinPlanner.Placed(piece, project.Pins, new())!, piece, project.Pins);
    }
}
