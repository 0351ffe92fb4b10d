using BlockingTemplates.Drawing.Guides;
using BlockingTemplates.Drawing.Pages;
using BlockingTemplates.Drawing.Writing;
using BlockingTemplates.Engine;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Drawing.Comparing;

/// <summary>The sizes of a project side by side: their outlines one over the other, and a table.</summary>
public static class SizesDocument
{
    private const int MostAcross = 6;
    private const double PictureMm = 85;
    private static readonly double[] Dashes = [0, 4, 2, 1, 0.5];

    /// <summary>The document.</summary>
    /// <param name="parts">The parts, at least one.</param>
    public static Document Draw(IReadOnlyList<PlannedPart> parts)
    {
        ArgumentNullException.ThrowIfNull(parts);
        var plan = parts[0].Plan;
        var (project, paper) = (plan.Project, ReadingPaper.For(plan.Guides[0].Paper, plan.Project.Units));
        var title = project.Title.Length > 0 ? project.Title : "Blocking guide";
        var flow = new PageFlow(paper.Short.Millimetres, paper.Long.Millimetres, "sizes", "Sizes");
        flow.Paragraph($"{title}: sizes", TextStyle.Title);
        flow.Paragraph("The finished outlines, middle of the lower side on middle of the lower side; the pins, mats and sheets that each takes. Each size has a guide of its own in the folder of its name.", TextStyle.Body);
        flow.Gap(2);
        Outlines([.. parts.Where(p => !p.IsMirrored)], flow);
        foreach (var some in parts.Chunk(MostAcross))
        {
            flow.Gap(4);
            TableColumn[] columns = [new("", TextAlign.Left), .. some.Select(p => new TableColumn(p.Name.Replace(", ", ",\n", StringComparison.Ordinal)))];
            new Table(columns).Draw(flow, [.. Comparison.Of(some).Select(r => (IReadOnlyList<string>)[ComparedWords.Name(r, project.Units), .. r.Values.Select(v => ComparedWords.Figure(r.Measure, v, project.Units))])]);
        }

        return new($"{title}: sizes", flow.Finish());
    }

    /// <summary>Outlines to one scale, each in its own dash, with a key.</summary>
    private static void Outlines(IReadOnlyList<PlannedPart> parts, PageFlow flow)
    {
        List<(PlannedPart Part, IReadOnlyList<Point> Ring)> rings = [.. parts.Select(p => (p, Stood(p.Plan.Piece.Finished)))];
        var all = Box.Around(rings.SelectMany(r => r.Ring));
        var scale = Math.Min(PictureMm / all.Height, (flow.Column.Width - 50) / all.Width);
        var box = flow.Take(scale * all.Height);
        var key = box.Upper - 3;
        for (var i = 0; i < rings.Count; i++)
        {
            var dash = Dashes[i % Dashes.Length];
            var stroke = new Stroke(0.35, DashMm: dash == 0 ? null : [dash, dash == 4 ? 1.5 : dash]);
            Point On(Point p) => new(box.Left + 48 + (scale * (p.X - all.Left)), box.Lower + (scale * (p.Y - all.Lower)));
            flow.Draw(new PathElement(PathSteps.Polyline([.. rings[i].Ring.Select(On)], true), stroke));
            flow.Draw(new PathElement(PathSteps.Line(new(box.Left, key + 1), new(box.Left + 12, key + 1)), stroke));
            flow.Draw(new TextElement(rings[i].Part.Size, new(box.Left + 14, key), 3.6));
            key -= 5;
        }
    }

    private static IReadOnlyList<Point> Stood(Outline outline)
    {
        var ring = outline.Ring();
        var box = Box.Around(ring);
        var shift = new Vector(-(box.Left + box.Right) / 2, -box.Lower);
        return [.. ring.Select(p => p + shift)];
    }
}
