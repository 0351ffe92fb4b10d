using System.Net;
using System.Net.Sockets;
using System.Text;

namespace BlockingTemplates.Web.Tests;

// Bodies, names and addresses that try tricks: refused with the right status, and the page goes on.
public class HostileInputTests
{
    [Fact]
    public async Task Bodies_that_are_too_long_are_refused_with_and_without_their_length_said()
    {
        await using var page = await RunningPage.StartAsync(stages: RunningPage.GeometryAlone);
        var id = await page.BeginAsync(Pieces.Small());
        var tooLong = new byte[5_000_001];
        Array.Fill(tooLong, (byte)' ');
        foreach (var saysLength in new[] { true, false })
        {
            HttpContent Body(string type)
            {
                HttpContent body = saysLength ? new ByteArrayContent(tooLong) : new StreamContent(new EndlessBody(tooLong.Length));
                body.Headers.ContentType = new(type);
                return body;
            }

            void Madefrom(HttpRequestMessage request)
            {
                request.Headers.IfMatch.Add(new("\"1\""));
                request.Headers.TransferEncodingChunked = !saysLength;
            }

            Assert.Equal(HttpStatusCode.RequestEntityTooLarge, await page.StatusAsync(HttpMethod.Put, $"/api/copies/{id}/text", Body("text/plain"), Madefrom));
            Assert.Equal(HttpStatusCode.RequestEntityTooLarge, await page.StatusAsync(HttpMethod.Put, $"/api/copies/{id}/beside/a.svg", Body("application/octet-stream"), r => r.Headers.TransferEncodingChunked = !saysLength));
            Assert.Equal(HttpStatusCode.RequestEntityTooLarge, await page.StatusAsync(HttpMethod.Post, $"/api/copies/{id}/pins", Body("application/json"), r => r.Headers.TransferEncodingChunked = !saysLength));
        }

        Assert.Equal((Pieces.Small(), 1), await page.TextAsync(id));
        await AbuseTests.GoesOnAsync(page);
    }

    [Theory]
    [InlineData("")]
    [InlineData("{")]
    [InlineData("null")]
    [InlineData("[1, 2]")]
    [InlineData("{ \"example\": 7 }")]
    [InlineData("{ \"example\": \"../lace-triangle\" }")]
    [InlineData("{ \"shape\": \"triangle\", \"units\": \"furlong\" }")]
    [InlineData("{ \"shape\": \"banana\", \"units\": \"cm\" }")]
    [InlineData("{ \"name\": \"x\", \"text\": \"{}\", \"beside\": [ { \"name\": \"../x.svg\", \"bytes\": \"\" } ] }")]
    [InlineData("{ \"name\": \"x\", \"text\": \"{}\", \"beside\": [ { \"name\": \"x.svg\", \"bytes\": \"***\" } ] }")]
    [InlineData("{ \"name\": \"x\", \"text\": \"{}\", \"beside\": [ null ] }")]
    [InlineData("\uFFFD\u0000")]
    public async Task Malformed_wishes_for_a_project_are_refused(string body)
    {
        await using var page = await RunningPage.StartAsync(stages: RunningPage.GeometryAlone);
        Assert.Equal(HttpStatusCode.BadRequest, await page.StatusAsync(HttpMethod.Post, "/api/copies", RunningPage.Json(body)));
        Assert.Equal(0, (await page.GetAsync("/api/copies")).GetArrayLength());
        await AbuseTests.GoesOnAsync(page);
    }

    [Fact]
    public async Task Deep_json_is_refused_as_a_request_and_a_problem_as_a_project()
    {
        await using var page = await RunningPage.StartAsync(stages: RunningPage.GeometryAlone);
        var deep = new string('[', 100_000) + new string(']', 100_000);
        Assert.Equal(HttpStatusCode.BadRequest, await page.StatusAsync(HttpMethod.Post, "/api/copies", RunningPage.Json($"{{ \"example\": {deep} }}")));
        var answer = await page.AnswerAsync(await page.BeginAsync(deep));
        Assert.NotEmpty(answer.GetProperty("problems").EnumerateArray());
        await AbuseTests.GoesOnAsync(page);
    }

    [Theory]
    [InlineData("/..%2f..%2fetc%2fpasswd")]
    [InlineData("/vendor/..%5c..%5capp.js")]
    [InlineData("/page/index.html")]
    [InlineData("/api/copies/..%2fp1/text")]
    [InlineData("/api/copies/p1%2f..%2fp1/text")]
    [InlineData("/api/copies/p01/text")]
    [InlineData("/api/copies/p-1/text")]
    [InlineData("/api/copies/p1/files/..%2fcard.json")]
    [InlineData("/api/copies/p1/files/card.json")]
    [InlineData("/api/copies/p1/packet?file=..%2fcard.json")]
    [InlineData("/api/copies/p1/pins/1%2f..%2f2/mat")]
    [InlineData("/api/kinds/..%2ftriangle")]
    [InlineData("/lock")]
    public async Task Paths_that_try_tricks_lead_nowhere(string path)
    {
        await using var page = await RunningPage.StartAsync(stages: RunningPage.GeometryAlone);
        Assert.Equal("p1", await page.BeginAsync(Pieces.Small()));
        Assert.StartsWith("HTTP/1.1 404", await RawAsync(page, $"GET {path} HTTP/1.1\r\nHost: {page.Root.Authority}\r\nConnection: close\r\n\r\n"), StringComparison.Ordinal);
        await AbuseTests.GoesOnAsync(page);
    }

    [Theory]
    [InlineData("..%2fpinned.jsonc")]
    [InlineData("..%5cpinned.jsonc")]
    [InlineData(".hidden")]
    [InlineData("C:x.svg")]
    [InlineData("a%00b.svg")]
    public async Task Only_a_plain_name_stands_beside_a_project(string name)
    {
        await using var page = await RunningPage.StartAsync(stages: RunningPage.GeometryAlone);
        Assert.Equal("p1", await page.BeginAsync(Pieces.Small()));
        var answer = await RawAsync(page, $"PUT /api/copies/p1/beside/{name} HTTP/1.1\r\nHost: {page.Root.Authority}\r\nContent-Type: application/octet-stream\r\nContent-Length: 1\r\nConnection: close\r\n\r\nx");
        Assert.StartsWith("HTTP/1.1 4", answer, StringComparison.Ordinal);
        Assert.Equal(["card.json", "project.jsonc"], Directory.EnumerateFiles(Path.Combine(page.State, "p1")).Select(f => Path.GetFileName(f)).Order());
    }

    [Fact]
    public async Task Markup_in_titles_and_names_stays_text_in_every_answer()
    {
        const string title = "<script>alert(1)</script><img src=x onerror=alert(2)> \"&'";
        await using var page = await RunningPage.StartAsync(stages: RunningPage.GeometryAlone);
        var id = await page.BeginAsync(new { name = title + ".jsonc", text = Pieces.Small(title: title) });
        var answer = await page.AnswerAsync(id);
        Assert.Equal(title, answer.GetProperty("plan").GetProperty("title").GetString());
        Assert.DoesNotContain("<img", answer.GetProperty("plan").GetProperty("view").GetString(), StringComparison.Ordinal);
        foreach (var address in new[] { "text", "answer", "files/overview.svg", "files/plan.json", "pins" })
        {
            using var got = await page.Client.GetAsync($"/api/copies/{id}/{address}");
            Assert.NotEqual("text/html", got.Content.Headers.ContentType!.MediaType);
            Assert.Equal("nosniff", got.Headers.GetValues("X-Content-Type-Options").Single());
        }

        Assert.DoesNotContain("<script", await page.Client.GetStringAsync($"/api/copies/{id}/files/overview.svg"), StringComparison.Ordinal);
        using var text = await page.Client.GetAsync($"/api/copies/{id}/text");
        Assert.Matches(@"^[\w.-]+$", text.Content.Headers.ContentDisposition!.FileName!.Trim('"'));
    }

    // Sends a request as it is: clients tidy paths before they send them.
    private static async Task<string> RawAsync(RunningPage page, string request)
    {
        using var socket = new TcpClient();
        await socket.ConnectAsync(IPAddress.Loopback, page.Root.Port);
        await using var stream = socket.GetStream();
        await stream.WriteAsync(Encoding.ASCII.GetBytes(request));
        using var reader = new StreamReader(stream);
        return await reader.ReadLineAsync() ?? "";
    }
}
