using System.Globalization;
using BlockingTemplates.Drawing.Cautions;
using BlockingTemplates.Drawing.Guides;
using BlockingTemplates.Drawing.Overviews;
using BlockingTemplates.Drawing.Pages;
using BlockingTemplates.Engine;
using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Pins;
using BlockingTemplates.Engine.Projects.Sections;
using BlockingTemplates.Engine.Shapes;
using BlockingTemplates.Engine.Sheets;
using BlockingTemplates.Output.Packets;

namespace BlockingTemplates.Web.Answers;

/// <summary>Puts a plan into the page's words and pictures.</summary>
internal static class PlanAnswering
{
    /// <summary>A pull shorter than this has no direction that one could see.</summary>
    private const double LeastPullMm = 0.5;

    /// <summary>One of the plans of a project.</summary>
    public static PlanAnswer Of(IReadOnlyList<PlannedPart> parts, int part)
    {
        var plan = parts[part].Plan;
        var view = PlanView.Of(plan);
        var units = plan.Project.Units;
        string Say(double mm) => LengthWords.Of(Length.FromMillimetres(mm), units);
        return new(
            parts[part].Name,
            plan.Project.Title,
            Answering.Svg(view.Page, GuideDocument.Title(plan)),
            view.Page.WidthMm,
            view.Page.HeightMm,
            [.. view.Page.Content.OfType<LayerElement>().Select(l => l.Layer.Name)],
            plan.Mats.Mats.Count,
            string.Create(CultureInfo.InvariantCulture, $"{plan.Mats.Columns} across, {plan.Mats.Rows} up, each {Say(plan.Mats.PitchX)} by {Say(plan.Mats.PitchY)}{(TurnWords.Of(plan) is { } turned ? $", {turned}" : "")}"),
            plan.Pins.Marks.Count,
            plan.Pins.LayLine is null ? null : Say(plan.Pins.Marks.Max(m => m.Pull?.Length ?? 0)),
            Scallop(plan) is { } mm ? Say(mm) : null,
            plan.Cloth is not null,
            [.. plan.Guides.Select(Guide)],
            [.. plan.Pins.Edges.Select((e, i) => Edge(e, plan.Pins.Marks.Count(m => m.Edge == i), Say))],
            [.. plan.Supplies.Select(s => new SupplyAnswer(HoldWords.Kind(s.Kind), HoldWords.Name(s, units), s.LayOut, s.Spare, s.Owned, s.Buy))],
            WireWords.Of(plan),
            [.. AdviceWords.Of(plan).Zip(plan.Advice, (words, a) => new AdviceAnswer(words, Words.For(a.Suggested), plan.Pins.Edges[a.Edge].Treatment.Hold == a.Suggested))],
            AdviceWords.CountedFor(plan),
            AdviceWords.Star(plan),
            PartFiles.Names(parts),
            CautionRules.For(plan.Project.Fabric.Fibre, plan.Project.Set, plan.Project.Sheets.Use));
    }

    /// <summary>The marks of one of the plans, for pinning.</summary>
    public static IReadOnlyList<PinAnswer> Marks(Plan plan)
    {
        var (view, units) = (PlanView.Of(plan), plan.Project.Units);
        return [.. plan.Pins.Marks.Select(m => Pin(plan, m, view, mm => LengthWords.Of(Length.FromMillimetres(mm), units)))];
    }

    private static GuideAnswer Guide(Guide guide)
    {
        var bars = CheckBars.Of(guide.Paper);
        return new(guide.Paper.Name, guide.Count, guide.Layout.JoiningCount, guide.Layout.Landscape, bars.ShortMm, bars.LongMm);
    }

    private static EdgeAnswer Edge(EdgePlan edge, int pins, Func<double, string> say) => new(
        edge.Name,
        say(edge.FinishedMm),
        say(edge.PinnedMm),
        edge.UnblockedMm is { } unblocked ? say(unblocked) : null,
        edge.Stretch is { } stretch ? string.Create(CultureInfo.InvariantCulture, $"{100 * stretch:+0.#;-0.#;0} %") : null,
        pins,
        edge.SpacingRule);

    private static PinAnswer Pin(Plan plan, Mark mark, PlanView view, Func<double, string> say)
    {
        var seat = plan.Mats.Seats[mark.Number - 1];
        var at = view.Placing.On(mark.At);
        return new(
            mark.Number,
            HoldWords.Kind(mark.Kind),
            mark.Round,
            MarkForms.Name(mark.Round, plan.Pins.Marks[^1].Round),
            Where(plan, mark),
            Math.Round(at.X, 2),
            Math.Round(view.Page.HeightMm - at.Y, 2),
            mark.Pull is { } pull ? Pull(pull, false, say) : null,
            plan.Cloth is { } cloth && mark.Number <= cloth.InTurn.Count ? Pull(mark.At - cloth.InTurn[mark.Number - 1].Rest, cloth.InTurn[mark.Number - 1].IsApproximate, say) : null,
            seat.Mat,
            say(seat.OnMat.X),
            say(seat.OnMat.Y));
    }

    /// <summary>Worst scallop: what the cloth does where it was computed, else what it may do at most.</summary>
    private static double? Scallop(Plan plan) => plan.Cloth is { } cloth ? cloth.WorstScallopMm : plan.Pins.Edges.Max(e => e.MayDipMm);

    private static PullAnswer Pull(Vector pull, bool isApproximate, Func<double, string> say) => pull.Length > LeastPullMm
        ? new(say(pull.Length), PullWords.Direction(pull), Math.Round(Math.Atan2(pull.Y, pull.X) * 180 / Math.PI, 1), isApproximate)
        : new(say(pull.Length), null, null, isApproximate);

    private static string Where(Plan plan, Mark mark)
    {
        var edge = plan.Pins.Edges[mark.Edge];
        if (mark.IsCorner && plan.Pins.Pinned.Corners[mark.Edge].Name is { Length: > 0 } corner)
            return $"{corner}{(mark.Count is null ? "" : $", where the {edge.Name} edge starts")}";
        if (mark.Count is { } count && edge.Treatment.Count is { } all)
            return string.Create(CultureInfo.InvariantCulture, $"{(mark.Of == CountedIn.Rows ? "row" : "stitch")} {count:0.#} of {all} on the {edge.Name} edge");
        return string.Create(CultureInfo.InvariantCulture, $"{100 * mark.Fraction:0.#} % along the {edge.Name} edge");
    }
}
