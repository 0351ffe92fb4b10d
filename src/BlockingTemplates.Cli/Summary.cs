using System.Globalization;
using BlockingTemplates.Drawing.Comparing;
using BlockingTemplates.Drawing.Guides;
using BlockingTemplates.Engine;
using BlockingTemplates.Engine.Measure;
using Spectre.Console;

namespace BlockingTemplates.Cli;

/// <summary>Tells in a small table what was planned, and where each file lies.</summary>
internal static class Summary
{
    public static void Write(IReadOnlyList<PlannedPart> parts, IReadOnlyList<string> files, TextWriter output)
    {
        if (parts.Count == 1)
            Write(parts[0].Plan, output);
        else
            WriteSeveral(parts, output);
        foreach (var file in files)
            output.WriteLine(file);
    }

    /// <summary>One column for each part, as the comparison of sizes has them.</summary>
    private static void WriteSeveral(IReadOnlyList<PlannedPart> parts, TextWriter output)
    {
        var units = parts[0].Plan.Project.Units;
        var table = new Table().Border(TableBorder.Ascii).AddColumn(Markup.Escape(parts[0].Plan.Project.Title));
        foreach (var part in parts)
            table.AddColumn(new TableColumn(Markup.Escape(part.Name)).RightAligned());
        foreach (var row in Comparison.Of(parts).Where(r => r.Measure != ComparedMeasure.Length || !r.Name.Contains(" edge, ", StringComparison.Ordinal)))
            table.AddRow([Markup.Escape(ComparedWords.Name(row, units)), .. row.Values.Select(v => ComparedWords.Figure(row.Measure, v, units))]);
        On(output).Write(table);
    }

    private static void Write(Plan plan, TextWriter output)
    {
        var units = plan.Project.Units;
        string Say(double mm) => LengthWords.Of(Length.FromMillimetres(mm), units);
        var table = new Table().Border(TableBorder.Ascii).HideHeaders().AddColumns("what", "planned");
        void Row(string what, string planned) => table.AddRow(Markup.Escape(what), Markup.Escape(planned));
        Row("piece", plan.Project.Title.Length > 0 ? plan.Project.Title : plan.Project.Kind.Shape);
        Row("mats", string.Create(CultureInfo.InvariantCulture, $"{plan.Mats.Mats.Count} of {Say(plan.Mats.PitchX)} by {Say(plan.Mats.PitchY)}, {plan.Mats.Columns} across, {plan.Mats.Rows} up{(TurnWords.Of(plan) is { } turned ? $", {turned}" : "")}"));
        Row("pins", plan.Pins.Marks.Count.ToString(CultureInfo.InvariantCulture));
        foreach (var guide in plan.Guides)
            Row($"sheets of {guide.Paper.Name}", string.Create(CultureInfo.InvariantCulture, $"{guide.Count}{(guide.Layout.JoiningCount > 0 ? $" and {guide.Layout.JoiningCount} to join them" : "")}, {(guide.Layout.Landscape ? "landscape" : "portrait")}{(guide.Half is { } half ? $", half a guide (the whole takes {half.WholeCount})" : "")}"));
        foreach (var edge in plan.Pins.Edges)
            Row($"{edge.Name} edge", edge.Stretch is { } stretch ? string.Create(CultureInfo.InvariantCulture, $"{Say(edge.PinnedMm)}{edge.Treatment.AlongWords}, {(stretch < 0 ? "shrinks" : "stretched")} by {100 * Math.Abs(stretch):0.#} %") : Say(edge.PinnedMm) + edge.Treatment.AlongWords);
        if (plan.Pins.LayLine is not null)
            Row("largest pull", Say(plan.Pins.Marks.Max(m => m.Pull!.Value.Length)));
        if (plan.Cloth is { } cloth)
        {
            if (cloth.LargestPullInTurnMm(plan.Pins.Marks) is { } turn)
                Row("largest pull in turn", Say(turn));
            Row("worst scallop", cloth.WorstScallopMm is { } worst ? Say(worst) : "not determined: the edges are slack");
        }

        On(output).Write(table);
    }

    private static IAnsiConsole On(TextWriter output) => AnsiConsole.Create(new AnsiConsoleSettings { Out = new AnsiConsoleOutput(output), Ansi = AnsiSupport.Detect });
}
