using BlockingTemplates.Web.Guarding;
using BlockingTemplates.Web.Routes;
using Microsoft.AspNetCore.Http;

namespace BlockingTemplates.Web.Sharing;

/// <summary>Lets other screens read and write nothing until they have said the code.</summary>
/// <param name="codes">The code and the passes given for it.</param>
internal sealed class ShareGuard(OneTimeCode codes)
{
    /// <summary>The cookie that holds a screen's pass.</summary>
    public const string Cookie = "blocking-pass";

    // What a screen needs to ask for the code: nothing of the maker's.
    private static readonly string[] Open = ["/join", "/join.js", "/app.css", "/fonts/AtkinsonHyperlegibleNext_400Regular.ttf", "/fonts/AtkinsonHyperlegibleNext_700Bold.ttf"];

    public Task Check(HttpContext context, RequestDelegate next)
    {
        var request = context.Request;
        var path = request.Path.Value ?? "";
        if (OwnHosts.IsLocal(context.Connection.RemoteIpAddress, request.Host.Host) || codes.Holds(request.Cookies[Cookie]))
            return next(context);
        if ((HttpMethods.IsGet(request.Method) && Open.Contains(path)) || (HttpMethods.IsPost(request.Method) && path == "/api/join"))
            return next(context);
        if (path != "/")
            return Reply.Refuse(context, StatusCodes.Status401Unauthorized, "Say the code first that the other screen shows.");
        context.Response.Redirect("/join");
        return Task.CompletedTask;
    }
}
