using System.Net;
using System.Text.Json;

namespace BlockingTemplates.Web.Tests;

// Projects that are worked on: their versions, and that nothing typed is lost.
public class WorkingCopyTests
{
    [Fact]
    public async Task An_edit_answers_with_its_own_version_and_plan()
    {
        await using var page = await RunningPage.StartAsync();
        var id = await page.BeginAsync(Pieces.Small());
        var (text, version) = await page.TextAsync(id);
        using var edited = await page.EditAsync(id, version, text.Replace("\"wingspan\": 40", "\"wingspan\": 42", StringComparison.Ordinal));
        var answer = (await RunningPage.JsonOf(edited)).GetProperty("answer");
        Assert.Equal(version + 1, answer.GetProperty("version").GetInt64());
        Assert.Equal("42.0 cm", answer.GetProperty("plan").GetProperty("edges").EnumerateArray().Single(e => e.GetProperty("name").GetString() == "top").GetProperty("finished").GetString());
        Assert.Contains("// measured twice", (await page.TextAsync(id)).Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_edit_of_an_older_version_is_refused_and_changes_nothing()
    {
        await using var page = await RunningPage.StartAsync();
        var id = await page.BeginAsync(Pieces.Small());
        using (var first = await page.EditAsync(id, 1, Pieces.Small(42)))
            Assert.Equal(HttpStatusCode.OK, first.StatusCode);
        using (var second = await page.EditAsync(id, 1, Pieces.Small(44)))
            Assert.Equal(HttpStatusCode.PreconditionFailed, second.StatusCode);
        Assert.Equal((Pieces.Small(42), 2), await page.TextAsync(id));
    }

    [Fact]
    public async Task Text_versions_and_pinning_are_there_again_after_the_program_was_killed()
    {
        await using var page = await RunningPage.StartAsync();
        var id = await page.BeginAsync(Pieces.Small());
        using (await page.EditAsync(id, 1, Pieces.Small(43)))
        using (await page.SendAsync(HttpMethod.Post, $"/api/copies/{id}/pins", RunningPage.Json("""{ "step": "begin", "number": 0 }""")))
        using (await page.SendAsync(HttpMethod.Post, $"/api/copies/{id}/pins", RunningPage.Json("""{ "step": "set", "number": 1 }""")))
        {
            // What lies on the disk now is what a killed program leaves.
        }

        var left = RunningPage.NewFolder();
        CopyFolder(page.State, left);
        try
        {
            await using var next = await RunningPage.StartAsync(left);
            Assert.Equal((Pieces.Small(43), 2), await next.TextAsync(id));
            var pins = (await next.GetAsync($"/api/copies/{id}/pins")).GetProperty("pins");
            Assert.Equal([1], pins.GetProperty("set").EnumerateArray().Select(n => n.GetInt32()));
            Assert.Equal(2, pins.GetProperty("at").GetInt32());
            Assert.NotEqual(id, await next.BeginAsync(Pieces.Small()));
        }
        finally
        {
            Directory.Delete(left, recursive: true);
        }
    }

    [Fact]
    public async Task A_half_kept_project_is_left_alone_and_the_others_are_there()
    {
        var state = RunningPage.NewFolder();
        Directory.CreateDirectory(Path.Combine(state, "p7"));
        await File.WriteAllTextAsync(Path.Combine(state, "p7", "card.json"), "{ \"name\": ");
        await File.WriteAllTextAsync(Path.Combine(state, "p7", "project.jsonc"), "{}");
        try
        {
            await using (var page = await RunningPage.StartAsync(state))
            {
                Assert.Equal(0, (await page.GetAsync("/api/copies")).GetArrayLength());
                Assert.Equal("p8", await page.BeginAsync(Pieces.Small()));
            }

            Assert.True(File.Exists(Path.Combine(state, "p7", "project.jsonc")));
        }
        finally
        {
            Directory.Delete(state, recursive: true);
        }
    }

    [Fact]
    public async Task Two_programs_do_not_work_in_one_folder()
    {
        await using var page = await RunningPage.StartAsync();
        var refused = await Assert.ThrowsAsync<IOException>(() => RunningPage.StartAsync(page.State));
        Assert.Contains("--state", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_project_taken_away_is_gone_from_the_disk_too()
    {
        await using var page = await RunningPage.StartAsync();
        var (one, other) = (await page.BeginAsync(Pieces.Small()), await page.BeginAsync(Pieces.Small()));
        Assert.Equal(HttpStatusCode.OK, await page.StatusAsync(HttpMethod.Delete, $"/api/copies/{one}"));
        Assert.Equal(HttpStatusCode.NotFound, await page.StatusAsync(HttpMethod.Get, $"/api/copies/{one}/text"));
        Assert.False(Directory.Exists(Path.Combine(page.State, one)));
        Assert.Equal([other], (await page.GetAsync("/api/copies")).EnumerateArray().Select(c => c.GetProperty("id").GetString()));
    }

    [Fact]
    public async Task A_listening_screen_hears_of_another_one_s_edit()
    {
        await using var page = await RunningPage.StartAsync();
        var id = await page.BeginAsync(Pieces.Small());
        using var stop = new CancellationTokenSource(TimeSpan.FromSeconds(30));
        using var listening = await page.Client.GetAsync($"/api/copies/{id}/events", HttpCompletionOption.ResponseHeadersRead, stop.Token);
        Assert.Equal("text/event-stream", listening.Content.Headers.ContentType!.MediaType);
        using var reader = new StreamReader(await listening.Content.ReadAsStreamAsync(stop.Token));
        Assert.Equal(1, (await HeardAsync(reader, stop.Token)).GetProperty("version").GetInt64());
        using (await page.EditAsync(id, 1, Pieces.Small(44)))
        {
            JsonElement heard;
            do
            {
                heard = await HeardAsync(reader, stop.Token);
            }
            while (heard.GetProperty("answeredVersion").ValueKind == JsonValueKind.Null);
            Assert.Equal((2, 2), (heard.GetProperty("version").GetInt64(), heard.GetProperty("answeredVersion").GetInt64()));
        }
    }

    internal static void CopyFolder(string from, string to)
    {
        foreach (var file in Directory.EnumerateFiles(from, "*", SearchOption.AllDirectories).Where(f => Path.GetFileName(f) != "lock"))
        {
            var target = Path.Combine(to, Path.GetRelativePath(from, file));
            Directory.CreateDirectory(Path.GetDirectoryName(target)!);
            File.Copy(file, target);
        }
    }

    private static async Task<JsonElement> HeardAsync(StreamReader reader, CancellationToken stop)
    {
        while (await reader.ReadLineAsync(stop) is { } line)
        {
            if (line.StartsWith("data: ", StringComparison.Ordinal))
                return JsonDocument.Parse(line["data: ".Length..]).RootElement.Clone();
        }

        throw new InvalidOperationException("The events ended.");
    }
}
