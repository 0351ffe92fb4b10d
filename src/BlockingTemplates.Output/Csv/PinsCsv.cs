using BlockingTemplates.Engine;
using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Pins;
using BlockingTemplates.Engine.Pins.Settling;

namespace BlockingTemplates.Output.Csv;

/// <summary>The pin table as a CSV file.</summary>
public static class PinsCsv
{
    /// <summary>
    /// Number, round, kind, edge, count, mat, from left, from lower side, pull, sheets; where the cloth was computed also pull
    /// in turn, whether that is approximate, load; the project's units stand in the heads.
    /// </summary>
    public static byte[] Write(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var units = plan.Project.Units;
        var unit = LengthWords.UnitOf(units);
        string[] heads = ["number", "round", "kind", "edge", "count", "mat", $"from left ({unit})", $"from lower side ({unit})", $"pull ({unit})", "sheets"];
        if (plan.Cloth is not null)
            heads = [.. heads, $"pull in turn ({unit})", "in turn is", "load (% of the largest)"];
        CsvCell Number(double mm) => CsvCell.Number(Length.FromMillimetres(mm).In(units), units == LengthUnit.Inches ? 3 : units == LengthUnit.Centimetres ? 2 : 1);
        var rows = plan.Pins.Marks.Select(m =>
        {
            var seat = plan.Mats.Seats[m.Number - 1];
            var sheets = plan.Guides.Select(g => $"{g.Paper.Name}: {string.Join(" ", g.Layout.SheetsShowing(m.At).Select(s => s.Name))}");
            return (IReadOnlyList<CsvCell>)
            [
                CsvCell.Number(m.Number), CsvCell.Number(m.Round), CsvCell.Text("pin"), CsvCell.Text(plan.Pins.Edges[m.Edge].Name),
                m.Count is { } count ? CsvCell.Text(FormattableString.Invariant($"{(m.Of == CountedIn.Rows ? "row" : "stitch")} {count}")) : CsvCell.Text(""),
                CsvCell.Text(seat.Mat), Number(seat.OnMat.X), Number(seat.OnMat.Y),
                m.Pull is { } pull ? Number(pull.Length) : CsvCell.Text(""),
                CsvCell.Text(string.Join("; ", sheets)), .. plan.Cloth is { } cloth ? OfCloth(cloth, m, Number) : [],
            ];
        });
        return CsvText.Write([[.. heads.Select(CsvCell.Text)], .. rows]);
    }

    private static IEnumerable<CsvCell> OfCloth(ClothPlan cloth, Mark mark, Func<double, CsvCell> number)
    {
        var turn = cloth.InTurnOf(mark);
        yield return turn is { } known ? number(known.PullMm(mark)) : CsvCell.Text("");
        yield return CsvCell.Text(turn switch { null => "", { IsApproximate: true } => "approximate", _ => "computed" });
        yield return CsvCell.Number(100 * cloth.LoadShares[mark.Number - 1], 1);
    }
}
