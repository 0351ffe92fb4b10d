using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using BlockingTemplates.Output.Packets;
using BlockingTemplates.Web.Answers;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Http.Features;
using Microsoft.Net.Http.Headers;

namespace BlockingTemplates.Web.Routes;

/// <summary>Ways to answer a request, and to read its body.</summary>
internal static class Reply
{
    private const long ThrownAway = 10_000_000;
    private const int PartBytes = 16_384;

    /// <summary>Answers with a value.</summary>
    public static Task Json<T>(HttpContext context, T value, JsonTypeInfo<T> type, int status = StatusCodes.Status200OK)
    {
        context.Response.StatusCode = status;
        return context.Response.WriteAsJsonAsync(value, type, "application/json; charset=utf-8", context.RequestAborted);
    }

    /// <summary>Refuses, in words.</summary>
    public static Task Refuse(HttpContext context, int status, string what) => Json(context, new Refusal(what), PageJson.Default.Refusal, status);

    /// <summary>Answers with a file to be kept.</summary>
    public static async Task File(HttpContext context, string name, string type, ReadOnlyMemory<byte> bytes, bool inline = false)
    {
        context.Response.ContentType = type;
        context.Response.ContentLength = bytes.Length;
        var disposition = new ContentDispositionHeaderValue(inline ? "inline" : "attachment");
        disposition.SetHttpFileName(name);
        context.Response.Headers.ContentDisposition = disposition.ToString();
        await context.Response.Body.WriteAsync(bytes, context.RequestAborted).ConfigureAwait(false);
    }

    /// <summary>A file's name for a title or a file name said by the page.</summary>
    public static string FileName(string said) => SafeFileName.From(said);

    /// <summary>The whole body, or null after refusing one that is too long or of another type.</summary>
    public static async Task<byte[]?> Body(HttpContext context, int most, string type)
    {
        var request = context.Request;
        if (!MediaTypeHeaderValue.TryParse(request.ContentType, out var said) || !said.MediaType.Equals(type, StringComparison.OrdinalIgnoreCase))
        {
            await Refuse(context, StatusCodes.Status415UnsupportedMediaType, $"The body has to be {type}.").ConfigureAwait(false);
            return null;
        }

        // What is somewhat too long is read to its end and thrown away, so that the refusal reaches a sender that only listens then.
        if (context.Features.Get<IHttpMaxRequestBodySizeFeature>() is { IsReadOnly: false } limit)
            limit.MaxRequestBodySize = most + ThrownAway;
        using var kept = new MemoryStream();
        var part = new byte[PartBytes];
        long length = 0;
        while (await request.Body.ReadAsync(part, context.RequestAborted).ConfigureAwait(false) is > 0 and var read)
        {
            length += read;
            if (length <= most)
                kept.Write(part, 0, read);
        }

        if (length > most)
        {
            await Refuse(context, StatusCodes.Status413PayloadTooLarge, "The body is too long.").ConfigureAwait(false);
            return null;
        }

        return kept.ToArray();
    }

    /// <summary>The body as a value, or null after refusing it.</summary>
    public static async Task<T?> Read<T>(HttpContext context, JsonTypeInfo<T> type, int most)
        where T : class
    {
        if (await Body(context, most, "application/json").ConfigureAwait(false) is not { } body)
            return null;
        try
        {
            if (JsonSerializer.Deserialize(body, type) is { } value)
                return value;
        }
        catch (JsonException)
        {
            // Refused below.
        }

        await Refuse(context, StatusCodes.Status400BadRequest, "The body does not say what was expected.").ConfigureAwait(false);
        return null;
    }
}
