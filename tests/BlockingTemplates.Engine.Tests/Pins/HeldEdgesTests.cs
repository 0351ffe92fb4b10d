using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Pins;
using BlockingTemplates.Engine.Pins.Wires;
using CsCheck;

namespace BlockingTemplates.Engine.Tests.Pins;

// Random pieces whose edges are held in all ways.
public class HeldEdgesTests
{
    private static readonly Gen<PinSettings> Ways = Gen.Select(
        Gen.Select(Gen.Int[0, 2], Gen.Int[100, 900].Array[0, 3], Gen.Int[0, 3], Gen.Double[0.8, 3]),
        Gen.Select(Gen.Int[10, 120], Gen.Int[1, 4], Gen.Int[2, 12], Gen.Int[20, 160], Gen.Double[1, 12]),
        (wire, rest) =>
        {
            var (kinds, lengths, count, diameter) = wire;
            var (overlap, every, prongs, comb, scallop) = rest;
            WireForm Form(int kind) => new(kind % 2 == 0 ? WireKind.Stiff : WireKind.Flexible, Length.FromMillimetres(diameter));
            return PinSettings.Default with
            {
                Scallop = Length.FromMillimetres(scallop),
                Wires = new(Form(kinds), lengths.Length == 0 ? null : [.. lengths.Select((l, i) => new WireStock(Length.FromMillimetres(l), count, Form(kinds + i)))], Length.FromMillimetres(overlap), every),
                Combs = new(prongs, Length.FromMillimetres(comb), null),
            };
        });

    private static readonly Gen<(Piece Piece, PinSettings Settings)> Any = Gen.Select(
        Gen.OneOf(RandomPieces.Any, RandomPieces.Symmetric),
        Ways,
        (given, ways) => (Held(given.Piece), given.Settings with { Scallop = ways.Scallop, Wires = ways.Wires, Combs = ways.Combs }));

    [Fact]
    public void No_comb_stands_off_its_edge() => Any.Check(80, given =>
    {
        var plan = RandomPieces.Plan(given);
        foreach (var mark in plan.Marks)
        {
            Assert.Equal(mark.Kind == PinKind.Comb, mark.Bar is not null);
            if (mark.Bar is not { } bar)
                continue;
            var curve = plan.Pinned.Edges[mark.Edge].Curve;
            Assert.Equal(Holding.Comb, plan.Edges[mark.Edge].Treatment.Hold);
            Assert.True(bar.FromFraction > 0 && bar.FromFraction < mark.Fraction && mark.Fraction < bar.ToFraction && bar.ToFraction < 1);
            Assert.Equal(given.Settings.Combs.Length.Millimetres, bar.From.DistanceTo(bar.To), 1e-6);
            Assert.Equal(given.Settings.Combs.Prongs, bar.ProngsAt.Count());
            // Slow and obvious: each point of the edge under the bar, against the nearest of many points of the bar.
            for (var k = 0; k <= 30; k++)
            {
                var at = curve.At(bar.FromFraction + ((bar.ToFraction - bar.FromFraction) * k / 30));
                var off = Enumerable.Range(0, 1001).Min(i => at.DistanceTo(bar.From.Toward(bar.To, i / 1000.0)));
                Assert.InRange(off, 0, (1.05 * given.Settings.Scallop.Millimetres) + 0.2);
            }
        }
    });

    [Fact]
    public void Gaps_beside_combs_keep_the_rule_and_combs_stand_apart() => Any.Check(80, given =>
    {
        var plan = RandomPieces.Plan(given);
        for (var e = 0; e < plan.Edges.Count; e++)
        {
            var edge = plan.Edges[e];
            if (edge.Treatment is not { Hold: Holding.Comb, Count: null })
                continue;
            double previous = 0;
            foreach (var mark in plan.Marks.Where(m => m.Edge == e && m.Fraction > 0).OrderBy(m => m.Fraction).Append(null))
            {
                var (from, to) = mark is null ? (1, 1) : (mark.Bar?.FromFraction ?? mark.Fraction, mark.Bar?.ToFraction ?? mark.Fraction);
                Assert.True(from > previous);
                Assert.True((from - previous) * edge.PinnedMm <= plan.Rule.At(e, (from + previous) / 2) + 0.01, $"gap {(from - previous) * edge.PinnedMm} over {plan.Rule.At(e, (from + previous) / 2)}");
                previous = to;
            }
        }
    });

    [Fact]
    public void Wires_cover_their_edge_and_none_is_longer_than_owned() => Any.Check(80, given =>
    {
        var plan = RandomPieces.Plan(given);
        var owned = given.Settings.Wires.Owned;
        for (var e = 0; e < plan.Edges.Count; e++)
        {
            var wires = plan.Wires.Where(w => w.Edge == e).ToList();
            if (plan.Edges[e].Treatment.Hold != Holding.Wire)
            {
                Assert.Empty(wires);
                continue;
            }

            Assert.Equal(0, wires[0].FromMm);
            Assert.Equal(plan.Edges[e].PinnedMm, wires[^1].ToMm, 1e-9);
            Assert.All(wires.Zip(wires.Skip(1)), w => Assert.True(w.Second.FromMm <= w.First.ToMm + 1e-6, "two wires do not meet"));
            // Each place where a wire begins or ends has a mark.
            Assert.All(wires.SelectMany(w => (double[])[w.FromMm, w.ToMm]), at => Assert.True(
                at == 0 || at > plan.Edges[e].PinnedMm - 1e-6 || plan.Marks.Any(m => m.Edge == e && Math.Abs((m.Fraction * plan.Edges[e].PinnedMm) - at) < 1e-5), $"no mark at {at}"));
        }

        Assert.Equal(Enumerable.Range(1, plan.Wires.Count), plan.Wires.Select(w => w.Number));
        foreach (var wire in plan.Wires)
        {
            Assert.True(wire.LengthMm >= wire.ToMm - wire.FromMm - 1e-6 && wire.ToMm > wire.FromMm);
            Assert.True(owned is null || owned.Any(o => o.Length.Millimetres == wire.LengthMm), "no such wire is owned");
        }

        foreach (var kind in plan.Wires.Where(w => w.Owned).GroupBy(w => (w.Form, w.LengthMm)))
            Assert.True(kind.Count() <= owned!.Where(o => (o.Form, o.Length.Millimetres) == kind.Key).Sum(o => o.Count));
    });

    [Fact]
    public void Counts_add_up() => Any.Check(80, given =>
    {
        var plan = RandomPieces.Plan(given);
        var settings = given.Settings with { Owned = plan.Marks.Count / 2, Combs = given.Settings.Combs with { Owned = 3 } };
        var supplies = Supplies.Of(plan, settings);
        Assert.Equal(plan.Marks.Count(m => m.Bar is null), supplies.Single(s => s.Kind == PinKind.Pin).LayOut);
        Assert.Equal(plan.Marks.Count(m => m.Bar is not null), supplies.Where(s => s.Kind == PinKind.Comb).Sum(s => s.LayOut));
        Assert.Equal(plan.Wires.Count, supplies.Where(s => s.Kind == PinKind.Wire).Sum(s => s.LayOut));
        foreach (var wires in supplies.Where(s => s.Kind == PinKind.Wire))
        {
            Assert.Equal(plan.Wires.Count(w => w.Form == wires.Form && w.LengthMm == wires.LengthMm), wires.LayOut);
            Assert.Equal(settings.Wires.Owned is null ? null : settings.Wires.Owned.Where(o => (o.Form, (double?)o.Length.Millimetres) == (wires.Form, wires.LengthMm)).Sum(o => o.Count), wires.Owned);
        }

        // What is bought with what is owned is enough, and nothing is bought that is not needed.
        Assert.All(supplies.Where(s => s.Owned is not null), s => Assert.Equal(Math.Max(s.Owned!.Value, s.LayOut + s.Spare), s.Owned.Value + s.Buy!.Value));
        var findings = new Findings(LengthUnit.Centimetres);
        Supplies.AddNotes(plan, settings, findings);
        Assert.Equal(supplies.Count(s => s.Owned < s.LayOut), findings.Notes.Count);
    });

    [Fact]
    public void A_wire_keeps_the_scallop_unless_it_is_too_limp() => Any.Check(80, given =>
    {
        var plan = RandomPieces.Plan(given);
        foreach (var wired in plan.Wired)
        {
            Assert.InRange(wired.ToleranceMm, 0, given.Settings.Scallop.Millimetres);
            if (!wired.IsLimp)
                Assert.All(wired.SagMm, s => Assert.InRange(Math.Max(Math.Abs(s.Most), Math.Abs(s.Least)), 0, wired.ToleranceMm + 1e-5));
            Assert.True(wired.MarksIfSoft <= wired.Marks.Count);
        }
    });

    [Fact]
    public void Marks_stay_symmetric_and_of_one_kind_with_their_edge() => RandomPieces.Symmetric.Select(Ways, (g, w) => (Held(g.Piece), g.Settings with { Wires = w.Wires, Combs = w.Combs })).Check(60, given =>
    {
        var plan = RandomPieces.Plan(given);
        Assert.NotNull(plan.Mirror);
        foreach (var mark in plan.Marks)
        {
            var partner = plan.PartnerOf(mark);
            Assert.NotNull(partner);
            Assert.Equal(mark.Kind, partner.Kind);
            Assert.Equal(mark.Bar?.FromFraction ?? 0, mark.Bar is null ? 0 : 1 - partner.Bar!.ToFraction, 1e-9);
            var hold = plan.Edges[mark.Edge].Treatment.Hold;
            Assert.True(mark.Kind == PinKind.Pin || mark.Kind == (hold == Holding.Wire ? PinKind.Wire : PinKind.Comb));
            Assert.True(mark.Kind != PinKind.Pin || hold != Holding.Wire || mark.IsCorner, "a mark on a wire is no wire's mark");
        }
    });

    /// <summary>The edges held in all ways, edges of which the same was said in the same way.</summary>
    private static Piece Held(Piece piece) => piece with
    {
        Edges = [.. piece.Edges.Select(e => e.Hold == Holding.None ? e : e with { Hold = ((e.Count ?? 1) % 3) switch { 0 => Holding.Pins, 1 => Holding.Wire, _ => Holding.Comb } })],
    };
}
