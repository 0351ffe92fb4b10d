using BlockingTemplates.Drawing.Cloths;
using BlockingTemplates.Drawing.Pages;
using BlockingTemplates.Engine;
using BlockingTemplates.Engine.Sheets;

namespace BlockingTemplates.Drawing.Guides;

/// <summary>The whole guide on one paper: printer check, cover, maps, what to lay out, table, how the cloth lies, strips, sheets.</summary>
public static class GuideDocument
{
    /// <summary>The document of one of a plan's guides.</summary>
    public static Document Draw(Plan plan, Guide guide)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(guide);
        var reading = ReadingPaper.For(guide.Paper, plan.Project.Units);
        var picture = new GuidePicture(plan, guide);
        return new(Title(plan),
        [
            PrinterCheckPage.Draw(plan, guide),
            .. CoverPages.Draw(plan, guide, reading),
            .. TapingMap.Draw(plan, guide, reading),
            .. MatMap.Draw(plan, reading),
            .. PinTable.Draw(plan, guide, reading),
            .. ClothPages.Draw(plan, reading),
            .. EdgeStrips.Draw(plan, guide, reading),
            .. guide.Layout.Sheets.Select((s, i) => new SheetPage(plan, guide, s).Draw(picture, i == 0 ? "Sheets" : null)),
        ]);
    }

    /// <summary>The maker's title, or a plain one where none was given, with the size and the piece where there are several.</summary>
    public static string Title(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var title = plan.Project.Title.Length > 0 ? plan.Project.Title : "Blocking guide";
        return plan.Project.Part.Length > 0 ? $"{title}: {plan.Project.Part}" : title;
    }
}
