using System.Globalization;
using BlockingTemplates.Drawing.Pages;
using BlockingTemplates.Drawing.Writing;
using BlockingTemplates.Engine;
using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Pins;
using BlockingTemplates.Engine.Pins.Wires;

namespace BlockingTemplates.Drawing.Guides;

/// <summary>What is laid out, where wires and combs go, and the ways of holding each edge side by side.</summary>
internal static class HoldingLists
{
    private const double HeadingAndWordsMm = 25;
    private const double SmallWordsMm = 10;

    /// <summary>Goes on where the flow stands: where all is pinned, that is a few lines.</summary>
    public static void Draw(Plan plan, PageFlow flow)
    {
        var units = plan.Project.Units;
        string Say(double mm) => LengthWords.Of(Length.FromMillimetres(mm), units);
        flow.Heading("Holding the edges");
        flow.Paragraph($"Lay these out before you begin. One spare for {Supplies.OneSpareFor} begun; pins that hold a wire are counted among the pins.", TextStyle.Body);
        flow.Gap(2);
        string Number(int? count) => count?.ToString(CultureInfo.InvariantCulture) ?? "";
        new Table([new("What", TextAlign.Left), new("Lay out"), new("Spare"), new("Owned"), new("To buy")]).Draw(
            flow, [.. plan.Supplies.Select(s => (IReadOnlyList<string>)[HoldWords.Name(s, units), Number(s.LayOut), Number(s.Spare), Number(s.Owned), Number(s.Buy)])]);
        Wires(plan, flow, Say);
        Combs(plan, flow, Say);
        Advice(plan, flow);
    }

    private static void Wires(Plan plan, PageFlow flow, Func<double, string> say)
    {
        if (plan.Pins.Wires.Count == 0)
            return;
        Table table = new([new("Wire", Weight: FontWeight.Bold), new("Edge", TextAlign.Left), new("Length"), new("From"), new("To"), new("Through"), new("May sag")]);
        flow.Keep(HeadingAndWordsMm + SmallWordsMm + table.KeptMm(plan.Pins.Wires.Count));
        flow.Heading("Wires");
        flow.Paragraph($"Run each wire through {Every(plan.Project.Pins.Wires.Every)} of its edge before the piece is laid down, its ends {say(WireSettings.StandsOut.Millimetres)} beyond the corners. Set the pins of its marks on the inner side of the wire. Corners have pins of their own, where two wires meet too. Wire ends are sharp: mind eyes and hands, and cap or bend them.", TextStyle.Body);
        flow.Paragraph("From, to: along the pinned edge from its first corner, and its stitch or row. A wire lies beside the next one where their places overlap. May sag: between its pins, as a beam under the cloth's greatest pull.", TextStyle.Small);
        flow.Gap(1);
        table.Draw(flow, [.. WireWords.Of(plan).Select(w => (IReadOnlyList<string>)[w.Number, w.Edge, w.Length, w.From, w.To, w.Through, w.MaySag])]);
    }

    private static void Combs(Plan plan, PageFlow flow, Func<double, string> say)
    {
        var marks = plan.Pins.Marks.Where(m => m.Kind == PinKind.Comb).ToList();
        if (marks.Count == 0)
            return;
        var combs = plan.Project.Pins.Combs;
        flow.Heading("Combs");
        flow.Paragraph($"{marks.Count} combs of {combs.Prongs} prongs, {say(combs.Length.Millimetres)} from the first prong to the last. The number of a comb's mark belongs to its middle: set the middle of the comb there and lay its bar along the drawn one.{StandFor(plan)}", TextStyle.Body);
    }

    /// <summary>How many single pins the combs stand for, where that was counted.</summary>
    private static string StandFor(Plan plan)
    {
        var combed = plan.Advice.Where(a => plan.Pins.Edges[a.Edge].Treatment.HeldBy == Holding.Comb).ToList();
        var pins = combed.Sum(a => a.Ways[0].Pins - a.Ways[1].Pins);
        return pins > 0 ? string.Create(CultureInfo.InvariantCulture, $" They stand for {pins} single pins.") : "";
    }

    private static void Advice(Plan plan, PageFlow flow)
    {
        if (plan.Advice.Count == 0)
            return;
        Table table = new([new("Edge", TextAlign.Left), new("By pins"), new("By combs"), new("By wires"), new("Planned", TextAlign.Left), new("Suggested", TextAlign.Left)]);
        flow.Keep(HeadingAndWordsMm + table.KeptMm(plan.Advice.Count));
        flow.Heading("Ways to hold each edge");
        flow.Paragraph($"Each edge by itself, {AdviceWords.CountedFor(plan)}, its corner pins left out. The suggestion is no more than that: you know your cloth and your tools.", TextStyle.Body);
        flow.Gap(1);
        table.Draw(flow, [.. AdviceWords.Of(plan).Select(a => (IReadOnlyList<string>)[a.Edge, a.Pins, a.Combs, a.Wires, a.Planned, a.Suggested])]);
        flow.Gap(1);
        if (AdviceWords.Star(plan) is { } star)
            flow.Paragraph(star, TextStyle.Small);
        foreach (var advice in plan.Advice)
            flow.Point(advice.Why, TextStyle.Small);
    }

    private static string Every(int every) => every == 1 ? "every stitch or row" : string.Create(CultureInfo.InvariantCulture, $"every {every}. stitch or row");
}
