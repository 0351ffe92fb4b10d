using System.Net;
using BlockingTemplates.Web.Desk;
using BlockingTemplates.Web.Guarding;
using BlockingTemplates.Web.Routes;
using BlockingTemplates.Web.Sharing;
using BlockingTemplates.Web.Stages;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Http.Features;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Hosting;

namespace BlockingTemplates.Web;

/// <summary>The page in the browser: a server on this machine over the engine that the command line uses too.</summary>
public sealed class PageServer : IAsyncDisposable
{
    private const int MostBodyBytes = 1_000_000;
    private readonly WebApplication _app;
    private readonly WorkDesk _desk;
    private readonly OneTimeCode _codes = new();
    private readonly PageSettings _settings;
    private readonly OwnHosts _hosts;

    private PageServer(PageSettings settings, IReadOnlyList<Stage> stages, OwnHosts hosts, int port)
    {
        (_settings, _hosts) = (settings, hosts);
        _desk = new(settings.StateFolder, stages);
        var builder = WebApplication.CreateEmptyBuilder(new() { ContentRootPath = AppContext.BaseDirectory });
        builder.Services.AddRouting();
        builder.Services.Configure<HostOptions>(o => o.ShutdownTimeout = TimeSpan.FromSeconds(3));
        builder.WebHost.UseKestrelCore().ConfigureKestrel(kestrel =>
        {
            kestrel.AddServerHeader = false;
            kestrel.Limits.MaxRequestBodySize = MostBodyBytes;
            kestrel.Limits.MaxRequestLineSize = 4096;
            kestrel.Limits.RequestHeadersTimeout = TimeSpan.FromSeconds(15);
            kestrel.Listen(settings.Share ? IPAddress.Any : IPAddress.Loopback, port);
        });
        _app = builder.Build();
        Map();
    }

    /// <summary>The page's address on this machine, at the project it was started with.</summary>
    public string Address { get; private set; } = "";

    /// <summary>Addresses other screens of the home network reach the page by; empty where it is not shared.</summary>
    public IReadOnlyList<string> SharedAddresses => [.. _hosts.Network.Select(h => $"http://{h}:{Port}")];

    /// <summary>The first shared address with the one-time code, or null where it is not shared.</summary>
    public string? JoinAddress => SharedAddresses is [var first, ..] ? ShareRoutes.JoinAddress(first, _codes.Code) : null;

    /// <summary>The join address as a QR code in a terminal's characters, or null.</summary>
    public string? JoinPicture => JoinAddress is { } address ? QrPicture.ForTerminal(address) : null;

    /// <summary>The code now, or null where the page is not shared.</summary>
    public string? JoinCode => _settings.Share ? _codes.Code : null;

    private int Port => new Uri(_app.Services.GetRequiredService<IServer>().Features.GetRequiredFeature<IServerAddressesFeature>().Addresses.First()).Port;

    /// <summary>Starts the page; throws an <see cref="IOException"/> where the port is taken or another program works in the state folder.</summary>
    public static Task<PageServer> StartAsync(PageSettings settings, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(settings);
        return StartAsync(settings, EngineStages.All, OwnHosts.OfThisMachine(settings.Share), cancellation);
    }

    /// <summary>Starts the page with stages and host names of one's own.</summary>
    internal static async Task<PageServer> StartAsync(PageSettings settings, IReadOnlyList<Stage> stages, OwnHosts hosts, CancellationToken cancellation)
    {
        foreach (var port in settings.Port is { } asked ? [asked] : new[] { PageSettings.UsualPort, 0 })
        {
            var server = new PageServer(settings, stages, hosts, port);
            try
            {
                await server._app.StartAsync(cancellation).ConfigureAwait(false);
            }
            catch (IOException) when (settings.Port is null && port != 0)
            {
                await server.DisposeAsync().ConfigureAwait(false);
                continue;
            }
            catch (System.Net.Sockets.SocketException e)
            {
                await server.DisposeAsync().ConfigureAwait(false);
                throw new IOException($"Port {port} cannot be used: {e.Message}", e);
            }
            catch (Exception)
            {
                await server.DisposeAsync().ConfigureAwait(false);
                throw;
            }

            var opened = settings.Opened is { } file ? new OpenedProject(server._desk).Open(file) : null;
            var part = settings.Pinning ? "pin" : "measure";
            var id = opened?.Id ?? (settings.Pinning ? server._desk.Newest?.Id : null);
            server.Address = $"http://127.0.0.1:{server.Port}/{(id is null ? "" : $"#/{id}/{part}")}";
            return server;
        }

        throw new IOException("No free port was found.");
    }

    /// <summary>Ends the page; what was typed is kept.</summary>
    public async ValueTask DisposeAsync()
    {
        await _app.DisposeAsync().ConfigureAwait(false);
        _desk.Dispose();
    }

    private void Map()
    {
        _app.Use(next => context => Guarded(context, next));
        _app.Use(next => context => SecurityHeaders.Add(context, next));
        var origins = new OriginGuard(_hosts);
        _app.Use(next => context => origins.Check(context, next));
        if (_settings.Share)
        {
            var share = new ShareGuard(_codes);
            _app.Use(next => context => share.Check(context, next));
        }

        _app.UseRouting();
        PageFiles.Map(_app);
        StartRoutes.Map(_app, _settings.Share);
        var copies = new CopyRoutes(_desk);
        copies.Map(_app);
        new EventRoutes(copies, _app.Lifetime.ApplicationStopping).Map(_app);
        new FileRoutes(copies).Map(_app);
        new PinRoutes(copies).Map(_app);
        if (_settings.Share)
            new ShareRoutes(_codes, () => SharedAddresses).Map(_app);
        _app.MapFallback(context => Reply.Refuse(context, StatusCodes.Status404NotFound, "There is nothing here."));
    }

    /// <summary>Answers a request that went wrong in words, and goes on.</summary>
    private static async Task Guarded(HttpContext context, RequestDelegate next)
    {
        try
        {
            await next(context).ConfigureAwait(false);
        }
        catch (BadHttpRequestException e) when (!context.Response.HasStarted)
        {
            await Reply.Refuse(context, e.StatusCode, "The request cannot be read.").ConfigureAwait(false);
        }
        catch (OperationCanceledException) when (context.RequestAborted.IsCancellationRequested)
        {
            // Nobody waits for the answer.
        }
        catch (Exception) when (!context.Response.HasStarted)
        {
            await Reply.Refuse(context, StatusCodes.Status500InternalServerError, "Something went wrong in the program; what you typed is kept.").ConfigureAwait(false);
        }
    }
}
