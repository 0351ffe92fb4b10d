using System.Text.Json;
using BlockingTemplates.Web.Answers;
using BlockingTemplates.Web.Desk;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;

namespace BlockingTemplates.Web.Routes;

/// <summary>Tells listening screens of every change (server-sent events).</summary>
/// <param name="copies">Finds the working copy.</param>
/// <param name="stopping">Set when the program ends, which ends the listening.</param>
internal sealed class EventRoutes(CopyRoutes copies, CancellationToken stopping)
{
    private static readonly TimeSpan Quiet = TimeSpan.FromSeconds(15);

    /// <summary>Serves them.</summary>
    public void Map(IEndpointRouteBuilder routes) => routes.MapGet("/api/copies/{id}/events", context => copies.With(context, copy => Tell(context, copy)));

    private async Task Tell(HttpContext context, WorkingCopy copy)
    {
        using var ended = CancellationTokenSource.CreateLinkedTokenSource(context.RequestAborted, stopping);
        context.Response.ContentType = "text/event-stream";
        context.Response.Headers.CacheControl = "no-store";
        try
        {
            while (!ended.IsCancellationRequested)
            {
                var next = copy.Changed;
                await context.Response.WriteAsync($"data: {JsonSerializer.Serialize(Now(copy), PageJson.Default.ChangeAnswer)}\n\n", ended.Token).ConfigureAwait(false);
                await context.Response.Body.FlushAsync(ended.Token).ConfigureAwait(false);
                await Task.WhenAny(next, Task.Delay(Quiet, ended.Token)).ConfigureAwait(false);
            }
        }
        catch (OperationCanceledException)
        {
            // The screen went away or the program ends.
        }
    }

    private static ChangeAnswer Now(WorkingCopy copy)
    {
        var (latest, progress) = (copy.Latest, copy.Progress);
        return new(copy.Text.Version, latest?.Version, latest?.Stage, progress?.Part, progress?.Words, copy.Pins);
    }
}
