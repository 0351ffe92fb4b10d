using BlockingTemplates.Drawing.Comparing;
using BlockingTemplates.Engine;
using BlockingTemplates.Engine.Measure;

namespace BlockingTemplates.Output.Csv;

/// <summary>The comparison of sizes as a CSV file.</summary>
public static class SizesCsv
{
    /// <summary>A row for each part: size, piece, and every figure compared; units stand in the heads.</summary>
    /// <param name="parts">The parts, at least one.</param>
    public static byte[] Write(IReadOnlyList<PlannedPart> parts)
    {
        ArgumentNullException.ThrowIfNull(parts);
        var units = parts[0].Plan.Project.Units;
        var compared = Comparison.Of(parts);
        IReadOnlyList<CsvCell> heads = [CsvCell.Text("size"), CsvCell.Text("piece"), .. compared.Select(r => CsvCell.Text(ComparedWords.Name(r, units)))];
        return CsvText.Write([heads, .. parts.Select((p, i) => (IReadOnlyList<CsvCell>)
            [CsvCell.Text(p.Size), CsvCell.Text(p.Piece), .. compared.Select(r => Cell(r.Measure, r.Values[i], units))])]);
    }

    private static CsvCell Cell(ComparedMeasure measure, double? value, LengthUnit units) => value is not { } figure ? CsvCell.Text("") : measure switch
    {
        ComparedMeasure.Length => CsvCell.Number(Length.FromMillimetres(figure).In(units), units == LengthUnit.Inches ? 3 : units == LengthUnit.Centimetres ? 2 : 1),
        ComparedMeasure.Stretch => CsvCell.Number(100 * figure, 1),
        _ => CsvCell.Number((int)figure),
    };
}
