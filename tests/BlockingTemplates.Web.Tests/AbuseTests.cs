using System.Net;
using System.Text;
using System.Text.Json;

namespace BlockingTemplates.Web.Tests;

// Requests from elsewhere, and too many at once: refused with the right status, and the page goes on.
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
        await using var page = await RunningPage.StartAsync(stages: RunningPage.GeometryAlone);
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
        await using var page = await RunningPage.StartAsync(stages: RunningPage.GeometryAlone);
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
        await using var page = await RunningPage.StartAsync(stages: RunningPage.GeometryAlone);
        Assert.Equal(HttpStatusCode.UnsupportedMediaType, await page.StatusAsync(HttpMethod.Post, "/api/copies", new FormUrlEncodedContent([KeyValuePair.Create("example", "lace-triangle")])));
        Assert.Equal(HttpStatusCode.UnsupportedMediaType, await page.StatusAsync(HttpMethod.Post, "/api/copies", new StringContent("""{ "example": "lace-triangle" }""", Encoding.UTF8, "text/plain")));
        Assert.Equal(0, (await page.GetAsync("/api/copies")).GetArrayLength());
    }

    [Fact]
    public async Task Every_answer_allows_its_own_files_only()
    {
        await using var page = await RunningPage.StartAsync(stages: RunningPage.GeometryAlone);
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
        await using var page = await RunningPage.StartAsync(stages: RunningPage.GeometryAlone);
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
        await using var page = await RunningPage.StartAsync(stages: RunningPage.GeometryAlone);
        var id = await page.BeginAsync(Pieces.Small());
        Assert.Equal(HttpStatusCode.PreconditionRequired, await page.StatusAsync(HttpMethod.Put, $"/api/copies/{id}/text", new StringContent("{}", Encoding.UTF8, "text/plain")));
    }

    // A page that goes on makes plans.
    internal static async Task GoesOnAsync(RunningPage page)
    {
        var answer = await page.AnswerAsync(await page.BeginAsync(Pieces.Small()));
        Assert.Equal(JsonValueKind.Object, answer.GetProperty("plan").ValueKind);
    }
}
