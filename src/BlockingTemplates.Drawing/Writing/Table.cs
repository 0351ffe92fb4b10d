using BlockingTemplates.Drawing.Pages;
using BlockingTemplates.Drawing.Text;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Drawing.Writing;

/// <summary>A table that fills pages, its head repeated on each.</summary>
internal sealed class Table(IReadOnlyList<TableColumn> columns, double rowMm = 5.9)
{
    private const double TextMm = 3.6;
    private const double PadMm = 1.6;
    private const double BoxMm = 3.6;
    private const double HeadLineMm = 4.4;

    /// <summary>A table of no more rows stands whole on one page; a longer one begins with as many.</summary>
    private const int KeptTogether = 8;

    private static readonly Stroke Rule = new(0.12, 0.5);
    private static readonly Stroke Line = new(0.3);

    /// <summary>Widths of the columns: as wide as head and cells need; what is left is shared.</summary>
    private double[] Widths(IReadOnlyList<IReadOnlyList<string>> rows, double total)
    {
        double[] least = [.. columns.Select((c, i) => (2 * PadMm) + Math.Max(
            c.Head.Split('\n').Max(h => TextMeasure.AdvanceMm(h, TextMm, FontWeight.Bold)),
            c.IsBox ? BoxMm : rows.Select(r => TextMeasure.AdvanceMm(r[i], TextMm, c.Weight)).DefaultIfEmpty(0).Max()))];
        var spare = (total - least.Sum()) / columns.Count;
        return [.. least.Select(w => w + spare)];
    }

    public void Draw(PageFlow flow, IReadOnlyList<IReadOnlyList<string>> rows)
    {
        var widths = Widths(rows, flow.Column.Width);
        var headLines = columns.Max(c => c.Head.Split('\n').Length);
        var isFirst = true;
        flow.Keep(KeptMm(rows.Count));
        foreach (var row in rows)
        {
            if (isFirst || flow.Left < rowMm)
            {
                if (!isFirst)
                    flow.NewPage();
                Head(flow, widths, headLines);
                isFirst = false;
            }

            var box = flow.Take(rowMm);
            var x = box.Left;
            for (var i = 0; i < columns.Count; i++)
            {
                if (columns[i].IsBox)
                    flow.Draw(new PathElement(PathSteps.Rectangle(Box.About(new(x + (widths[i] / 2), box.Centre.Y), BoxMm, BoxMm)), Line));
                else
                    flow.Draw(Cell(row[i], columns[i], x, widths[i], box.Centre.Y - (0.34 * TextMm), columns[i].Weight));
                x += widths[i];
            }

            flow.Draw(new PathElement(PathSteps.Line(new(box.Left, box.Lower), new(box.Right, box.Lower)), Rule));
        }
    }

    /// <summary>Height of what stands together on one page of a table of so many rows, in millimetres.</summary>
    public double KeptMm(int rows) => HeadMm(columns.Max(c => c.Head.Split('\n').Length)) + (Math.Min(rows, KeptTogether) * rowMm);

    private static double HeadMm(int lines) => (lines * HeadLineMm) + 1.5;

    private void Head(PageFlow flow, double[] widths, int lines)
    {
        var box = flow.Take(HeadMm(lines));
        var x = box.Left;
        for (var i = 0; i < columns.Count; i++)
        {
            var words = columns[i].Head.Split('\n');
            for (var k = 0; k < words.Length; k++)
                flow.Draw(Cell(words[k], columns[i], x, widths[i], box.Lower + 1.6 + (HeadLineMm * (words.Length - 1 - k)), FontWeight.Bold));
            x += widths[i];
        }

        flow.Draw(new PathElement(PathSteps.Line(new(box.Left, box.Lower), new(box.Right, box.Lower)), Line));
    }

    private static TextElement Cell(string text, TableColumn column, double x, double width, double y, FontWeight weight)
    {
        var align = column.IsBox ? TextAlign.Centre : column.Align;
        var at = align switch
        {
            TextAlign.Left => x + PadMm,
            TextAlign.Right => x + width - PadMm,
            _ => x + (width / 2),
        };
        return new(text, new(at, y), TextMm, weight, align);
    }
}
