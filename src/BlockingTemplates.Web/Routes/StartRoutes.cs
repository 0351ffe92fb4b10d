using System.Text;
using BlockingTemplates.Drawing.Forms;
using BlockingTemplates.Engine.Fabrics;
using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Sheets;
using BlockingTemplates.Web.Answers;
using BlockingTemplates.Web.Desk;
using BlockingTemplates.Web.Guarding;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;

namespace BlockingTemplates.Web.Routes;

/// <summary>What the page needs to begin: kinds of piece, papers, examples, the project file's schema.</summary>
internal static class StartRoutes
{
    /// <summary>Serves them.</summary>
    public static void Map(IEndpointRouteBuilder routes, bool share)
    {
        var schema = PageFiles.Resource(typeof(StartRoutes).Assembly, "blocking-project.schema.json");
        routes.MapGet("/api/start", context => Reply.Json(context, Start(share, OwnHosts.IsLocal(context.Connection.RemoteIpAddress, context.Request.Host.Host)), PageJson.Default.StartAnswer));
        routes.MapGet("/api/schema", context => Reply.File(context, "blocking-project.schema.json", "application/schema+json", schema, inline: true));
        routes.MapGet("/api/kinds/{shape}", context => context.GetRouteValue("shape") is string shape && PieceKinds.Find(shape) is { } kind
            ? Reply.File(context, $"{kind.Shape}.svg", "image/svg+xml", Encoding.UTF8.GetBytes(Answering.Svg(MeasuringPicture.Unblocked(kind, null).Page, kind.Shape)), inline: true)
            : Reply.Refuse(context, StatusCodes.Status404NotFound, "There is no such kind of piece."));
    }

    private static StartAnswer Start(bool share, bool isLocal) => new(
        [.. PieceKinds.All.Select(Kind)],
        [.. PaperCatalogue.All.Select(p => p.Name)],
        [.. FibreCatalogue.All.Select(f => f.Name)],
        [.. Examples.All.Select(e => new ExampleAnswer(e.Name, e.Title))],
        Answering.Units,
        share,
        isLocal);

    private static KindAnswer Kind(PieceKind kind) => new(
        kind.Shape,
        [.. kind.FinishedSizes.Select(Size)],
        [.. kind.UnblockedSizes.Select(Size)],
        kind.EdgeNames,
        kind.CornerNames,
        kind.GivenByCorners ? [] : kind.StraightEdges,
        kind.IsMeasuredBySides,
        kind.GivenByCorners,
        kind.TakesDiagonal);

    private static SizeAnswer Size(SizeName size) => new(size.Name, size.Words, size.HowToTake, size.IsAsked, size.InsteadOf);
}
