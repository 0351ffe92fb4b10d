using BlockingTemplates.Drawing.Pages;
using BlockingTemplates.Engine;

namespace BlockingTemplates.Drawing.Guides;

/// <summary>The whole guide on one page, for a print shop or a projector.</summary>
public static class PlotDocument
{
    /// <summary>The document: one page, or the fewest where one would be too long.</summary>
    public static Document Draw(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var picture = new GuidePicture(plan, plan.Plot);
        var sheets = plan.Plot.Layout.Sheets;
        return new(GuideDocument.Title(plan), [.. sheets.Select(s => new SheetPage(plan, plan.Plot, s).Draw(picture, sheets.Count > 1 && s == sheets[0] ? "Pages" : null))]);
    }
}
