using BlockingTemplates.Web.Answers;
using BlockingTemplates.Web.Guarding;
using BlockingTemplates.Web.Sharing;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;

namespace BlockingTemplates.Web.Routes;

/// <summary>Letting other screens of the home network in.</summary>
/// <param name="codes">The code.</param>
/// <param name="addresses">Addresses other screens reach the page by, without path.</param>
internal sealed class ShareRoutes(OneTimeCode codes, Func<IReadOnlyList<string>> addresses)
{
    private const int MostBytes = 1000;

    /// <summary>Serves it.</summary>
    public void Map(IEndpointRouteBuilder routes)
    {
        routes.MapGet("/api/share", Tell);
        routes.MapPost("/api/join", Join);
    }

    /// <summary>The address with the code in it, for a QR code; the code stands behind the #, which is never sent or logged.</summary>
    public static string JoinAddress(string address, string code) => $"{address}/join#{code}";

    private Task Tell(HttpContext context)
    {
        if (!OwnHosts.IsLocal(context.Connection.RemoteIpAddress, context.Request.Host.Host))
            return Reply.Refuse(context, StatusCodes.Status403Forbidden, "The code is shown on the screen where the program runs.");
        var (all, code) = (addresses(), codes.Code);
        var (size, path) = all.Count > 0 ? QrPicture.Of(JoinAddress(all[0], code)) : (0, "");
        return Reply.Json(context, new(all, code, size, path), PageJson.Default.ShareAnswer);
    }

    private async Task Join(HttpContext context)
    {
        if (await Reply.Read(context, PageJson.Default.JoinRequest, MostBytes).ConfigureAwait(false) is not { } said)
            return;
        if (codes.Enter(said.Code ?? "") is not { } pass)
        {
            await Reply.Refuse(context, StatusCodes.Status401Unauthorized, "That is not the code that the other screen shows now.").ConfigureAwait(false);
            return;
        }

        context.Response.Cookies.Append(ShareGuard.Cookie, pass, new() { HttpOnly = true, SameSite = SameSiteMode.Strict, Path = "/", IsEssential = true });
        context.Response.StatusCode = StatusCodes.Status204NoContent;
    }
}
