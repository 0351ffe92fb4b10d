using System.Globalization;
using BlockingTemplates.Drawing.Cautions;
using BlockingTemplates.Drawing.Cloths;
using BlockingTemplates.Drawing.Overviews;
using BlockingTemplates.Drawing.Pages;
using BlockingTemplates.Drawing.Writing;
using BlockingTemplates.Engine;
using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Sheets;

namespace BlockingTemplates.Drawing.Guides;

/// <summary>The cover: picture, counts, how-to, notes and cautions.</summary>
internal static class CoverPages
{
    // A small picture has room for the first rounds; the mat map and the overview have all numbers.
    private const int NumberedRounds = 4;
    private const double LeastPictureMm = 80;
    private const double MostPictureMm = 125;

    public static IReadOnlyList<Page> Draw(Plan plan, Guide guide, Paper reading)
    {
        var project = plan.Project;
        var flow = new PageFlow(reading.Short.Millimetres, reading.Long.Millimetres, "cover", "Cover");
        flow.Paragraph(GuideDocument.Title(plan), TextStyle.Title);
        flow.Draw(OverviewPicture.In(plan, flow.Take(Math.Clamp(OverviewPicture.HeightFor(plan, flow.Column.Width), LeastPictureMm, MostPictureMm)), NumberedRounds));
        flow.Gap(2);
        Counts(plan, guide, flow);
        flow.Heading($"How to use it: {HowTo.Name(project.Sheets.Use)}");
        foreach (var (line, i) in HowTo.Of(project.Sheets.Use).Select((l, i) => (l, i)))
            flow.Step(i + 1, line);
        if (guide.Half is not null)
        {
            foreach (var line in HowTo.HalfGuide)
                flow.Point(line);
        }

        if (HowTo.Setting(project.Set, project.Fabric.Fibre) is { } setting)
            flow.Point(setting);
        if (project.Notes.Length > 0)
        {
            flow.Heading("Your notes");
            flow.Paragraph(project.Notes, TextStyle.Body);
        }

        flow.Heading("Cautions");
        foreach (var caution in CautionRules.For(project.Fabric.Fibre, project.Set, project.Sheets.Use))
            flow.Point(caution);
        if (plan.Notes.Count > 0)
        {
            flow.Heading("Notes on this plan");
            foreach (var note in plan.Notes)
                flow.Point($"{note.What} {note.Do}");
        }

        return flow.Finish();
    }

    private static void Counts(Plan plan, Guide guide, PageFlow flow)
    {
        var units = plan.Project.Units;
        string Say(double mm) => LengthWords.Of(Length.FromMillimetres(mm), units);
        var saved = guide.Half is { } half ? FormattableString.Invariant($" (half a guide; the whole takes {half.WholeCount}, so {half.WholeCount - guide.Layout.Sheets.Count} are saved)") : "";
        var joining = guide.Layout.JoiningCount > 0 ? FormattableString.Invariant($" and {guide.Layout.JoiningCount} to join them") : "";
        flow.Paragraph(FormattableString.Invariant($"{plan.Pins.Marks.Count} pins, {plan.Mats.Mats.Count} mats ({plan.Mats.Columns} by {plan.Mats.Rows}, {Say(plan.Mats.PitchX)} by {Say(plan.Mats.PitchY)} each), {guide.Count} sheets of {guide.Paper.Name}{joining}{saved}."), TextStyle.Strong);
        if (plan.Pins.LayLine is null)
            flow.Paragraph("The unblocked piece was not measured: this guide has no lay line, no pulls and no edge strips.", TextStyle.Body);
        foreach (var (edge, i) in plan.Pins.Edges.Select((e, i) => (e, i)))
        {
            var words = $"{edge.Name} edge: {Say(edge.PinnedMm)} pinned{edge.Treatment.AlongWords}";
            if (edge is { UnblockedMm: { } unblocked, Stretch: { } stretch })
                words += string.Create(CultureInfo.InvariantCulture, $", {Say(unblocked)} unblocked, {(stretch < 0 ? "shrinks" : "stretched")} by {100 * Math.Abs(stretch):0.#} %");
            if (plan.Cloth is { } cloth)
                words += ClothWords.Hold(plan, cloth, i) is { } hold ? $"; {hold}" : "";
            else if (edge.MayDipMm is { } dip)
                words += dip < 0.5 ? ", straight between pins" : $", may dip by up to {Say(dip)} between pins";
            flow.Point(words);
        }

        if (plan.Cloth is not { } known)
            return;
        flow.Point($"{ClothWords.Kept(plan)} More under \"How the cloth lies\".");
        if (known.IsBestSoFar)
            flow.Point("The time for computing was up: what is told of the cloth is the best found so far.", TextStyle.Strong);
        if (ClothWords.Ends(plan, known) is { } ends)
            flow.Point(ends);
    }
}
