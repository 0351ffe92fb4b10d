using System.Globalization;
using BlockingTemplates.Drawing.Pages;
using BlockingTemplates.Drawing.Writing;
using BlockingTemplates.Engine;
using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Pins;
using BlockingTemplates.Engine.Pins.Settling;
using BlockingTemplates.Engine.Sheets;

namespace BlockingTemplates.Drawing.Guides;

/// <summary>Every pin in its turn, with a box for set and one for taken out.</summary>
internal static class PinTable
{
    public static IReadOnlyList<Page> Draw(Plan plan, Guide guide, Paper reading)
    {
        var flow = new PageFlow(reading.Short.Millimetres, reading.Long.Millimetres, "pins", "Pin table");
        var units = plan.Project.Units;
        var lastRound = plan.Pins.Marks.Max(m => m.Round);
        flow.Paragraph("Pin table", TextStyle.Title);
        var pull = plan.Pins.LayLine is null ? "" : " Pull: from where the edge point lies at rest on the lay line to its mark.";
        var inTurn = plan.Cloth is null ? "" : " In turn: the same once all earlier pins are set, \"about\" while the piece can still turn.";
        flow.Paragraph($"Pin in the order of the numbers. Mat: which mat, and how far from its left and its lower side.{pull}{inTurn} All in {LengthWords.UnitOf(units)}.", TextStyle.Body);
        flow.Paragraph($"The form round a cross tells its round: {string.Join(", ", Enumerable.Range(1, lastRound).Select(r => FormattableString.Invariant($"{r} {MarkForms.Name(r, lastRound)}")))}.", TextStyle.Body);
        for (var i = 0; i < plan.Pins.Edges.Count; i++)
        {
            if (StitchRepeat.Of(plan.Pins, i) is { } repeat)
                flow.Point($"{plan.Pins.Edges[i].Name} edge, from {plan.Pins.Pinned.Corners[i].Name}: {repeat}.");
        }

        flow.Gap(2);
        string Number(double? mm) => mm is { } value ? LengthWords.Number(Length.FromMillimetres(value), units) : "";
        string InTurn(PullInTurn? turn, Mark mark) => turn is { } known ? (known.IsApproximate ? "about " : "") + Number(known.PullMm(mark)) : "";
        TableColumn[] columns =
        [
            new("No.", Weight: FontWeight.Bold), new("Round"), new("Edge", TextAlign.Left), new("Stitch\nor row", TextAlign.Left), new("Mat", TextAlign.Left), new("From\nleft"),
            new("From\nlower side"), new("Pull"), .. InTurnColumn(plan), new("Sheet", TextAlign.Left), new("Set", IsBox: true), new("Out", IsBox: true),
        ];
        var rows = plan.Pins.Marks.Select(m =>
        {
            var seat = plan.Mats.Seats[m.Number - 1];
            return (IReadOnlyList<string>)
            [
                m.Number.ToString(CultureInfo.InvariantCulture), m.Round.ToString(CultureInfo.InvariantCulture), Place(plan.Pins, m), Stitch(m),
                seat.NearSeam ? seat.Mat + ", tape seam" : seat.Mat, Number(seat.OnMat.X), Number(seat.OnMat.Y), Number(m.Pull?.Length), .. plan.Cloth is { } cloth ? [InTurn(cloth.InTurnOf(m), m)] : Array.Empty<string>(), Sheet(guide, m), "", "",
            ];
        }).ToList();
        new Table(columns).Draw(flow, rows);
        flow.Gap(4);
        flow.Paragraph(FormattableString.Invariant($"Pins out: {plan.Pins.Marks.Count}.  Counted back: _______ of {plan.Pins.Marks.Count}."), TextStyle.Strong);
        return flow.Finish();
    }

    /// <summary>The column of the pulls in turn, where the cloth tells them.</summary>
    private static IEnumerable<TableColumn> InTurnColumn(Plan plan) => plan.Cloth is null ? [] : [new("In turn")];

    private static string Sheet(Guide guide, Mark mark)
    {
        var place = guide.PlaceOf(mark.Number);
        return place.Number == mark.Number ? place.Sheet.Name : $"{place.Sheet.Name}, turned";
    }

    /// <summary>The stitch or row of a mark in words: a half-number lies between two.</summary>
    internal static string Stitch(Mark mark)
    {
        if (mark.Count is not { } count)
            return "";
        var of = mark.Of == CountedIn.Rows ? "row" : "st";
        return count == Math.Floor(count)
            ? string.Create(CultureInfo.InvariantCulture, $"{of} {count:0}")
            : string.Create(CultureInfo.InvariantCulture, $"{of} {Math.Floor(count):0}/{Math.Ceiling(count):0}");
    }

    private static string Place(PinPlan pins, Mark mark) =>
        mark.IsCorner && !pins.Pinned.Corners[mark.Edge].Smooth ? pins.Pinned.Corners[mark.Edge].Name : pins.Edges[mark.Edge].Name;
}
