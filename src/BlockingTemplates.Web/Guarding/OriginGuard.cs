using BlockingTemplates.Web.Routes;
using Microsoft.AspNetCore.Http;

namespace BlockingTemplates.Web.Guarding;

/// <summary>Refuses requests for a foreign host name, and those that another site's page makes.</summary>
/// <param name="hosts">The page's own host names.</param>
internal sealed class OriginGuard(OwnHosts hosts)
{
    public Task Check(HttpContext context, RequestDelegate next)
    {
        var request = context.Request;
        if (!request.Host.HasValue || !hosts.Has(request.Host.Host))
            return Reply.Refuse(context, StatusCodes.Status421MisdirectedRequest, "This page does not answer to that host name.");
        var origin = request.Headers.Origin.ToString();
        if (origin.Length > 0 && !string.Equals(origin, $"{request.Scheme}://{request.Host.Value}", StringComparison.OrdinalIgnoreCase))
            return Reply.Refuse(context, StatusCodes.Status403Forbidden, "Another site's page may not ask for this.");
        var site = request.Headers["Sec-Fetch-Site"].ToString();
        // A person may follow a link to the page from anywhere; all else comes from the page itself.
        var isVisit = HttpMethods.IsGet(request.Method) && request.Headers["Sec-Fetch-Mode"] == "navigate" && !request.Path.StartsWithSegments("/api", StringComparison.OrdinalIgnoreCase);
        if (site.Length > 0 && site is not ("same-origin" or "none") && !isVisit)
            return Reply.Refuse(context, StatusCodes.Status403Forbidden, "Another site's page may not ask for this.");
        return next(context);
    }
}
