using System.Globalization;
using BlockingTemplates.Engine;
using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Pins;

namespace BlockingTemplates.Drawing.Guides;

/// <summary>One wire of a plan in words.</summary>
/// <param name="Number">Its number.</param>
/// <param name="Edge">Its edge's name.</param>
/// <param name="Length">Its length.</param>
/// <param name="From">Where it enters the edge: along the pinned edge, and its stitch or row.</param>
/// <param name="To">Where it leaves it.</param>
/// <param name="Through">How many stitches or rows it goes through; empty if not known.</param>
/// <param name="MaySag">How far it may lie off the edge between its pins.</param>
public sealed record WireWords(string Number, string Edge, string Length, string From, string To, string Through, string MaySag)
{
    /// <summary>Every wire of a plan.</summary>
    public static IReadOnlyList<WireWords> Of(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var units = plan.Project.Units;
        string Say(double mm) => LengthWords.Of(Engine.Measure.Length.FromMillimetres(mm), units);
        return [.. plan.Pins.Wires.Select(w =>
        {
            var edge = plan.Pins.Edges[w.Edge];
            return new WireWords(
                w.Number.ToString(CultureInfo.InvariantCulture), edge.Name, Say(w.LengthMm), Place(w.FromMm, w.FromCount, edge, Say), Place(w.ToMm, w.ToCount, edge, Say),
                w.Picked is { } picked ? string.Create(CultureInfo.InvariantCulture, $"{picked} {Counted(edge.Treatment.Of, picked)}") : "", Say(Math.Abs(w.SagMm.Most)));
        })];
    }

    private static string Counted(CountedIn of, int count) => (of, count) switch
    {
        (CountedIn.Rows, 1) => "row",
        (CountedIn.Rows, _) => "rows",
        (_, 1) => "st",
        _ => "sts",
    };

    private static string Place(double mm, double? count, EdgePlan edge, Func<double, string> say) =>
        count is { } at ? string.Create(CultureInfo.InvariantCulture, $"{say(mm)} ({(edge.Treatment.Of == CountedIn.Rows ? "row" : "st")} {at:0.#})") : say(mm);
}
