using BlockingTemplates.Drawing.Pages;
using BlockingTemplates.Drawing.Writing;
using BlockingTemplates.Engine;
using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Shapes;
using BlockingTemplates.Engine.Sheets;

namespace BlockingTemplates.Drawing.Guides;

/// <summary>Page 1: bars to measure along the paper's short and long side, to print alone first. Never corrected.</summary>
internal static class PrinterCheckPage
{
    private const double TickMm = 3;

    public static Page Draw(Plan plan, Guide guide)
    {
        var paper = guide.Paper;
        double width = paper.Short.Millimetres, height = paper.IsRoll ? CheckBars.RollPieceMm : paper.Long.Millimetres;
        var bars = CheckBars.Of(paper);
        var units = plan.Project.Units;
        string shortBar = Say(bars.ShortMm, units), longBar = Say(bars.LongMm, units);
        // The long bar runs down the left side, the short one along the lower side; the words keep clear of both.
        var corner = new Point((width - bars.ShortMm) / 2, (height - bars.LongMm) / 2);
        var flow = new PageFlow(width, height, "check", "Printer check", Math.Max(18, corner.X + 8));
        flow.Paragraph("Printer check", TextStyle.Title);
        flow.Paragraph($"Print this page alone first, on {paper.Name}, at \"actual size\" or 100 %, not \"fit to page\".", TextStyle.Body);
        flow.Gap(2);
        flow.Paragraph($"Measure both bars with a ruler, from the outer side of one end line to the same side of the other. Along the short side it should be {shortBar}, along the long side {longBar}.", TextStyle.Body);
        flow.Heading("What to do then");
        flow.Point("Both within half a millimetre: print the rest.");
        flow.Point("A little off: write what you measured into the project file, such as \"measured\": [\"149.5 mm\", \"239 mm\"] under \"sheets\", or give it to the plan, such as --measured 149.5x239, and plan again: short side first. The guide then makes up for it.");
        flow.Point("Both 2 to 8 % short by the same factor: the printer fits the page. Choose \"actual size\" and print this page again.");
        flow.Point("Use the same printer, paper and tray for all sheets.");
        if (guide.Check != PrinterCheck.True)
            flow.Paragraph(FormattableString.Invariant($"This guide is corrected for a printer that prints {100 * guide.Check.AlongShort:0.00} % along the short side and {100 * guide.Check.AlongLong:0.00} % along the long side. This page is not: it should measure as before."), TextStyle.Strong);
        flow.Draw(Bar(corner, new(bars.ShortMm, 0), shortBar));
        flow.Draw(Bar(corner, new(0, bars.LongMm), longBar));
        return flow.Finish()[0];
    }

    private static string Say(double mm, LengthUnit units) =>
        units == LengthUnit.Inches ? FormattableString.Invariant($"{mm:0} mm ({LengthWords.Of(Length.FromMillimetres(mm), units)})") : FormattableString.Invariant($"{mm:0} mm");

    private static IEnumerable<Element> Bar(Point from, Vector along, string words)
    {
        var isUpright = along.Y > 0;
        var tick = TickMm * (isUpright ? new Vector(-1, 0) : new Vector(0, -1));
        var to = from + along;
        yield return new PathElement(PathSteps.Line(from, to), GuideInk.Scale);
        yield return new PathElement(PathSteps.Line(from, from + tick), GuideInk.Scale);
        yield return new PathElement(PathSteps.Line(to, to + tick), GuideInk.Scale);
        var middle = from.Toward(to, 0.5) + (isUpright ? new Vector(-1.5, 0) : new Vector(0, 1.5));
        yield return new TextElement(words, middle, 4, FontWeight.Bold, TextAlign.Centre, isUpright ? 90 : 0);
    }
}
