using Microsoft.AspNetCore.Http;

namespace BlockingTemplates.Web.Guarding;

/// <summary>Headers that keep the page to itself: nothing from another host, no script or style written into it, no frame round it.</summary>
internal static class SecurityHeaders
{
    /// <summary>What the page may load: its own files only.</summary>
    public const string ContentPolicy =
        "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self'; font-src 'self'; connect-src 'self'; form-action 'none'; base-uri 'none'; frame-ancestors 'none'";

    public static Task Add(HttpContext context, RequestDelegate next)
    {
        var headers = context.Response.Headers;
        headers.ContentSecurityPolicy = ContentPolicy;
        headers.XContentTypeOptions = "nosniff";
        headers.XFrameOptions = "DENY";
        headers["Referrer-Policy"] = "no-referrer";
        headers["Cross-Origin-Opener-Policy"] = "same-origin";
        headers["Cross-Origin-Resource-Policy"] = "same-origin";
        headers["Permissions-Policy"] = "camera=(), microphone=(), geolocation=()";
        headers.CacheControl = "no-store";
        return next(context);
    }
}
