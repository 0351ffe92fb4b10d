using System.Globalization;
using BlockingTemplates.Drawing.Pages;
using BlockingTemplates.Drawing.Writing;
using BlockingTemplates.Engine;
using BlockingTemplates.Engine.Pins.Settling;

namespace BlockingTemplates.Drawing.Cloths;

/// <summary>The places where the pinning may start, and how hard the hardest pull is from each.</summary>
internal static class AnchorTable
{
    public static void Draw(Plan plan, ClothPlan cloth, PageFlow flow)
    {
        if (cloth.Anchors.Count < 2)
            return;
        flow.Heading("Where to start");
        var taken = plan.Project.Pins.Anchor is null ? "taken in this plan" : "taken, as asked for";
        TableColumn[] columns = [new("Start", TextAlign.Left, FontWeight.Bold), new("Hardest pull on a pin when it is set,\nof the hardest here"), new("", TextAlign.Left)];
        new Table(columns).Draw(flow, [.. cloth.Anchors.Select(a => (IReadOnlyList<string>)
            [a.Anchor, string.Create(CultureInfo.InvariantCulture, $"{100 * a.ForceShare:0} %"), a.IsTaken ? taken : ""])]);
        if (!cloth.Anchors.Any(a => a.IsTaken))
            flow.Paragraph("This plan starts at none of them, as asked for.", TextStyle.Small);
        flow.Gap(1.5);
    }
}
