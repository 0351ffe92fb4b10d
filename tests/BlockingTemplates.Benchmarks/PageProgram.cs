using System.Diagnostics;
using System.Net.Http.Headers;
using System.Net.Http.Json;
using System.Text;
using System.Text.Json;

namespace BlockingTemplates.Benchmarks;

/// <summary>The page as a program of its own, beside this one, asked as its scripts ask it.</summary>
internal sealed class PageProgram : IAsyncDisposable
{
    private readonly Process _process;
    private readonly string _state;
    private readonly HttpClient _client;
    private readonly Dictionary<string, long> _versions = [];

    private PageProgram(Process process, string state, Uri address) => (_process, _state, Address, _client) = (process, state, address, new() { BaseAddress = address });

    public Uri Address { get; }

    public double MemoryMb
    {
        get
        {
            _process.Refresh();
            return _process.WorkingSet64 / 1e6;
        }
    }

    public static async Task<PageProgram> StartAsync()
    {
        var state = Directory.CreateTempSubdirectory("page-").FullName;
        var process = Process.Start(new ProcessStartInfo("dotnet", [Path.Combine(AppContext.BaseDirectory, "blocking-templates.dll"), "page", "--port", "0", "--no-open", "--state", state]) { RedirectStandardOutput = true })!;
        var said = await process.StandardOutput.ReadLineAsync() ?? throw new InvalidOperationException("The page did not start.");
        _ = process.StandardOutput.ReadToEndAsync();
        return new(process, state, new(said.Split(' ')[^1]));
    }

    public async Task<string> BeginAsync(string text)
    {
        using var answer = await _client.PostAsJsonAsync("/api/copies", new { name = "demo.jsonc", text, beside = Array.Empty<object>() });
        using var told = JsonDocument.Parse(await answer.EnsureSuccessStatusCode().Content.ReadAsByteArrayAsync());
        var id = told.RootElement.GetProperty("id").GetString()!;
        _versions[id] = told.RootElement.GetProperty("version").GetInt64();
        return id;
    }

    /// <summary>Sends a text and takes the first answer to it, read whole.</summary>
    public async Task EditAsync(string id, string text)
    {
        using var request = new HttpRequestMessage(HttpMethod.Put, $"/api/copies/{id}/text") { Content = new StringContent(text, Encoding.UTF8, "text/plain") };
        request.Headers.IfMatch.Add(new EntityTagHeaderValue($"\"{_versions[id]}\""));
        using var answer = await _client.SendAsync(request);
        using var told = JsonDocument.Parse(await answer.EnsureSuccessStatusCode().Content.ReadAsByteArrayAsync());
        _versions[id] = told.RootElement.GetProperty("version").GetInt64();
        if (told.RootElement.GetProperty("answer").GetProperty("plan").ValueKind != JsonValueKind.Object)
            throw new InvalidOperationException("The edit has no plan.");
    }

    /// <summary>Listens until the newest version has its cloth, and takes that answer; how long the engine worked on it, from its first word to its last.</summary>
    public async Task<TimeSpan> ClothAsync(string id)
    {
        long began = 0, ended = 0;
        await using var events = await _client.GetStreamAsync($"/api/copies/{id}/events");
        using var reader = new StreamReader(events);
        while (await reader.ReadLineAsync() is { } line)
        {
            if (!line.StartsWith("data:", StringComparison.Ordinal))
                continue;
            using var told = JsonDocument.Parse(line[5..]);
            ended = Stopwatch.GetTimestamp();
            if (began == 0 && told.RootElement.GetProperty("part").ValueKind == JsonValueKind.Number)
                began = ended;
            if (told.RootElement.GetProperty("answeredVersion") is { ValueKind: JsonValueKind.Number } version && version.GetInt64() == _versions[id] && told.RootElement.GetProperty("answeredStage").GetInt32() > 0)
                break;
        }

        using var answer = JsonDocument.Parse(await _client.GetByteArrayAsync($"/api/copies/{id}/answer"));
        if (!answer.RootElement.GetProperty("answer").GetProperty("isFinal").GetBoolean())
            throw new InvalidOperationException("The last answer is not final.");
        return Stopwatch.GetElapsedTime(began, ended);
    }

    public async ValueTask DisposeAsync()
    {
        _client.Dispose();
        _process.Kill();
        await _process.WaitForExitAsync();
        _process.Dispose();
        Directory.Delete(_state, recursive: true);
    }
}
