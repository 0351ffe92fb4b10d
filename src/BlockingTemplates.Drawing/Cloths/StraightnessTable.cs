using System.Globalization;
using BlockingTemplates.Drawing.Pages;
using BlockingTemplates.Drawing.Writing;
using BlockingTemplates.Engine;
using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Pins.Settling;

namespace BlockingTemplates.Drawing.Cloths;

/// <summary>How straight every edge lies: worst gap, its place, kept or not, slack gaps named.</summary>
internal static class StraightnessTable
{
    private const int MostNamed = 12;

    public static void Draw(Plan plan, ClothPlan cloth, PageFlow flow)
    {
        flow.Heading($"How straight the edges lie ({ClothWords.Asked(plan)} asked for)");
        var units = plan.Project.Units;
        string Number(double mm) => LengthWords.Number(Length.FromMillimetres(mm), units);
        TableColumn[] columns =
        [
            new("Edge", TextAlign.Left, FontWeight.Bold), new("Marks"), new($"Gaps\n({LengthWords.UnitOf(units)})"), new("Farthest off\nits line"), new("Between\nmarks", TextAlign.Left), new("Kept", TextAlign.Left),
        ];
        var rows = cloth.Edges.Select((hold, i) => (Hold: hold, Index: i)).Where(e => e.Hold is not null).Select(e => (IReadOnlyList<string>)
        [
            plan.Pins.Edges[e.Index].Name,
            plan.Pins.Marks.Count(m => m.Edge == e.Index).ToString(CultureInfo.InvariantCulture),
            Number(e.Hold!.NarrowestMm) == Number(e.Hold.WidestMm) ? Number(e.Hold.WidestMm) : $"{Number(e.Hold.NarrowestMm)} to {Number(e.Hold.WidestMm)}",
            e.Hold.Worst is { } worst ? ClothWords.Scallop(plan, worst) : "",
            e.Hold.Worst is { } gap ? string.Create(CultureInfo.InvariantCulture, $"{gap.From} and {gap.To}") : "",
            e.Hold.Worst is null ? "not determined" : !e.Hold.IsKept ? "no" : e.Hold.Slack.Count > 0 ? "yes, but slack gaps" : "yes",
        ]).ToList();
        new Table(columns).Draw(flow, rows);
        flow.Gap(1.5);
        foreach (var (hold, i) in cloth.Edges.Select((h, i) => (h, i)).Where(e => e.h is { Slack.Count: > 0 }))
        {
            flow.Point($"Slack on the {PlaceWords.EdgeWords(plan.Pins.Edges[i].Name)}, line not determined: {string.Join("; ", Runs(hold!.Slack).Select(Words))}.");
        }
    }

    /// <summary>Gaps that follow one another, as their marks in a row.</summary>
    private static List<List<int>> Runs(IReadOnlyList<MarkGap> gaps)
    {
        List<List<int>> runs = [];
        foreach (var gap in gaps)
        {
            if (runs.Count > 0 && runs[^1][^1] == gap.From)
                runs[^1].Add(gap.To);
            else
                runs.Add([gap.From, gap.To]);
        }

        return runs;
    }

    private static string Words(List<int> run)
    {
        string Said(int mark) => mark.ToString(CultureInfo.InvariantCulture);
        return run.Count <= MostNamed
            ? $"between marks {string.Join(", ", run.SkipLast(1).Select(Said))} and {Said(run[^1])}"
            : $"from mark {Said(run[0])} over {Said(run[1])}, {Said(run[2])} and so on to {Said(run[^1])}";
    }
}
