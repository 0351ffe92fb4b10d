using System.Net;
using System.Net.Sockets;
using System.Text;
using System.Text.Json;

namespace BlockingTemplates.Web.Tests;

// Requests that should not be: refused with the right status, and the page goes on.
public class AbuseTests
{
    [Theory]
    [InlineData("evil.example")]
    [InlineData("evil.example:80")]
    [InlineData("127.0.0.1.evil.example")]
    [InlineData("192.0.2.7")]
    [InlineData("localhost.")]
    public async Task A_foreign_host_name_is_misdirected(string host)
    {
        // RFC 9110, 15.5.20: 421, so that no foreign name can be pointed at this machine.
        await using var page = await RunningPage.StartAsync();
        Assert.Equal(HttpStatusCode.MisdirectedRequest, await page.StatusAsync(HttpMethod.Get, "/", with: r => r.Headers.Host = host));
        Assert.Equal(HttpStatusCode.MisdirectedRequest, await page.StatusAsync(HttpMethod.Get, "/api/copies", with: r => r.Headers.Host = host));
        await GoesOnAsync(page);
    }

    [Theory]
    [InlineData("Origin", "https://evil.example")]
    [InlineData("Origin", "null")]
    [InlineData("Origin", "http://127.0.0.1:1")]
    [InlineData("Sec-Fetch-Site", "cross-site")]
    [InlineData("Sec-Fetch-Site", "same-site")]
    public async Task Another_site_s_page_reads_and_writes_nothing(string header, string value)
    {
        await using var page = await RunningPage.StartAsync();
        var id = await page.BeginAsync(Pieces.Small());
        void From(HttpRequestMessage request) => request.Headers.Add(header, value);
        Assert.Equal(HttpStatusCode.Forbidden, await page.StatusAsync(HttpMethod.Get, $"/api/copies/{id}/text", with: From));
        Assert.Equal(HttpStatusCode.Forbidden, await page.StatusAsync(HttpMethod.Post, "/api/copies", RunningPage.Json("""{ "example": "lace-triangle" }"""), From));
        Assert.Equal(HttpStatusCode.Forbidden, await page.StatusAsync(HttpMethod.Delete, $"/api/copies/{id}", with: From));
        Assert.Equal(HttpStatusCode.Forbidden, await page.StatusAsync(HttpMethod.Put, $"/api/copies/{id}/text", new StringContent("{}"), r =>
        {
            From(r);
            r.Headers.IfMatch.Add(new("\"1\""));
        }));
        Assert.Equal((Pieces.Small(), 1), await page.TextAsync(id));
        await GoesOnAsync(page);
    }

    [Fact]
    public async Task A_form_of_another_site_cannot_write_by_its_types()
    {
        await using var page = await RunningPage.StartAsync();
        Assert.Equal(HttpStatusCode.UnsupportedMediaType, await page.StatusAsync(HttpMethod.Post, "/api/copies", new FormUrlEncodedContent([KeyValuePair.Create("example", "lace-triangle")])));
        Assert.Equal(HttpStatusCode.UnsupportedMediaType, await page.StatusAsync(HttpMethod.Post, "/api/copies", new StringContent("""{ "example": "lace-triangle" }""", Encoding.UTF8, "text/plain")));
        Assert.Equal(0, (await page.GetAsync("/api/copies")).GetArrayLength());
    }

    [Fact]
    public async Task Bodies_that_are_too_long_are_refused_with_and_without_their_length_said()
    {
        await using var page = await RunningPage.StartAsync();
        var id = await page.BeginAsync(Pieces.Small());
        var tooLong = new byte[5_000_001];
        Array.Fill(tooLong, (byte)' ');
        foreach (var saysLength in new[] { true, false })
        {
            HttpContent Body(string type)
            {
                HttpContent body = saysLength ? new ByteArrayContent(tooLong) : new StreamContent(new Endless(tooLong.Length));
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
        await GoesOnAsync(page);
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
        await using var page = await RunningPage.StartAsync();
        Assert.Equal(HttpStatusCode.BadRequest, await page.StatusAsync(HttpMethod.Post, "/api/copies", RunningPage.Json(body)));
        Assert.Equal(0, (await page.GetAsync("/api/copies")).GetArrayLength());
        await GoesOnAsync(page);
    }

    [Fact]
    public async Task Deep_json_is_refused_as_a_request_and_a_problem_as_a_project()
    {
        await using var page = await RunningPage.StartAsync();
        var deep = new string('[', 100_000) + new string(']', 100_000);
        Assert.Equal(HttpStatusCode.BadRequest, await page.StatusAsync(HttpMethod.Post, "/api/copies", RunningPage.Json($"{{ \"example\": {deep} }}")));
        var answer = await page.AnswerAsync(await page.BeginAsync(deep));
        Assert.NotEmpty(answer.GetProperty("problems").EnumerateArray());
        await GoesOnAsync(page);
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
        await using var page = await RunningPage.StartAsync();
        Assert.Equal("p1", await page.BeginAsync(Pieces.Small()));
        Assert.StartsWith("HTTP/1.1 404", await RawAsync(page, $"GET {path} HTTP/1.1\r\nHost: {page.Root.Authority}\r\nConnection: close\r\n\r\n"), StringComparison.Ordinal);
        await GoesOnAsync(page);
    }

    [Theory]
    [InlineData("..%2fpinned.jsonc")]
    [InlineData("..%5cpinned.jsonc")]
    [InlineData(".hidden")]
    [InlineData("C:x.svg")]
    [InlineData("a%00b.svg")]
    public async Task Only_a_plain_name_stands_beside_a_project(string name)
    {
        await using var page = await RunningPage.StartAsync();
        Assert.Equal("p1", await page.BeginAsync(Pieces.Small()));
        var answer = await RawAsync(page, $"PUT /api/copies/p1/beside/{name} HTTP/1.1\r\nHost: {page.Root.Authority}\r\nContent-Type: application/octet-stream\r\nContent-Length: 1\r\nConnection: close\r\n\r\nx");
        Assert.StartsWith("HTTP/1.1 4", answer, StringComparison.Ordinal);
        Assert.Equal(["card.json", "project.jsonc"], Directory.EnumerateFiles(Path.Combine(page.State, "p1")).Select(f => Path.GetFileName(f)).Order());
    }

    [Fact]
    public async Task Markup_in_titles_and_names_stays_text_in_every_answer()
    {
        const string title = "<script>alert(1)</script><img src=x onerror=alert(2)> \"&'";
        await using var page = await RunningPage.StartAsync();
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

    [Fact]
    public async Task Every_answer_allows_its_own_files_only()
    {
        await using var page = await RunningPage.StartAsync();
        foreach (var address in new[] { "/", "/app.js", "/api/start", "/nothing", "/join" })
        {
            using var answer = await page.Client.GetAsync(address);
            var policy = answer.Headers.GetValues("Content-Security-Policy").Single();
            Assert.DoesNotContain("unsafe", policy, StringComparison.Ordinal);
            Assert.DoesNotContain("*", policy, StringComparison.Ordinal);
            Assert.DoesNotContain("http", policy, StringComparison.Ordinal);
            foreach (var part in new[] { "default-src 'none'", "script-src 'self'", "style-src 'self'", "frame-ancestors 'none'", "base-uri 'none'", "form-action 'none'" })
                Assert.Contains(part, policy, StringComparison.Ordinal);
            Assert.False(answer.Headers.Contains("Access-Control-Allow-Origin"));
            Assert.False(answer.Headers.Contains("Server"));
        }
    }

    [Fact]
    public async Task A_hundred_requests_at_once_are_all_answered()
    {
        await using var page = await RunningPage.StartAsync();
        var id = await page.BeginAsync(new { example = "lace-triangle" });
        var statuses = await Task.WhenAll(Enumerable.Range(0, 100).Select(i => (i % 4) switch
        {
            0 => page.StatusAsync(HttpMethod.Get, $"/api/copies/{id}/answer"),
            1 => page.StatusAsync(HttpMethod.Put, $"/api/copies/{id}/text", new StringContent(Pieces.Small(40 + i), Encoding.UTF8, "text/plain"), r => r.Headers.IfMatch.Add(new("\"1\""))),
            2 => page.StatusAsync(HttpMethod.Post, "/api/copies", RunningPage.Json("{")),
            _ => page.StatusAsync(HttpMethod.Get, "/app.js"),
        }));
        Assert.All(statuses.Where((_, i) => i % 4 is 0 or 3), s => Assert.Equal(HttpStatusCode.OK, s));
        Assert.All(statuses.Where((_, i) => i % 4 == 2), s => Assert.Equal(HttpStatusCode.BadRequest, s));
        var edits = statuses.Where((_, i) => i % 4 == 1).ToList();
        Assert.Single(edits, HttpStatusCode.OK);
        Assert.Equal(edits.Count - 1, edits.Count(s => s == HttpStatusCode.PreconditionFailed));
        Assert.Equal(2, (await page.TextAsync(id)).Version);
        await GoesOnAsync(page);
    }

    [Fact]
    public async Task An_edit_that_does_not_say_its_version_is_refused()
    {
        await using var page = await RunningPage.StartAsync();
        var id = await page.BeginAsync(Pieces.Small());
        Assert.Equal(HttpStatusCode.PreconditionRequired, await page.StatusAsync(HttpMethod.Put, $"/api/copies/{id}/text", new StringContent("{}", Encoding.UTF8, "text/plain")));
    }

    private static async Task GoesOnAsync(RunningPage page)
    {
        var answer = await page.AnswerAsync(await page.BeginAsync(Pieces.Small()));
        Assert.Equal(JsonValueKind.Object, answer.GetProperty("plan").ValueKind);
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

    private sealed class Endless(long length) : Stream
    {
        private long _left = length;

        public override bool CanRead => true;

        public override bool CanSeek => false;

        public override bool CanWrite => false;

        public override long Length => throw new NotSupportedException();

        public override long Position { get => throw new NotSupportedException(); set => throw new NotSupportedException(); }

        public override int Read(byte[] buffer, int offset, int count)
        {
            var taken = (int)Math.Min(count, _left);
            Array.Fill(buffer, (byte)' ', offset, taken);
            _left -= taken;
            return taken;
        }

        public override void Flush()
        {
        }

        public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

        public override void SetLength(long value) => throw new NotSupportedException();

        public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();
    }
}
