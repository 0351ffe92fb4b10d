using BlockingTemplates.Drawing.Guides;
using BlockingTemplates.Drawing.Pages;
using BlockingTemplates.Drawing.Writing;
using BlockingTemplates.Engine;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Drawing.MatCharts;

/// <summary>Marks by their place on each mat, at reduced scale on a squared grid: enough to pin to size with nothing else printed.</summary>
public static class MatChart
{
    private const int Across = 2;
    private const double GutterMm = 6;
    private const double MarginMm = 11;

    /// <summary>The document: the mats that hold marks, four or more a page, nearest the maker first.</summary>
    public static Document Draw(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var paper = ReadingPaper.For(plan.Guides[0].Paper, plan.Project.Units);
        var flow = new PageFlow(paper.Short.Millimetres, paper.Long.Millimetres, "mats", "Mat chart", MarginMm);
        flow.Paragraph($"Mat chart: {GuideDocument.Title(plan)}", TextStyle.Heading);
        flow.Paragraph("Every mark by its mat: number and round, how far from the mat's left side and from its lower side (the side nearest you).", TextStyle.Small);
        if (HoldWords.HasMoreThanPins(plan))
            flow.Paragraph("After the round: c, a comb, its middle at that place, drawn as a bar; w, a pin that holds a wire.", TextStyle.Small);
        var width = (flow.Column.Width - ((Across - 1) * GutterMm)) / Across;
        var pictures = plan.Mats.Mats.Select(m => new MatPicture(plan, m, width)).Where(p => p.HasMarks).ToList();
        var empty = plan.Mats.Mats.Count - pictures.Count;
        if (empty > 0)
            flow.Paragraph(FormattableString.Invariant($"{empty} more mats carry cloth or border but no mark; the mat map of the guide and the overview show them."), TextStyle.Small);
        foreach (var row in pictures.Chunk(Across))
        {
            flow.Gap(2);
            var box = flow.Take(row.Max(p => p.HeightMm));
            for (var i = 0; i < row.Length; i++)
                flow.Draw(row[i].Draw(new Point(box.Left + (i * (width + GutterMm)), box.Upper)));
        }

        return new(GuideDocument.Title(plan), flow.Finish());
    }
}
