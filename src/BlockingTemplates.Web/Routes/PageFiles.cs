using System.IO.Compression;
using System.Reflection;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;

namespace BlockingTemplates.Web.Routes;

/// <summary>The page's own files out of the program: each at its one address, whatever else is asked for is not there.</summary>
internal static class PageFiles
{
    private const string Folder = "page/";

    private static readonly Dictionary<string, string> Types = new(StringComparer.Ordinal)
    {
        [".html"] = "text/html; charset=utf-8",
        [".js"] = "text/javascript; charset=utf-8",
        [".css"] = "text/css; charset=utf-8",
        [".svg"] = "image/svg+xml",
        [".ttf"] = "font/ttf",
    };

    /// <summary>Address, bytes and gzipped bytes of every file.</summary>
    public static IReadOnlyDictionary<string, (string Type, byte[] Plain, byte[] Packed)> All { get; } = Read();

    /// <summary>Serves them.</summary>
    public static void Map(IEndpointRouteBuilder routes)
    {
        foreach (var (address, file) in All)
            routes.MapGet(address, context => Serve(context, file));
    }

    private static Dictionary<string, (string Type, byte[] Plain, byte[] Packed)> Read()
    {
        var assembly = typeof(PageFiles).Assembly;
        var files = new Dictionary<string, (string, byte[], byte[])>(StringComparer.Ordinal);
        foreach (var name in assembly.GetManifestResourceNames().Where(n => n.StartsWith(Folder, StringComparison.Ordinal)))
        {
            if (!Types.TryGetValue(Path.GetExtension(name), out var type))
                continue;
            var plain = Resource(assembly, name);
            var address = name[Folder.Length..].Replace('\\', '/') switch { "index.html" => "", "join.html" => "join", var other => other };
            files["/" + address] = (type, plain, Packed(plain));
        }

        return files;
    }

    /// <summary>A file of the program.</summary>
    public static byte[] Resource(Assembly assembly, string name)
    {
        using var stream = assembly.GetManifestResourceStream(name) ?? throw new InvalidOperationException($"{name} is not in the program.");
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return bytes;
    }

    private static byte[] Packed(byte[] plain)
    {
        using var kept = new MemoryStream();
        using (var gzip = new GZipStream(kept, CompressionLevel.SmallestSize, leaveOpen: true))
            gzip.Write(plain);
        return kept.ToArray();
    }

    private static async Task Serve(HttpContext context, (string Type, byte[] Plain, byte[] Packed) file)
    {
        var packs = context.Request.Headers.AcceptEncoding.ToString().Contains("gzip", StringComparison.OrdinalIgnoreCase);
        var bytes = packs ? file.Packed : file.Plain;
        if (packs)
            context.Response.Headers.ContentEncoding = "gzip";
        context.Response.Headers.Vary = "Accept-Encoding";
        context.Response.Headers.CacheControl = "no-cache";
        context.Response.ContentType = file.Type;
        context.Response.ContentLength = bytes.Length;
        await context.Response.Body.WriteAsync(bytes, context.RequestAborted).ConfigureAwait(false);
    }
}
