using System.Net;
using System.Net.Http.Headers;
using System.Net.Http.Json;
using System.Text;
using System.Text.Json;
using BlockingTemplates.Web.Guarding;
using BlockingTemplates.Web.Stages;

namespace BlockingTemplates.Web.Tests;

// A page that runs in this process on a free port, with a state folder of its own.
internal sealed class RunningPage : IAsyncDisposable
{
    private readonly bool _ownsState;

    private RunningPage(PageServer server, string state, bool ownsState)
    {
        (Server, State, _ownsState) = (server, state, ownsState);
        Client = NewClient();
    }

    public PageServer Server { get; }

    public string State { get; }

    public HttpClient Client { get; }

    public Uri Root => new(new Uri(Server.Address).GetLeftPart(UriPartial.Authority));

    public static async Task<RunningPage> StartAsync(string? state = null, OpenedFile? opened = null, bool share = false, IReadOnlyList<Stage>? stages = null, OwnHosts? hosts = null)
    {
        var folder = state ?? NewFolder();
        var settings = new PageSettings(folder) { Port = 0, Opened = opened, Share = share };
        return new(await PageServer.StartAsync(settings, stages ?? EngineStages.All, hosts ?? new([]), CancellationToken.None), folder, state is null);
    }

    public static string NewFolder() => Path.Combine(Path.GetTempPath(), $"blocking-page-{Guid.NewGuid():N}");

    public static string Example(string name)
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "BlockingTemplates.sln")))
            folder = folder.Parent ?? throw new InvalidOperationException("The repository's root was not found.");
        return Path.Combine(folder.FullName, "shared", "examples", name + ".jsonc");
    }

    // Keeps cookies only where asked to.
    public HttpClient NewClient(bool keepsCookies = false) =>
        new(new SocketsHttpHandler { AllowAutoRedirect = false, UseCookies = keepsCookies, MaxConnectionsPerServer = 200 }) { BaseAddress = Root };

    public async Task<string> BeginAsync(object wish)
    {
        using var answer = await Client.PostAsJsonAsync("/api/copies", wish);
        Assert.Equal(HttpStatusCode.Created, answer.StatusCode);
        return (await JsonOf(answer)).GetProperty("id").GetString()!;
    }

    public Task<string> BeginAsync(string text) => BeginAsync(new { name = "piece.jsonc", text });

    public async Task<JsonElement> GetAsync(string address)
    {
        using var answer = await Client.GetAsync(address);
        Assert.True(answer.IsSuccessStatusCode, $"{address}: {answer.StatusCode}");
        return await JsonOf(answer);
    }

    public async Task<JsonElement> AnswerAsync(string id) => (await GetAsync($"/api/copies/{id}/answer")).GetProperty("answer");

    public Task<HttpResponseMessage> EditAsync(string id, long madeFrom, string text) => SendAsync(HttpMethod.Put, $"/api/copies/{id}/text", new StringContent(text, Encoding.UTF8, "text/plain"), r => r.Headers.IfMatch.Add(new($"\"{madeFrom}\"")));

    public async Task<(string Text, long Version)> TextAsync(string id)
    {
        using var answer = await Client.GetAsync($"/api/copies/{id}/text");
        return (await answer.Content.ReadAsStringAsync(), long.Parse(answer.Headers.ETag!.Tag.Trim('"'), System.Globalization.CultureInfo.InvariantCulture));
    }

    public async Task<HttpResponseMessage> SendAsync(HttpMethod method, string address, HttpContent? body = null, Action<HttpRequestMessage>? with = null)
    {
        using var request = new HttpRequestMessage(method, address) { Content = body };
        with?.Invoke(request);
        return await Client.SendAsync(request);
    }

    public async Task<HttpStatusCode> StatusAsync(HttpMethod method, string address, HttpContent? body = null, Action<HttpRequestMessage>? with = null)
    {
        using var answer = await SendAsync(method, address, body, with);
        return answer.StatusCode;
    }

    public static StringContent Json(string text) => new(text, new UTF8Encoding(false), new MediaTypeHeaderValue("application/json"));

    public static async Task<JsonElement> JsonOf(HttpResponseMessage answer)
    {
        using var document = await JsonDocument.ParseAsync(await answer.Content.ReadAsStreamAsync());
        return document.RootElement.Clone();
    }

    public async ValueTask DisposeAsync()
    {
        Client.Dispose();
        await Server.DisposeAsync();
        if (_ownsState && Directory.Exists(State))
            Directory.Delete(State, recursive: true);
    }
}
