using System.Globalization;
using System.Text;
using BlockingTemplates.Drawing.MatCharts;
using BlockingTemplates.Web.Answers;
using BlockingTemplates.Web.Desk;
using BlockingTemplates.Web.Stages;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;

namespace BlockingTemplates.Web.Routes;

/// <summary>The pinning of a piece, and counting the pins back.</summary>
/// <param name="copies">Finds the working copy.</param>
internal sealed class PinRoutes(CopyRoutes copies)
{
    private const int MostStepBytes = 1000;

    /// <summary>Serves them.</summary>
    public void Map(IEndpointRouteBuilder routes)
    {
        routes.MapGet("/api/copies/{id}/pins", context => copies.With(context, copy => Tell(context, copy)));
        routes.MapPost("/api/copies/{id}/pins", context => copies.With(context, copy => Step(context, copy)));
        routes.MapGet("/api/copies/{id}/pins/{number}/mat", context => copies.With(context, copy => Mat(context, copy)));
    }

    private static int? PartOf(WorkingCopy copy, StageResult answer) => copy.Pins is { } pins && pins.Part < answer.Parts.Count ? pins.Part : null;

    private static async Task Tell(HttpContext context, WorkingCopy copy)
    {
        var answer = await copy.PinnedAnswerAsync(context.RequestAborted).ConfigureAwait(false);
        var (plan, marks) = answer is not null && PartOf(copy, answer) is { } part ? (PlanAnswering.Of(answer.Parts, part), PlanAnswering.Marks(answer.Parts[part].Plan)) : (null, null);
        await Reply.Json(context, new(copy.Pins, copy.ChangedSincePinning, plan, marks), PageJson.Default.PinningAnswer).ConfigureAwait(false);
    }

    private static async Task Step(HttpContext context, WorkingCopy copy)
    {
        if (await Reply.Read(context, PageJson.Default.PinStep, MostStepBytes).ConfigureAwait(false) is not { } step)
            return;
        if (step.Step == "begin")
        {
            if (await copy.FinalAnswerAsync(context.RequestAborted).ConfigureAwait(false) is not { } answer || step.Number < 0 || step.Number >= answer.Parts.Count)
            {
                await Reply.Refuse(context, StatusCodes.Status409Conflict, "The project has problems; there is no plan to pin by yet.").ConfigureAwait(false);
                return;
            }

            var pins = answer.Parts[step.Number].Plan.Pins;
            copy.BeginPinning(pins.Marks.Count, pins.Wires.Count, step.Number);
            await Tell(context, copy).ConfigureAwait(false);
        }
        else if (copy.Step(step.Step ?? "", step.Number) is { } next)
            await Reply.Json(context, new(next, copy.ChangedSincePinning, null, null), PageJson.Default.PinningAnswer).ConfigureAwait(false);
        else
            await Reply.Refuse(context, StatusCodes.Status400BadRequest, "There is no such step, or no such pin.").ConfigureAwait(false);
    }

    private static async Task Mat(HttpContext context, WorkingCopy copy)
    {
        var said = context.GetRouteValue("number") as string;
        if (await copy.PinnedAnswerAsync(context.RequestAborted).ConfigureAwait(false) is not { } answer || PartOf(copy, answer) is not { } part || !int.TryParse(said, NumberStyles.None, CultureInfo.InvariantCulture, out var number) || number < 1 || number > answer.Parts[part].Plan.Pins.Marks.Count)
            await Reply.Refuse(context, StatusCodes.Status404NotFound, "There is no such pin.").ConfigureAwait(false);
        else
            await Reply.File(context, $"mark-{number}.svg", "image/svg+xml", Encoding.UTF8.GetBytes(Answering.Svg(MatCloseUp.Draw(answer.Parts[part].Plan, number), "")), inline: true).ConfigureAwait(false);
    }
}
