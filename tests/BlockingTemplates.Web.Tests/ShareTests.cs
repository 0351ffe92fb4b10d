using System.Net;
using System.Text.Json;
using BlockingTemplates.Web.Guarding;
using BlockingTemplates.Web.Sharing;
using ZXing;
using ZXing.Common;

namespace BlockingTemplates.Web.Tests;

// Other screens of the home network: nothing without the code.
public class ShareTests
{
    // An address for documentation (RFC 5737) stands for this machine's on the network.
    private const string OnTheNetwork = "192.0.2.7";

    [Fact]
    public async Task Without_the_code_nothing_is_read_or_written()
    {
        await using var page = await SharedAsync();
        var id = await page.BeginAsync(Pieces.Small());
        foreach (var address in new[] { "/api/start", "/api/schema", "/api/copies", $"/api/copies/{id}", $"/api/copies/{id}/text", $"/api/copies/{id}/answer", $"/api/copies/{id}/events", $"/api/copies/{id}/pins", $"/api/copies/{id}/files/plan.json", $"/api/copies/{id}/packet", "/api/share", "/app.js", "/nothing", "/api/kinds/triangle" })
            Assert.Equal(HttpStatusCode.Unauthorized, await page.StatusAsync(HttpMethod.Get, address, with: Other));
        Assert.Equal(HttpStatusCode.Unauthorized, await page.StatusAsync(HttpMethod.Delete, $"/api/copies/{id}", with: Other));
        Assert.Equal(HttpStatusCode.Unauthorized, await page.StatusAsync(HttpMethod.Post, "/api/copies", RunningPage.Json("""{ "example": "lace-triangle" }"""), Other));
        Assert.Equal(HttpStatusCode.Unauthorized, await page.StatusAsync(HttpMethod.Post, $"/api/copies/{id}/pins", RunningPage.Json("""{ "step": "begin", "number": 0 }"""), Other));
        Assert.Equal(HttpStatusCode.Unauthorized, await page.StatusAsync(HttpMethod.Get, $"/api/copies/{id}/text", with: r =>
        {
            Other(r);
            r.Headers.Add("Cookie", $"{ShareGuard.Cookie}=guessed");
        }));
        Assert.Equal((Pieces.Small(), 1), await page.TextAsync(id));
        using var visit = await page.SendAsync(HttpMethod.Get, "/", with: Other);
        Assert.Equal((HttpStatusCode.Found, "/join"), (visit.StatusCode, visit.Headers.Location!.OriginalString));
        Assert.Equal(HttpStatusCode.OK, await page.StatusAsync(HttpMethod.Get, "/join", with: Other));
    }

    [Fact]
    public async Task The_code_lets_one_screen_in_and_then_the_next_code_is_another()
    {
        await using var page = await SharedAsync();
        var id = await page.BeginAsync(Pieces.Small());
        var code = await CodeAsync(page);
        using var joined = await JoinAsync(page, code.ToLowerInvariant());
        Assert.Equal(HttpStatusCode.NoContent, joined.StatusCode);
        var cookie = joined.Headers.GetValues("Set-Cookie").Single();
        Assert.Contains("httponly", cookie, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("samesite=strict", cookie, StringComparison.OrdinalIgnoreCase);
        Assert.Equal(HttpStatusCode.OK, await page.StatusAsync(HttpMethod.Get, $"/api/copies/{id}/text", with: r =>
        {
            Other(r);
            r.Headers.Add("Cookie", cookie.Split(';')[0]);
        }));
        Assert.NotEqual(code, await CodeAsync(page));
        using var again = await JoinAsync(page, code);
        Assert.Equal(HttpStatusCode.Unauthorized, again.StatusCode);
    }

    [Fact]
    public async Task A_screen_that_is_let_in_does_not_see_the_next_code()
    {
        await using var page = await SharedAsync();
        using var joined = await JoinAsync(page, await CodeAsync(page));
        var cookie = joined.Headers.GetValues("Set-Cookie").Single().Split(';')[0];
        Assert.Equal(HttpStatusCode.Forbidden, await page.StatusAsync(HttpMethod.Get, "/api/share", with: r =>
        {
            Other(r);
            r.Headers.Add("Cookie", cookie);
        }));
    }

    [Theory]
    [InlineData("")]
    [InlineData("AAAA-AAAA")]
    [InlineData("' OR 1=1")]
    public async Task A_wrong_code_is_refused(string code)
    {
        await using var page = await SharedAsync();
        using var joined = await JoinAsync(page, code);
        Assert.Equal(HttpStatusCode.Unauthorized, joined.StatusCode);
        Assert.False(joined.Headers.Contains("Set-Cookie"));
    }

    [Fact]
    public void Guessing_changes_the_code()
    {
        var codes = new OneTimeCode();
        var first = codes.Code;
        for (var i = 0; i < 9; i++)
            Assert.Null(codes.Enter("AAAA-AAAA"));
        Assert.Equal(first, codes.Code);
        Assert.Null(codes.Enter("AAAA-AAAA"));
        Assert.NotEqual(first, codes.Code);
        Assert.Null(codes.Enter(first));
        Assert.NotNull(codes.Enter(codes.Code));
    }

    [Fact]
    public async Task An_unshared_page_knows_no_code_and_no_other_host()
    {
        await using var page = await RunningPage.StartAsync();
        Assert.Equal(HttpStatusCode.NotFound, await page.StatusAsync(HttpMethod.Get, "/api/share"));
        Assert.Equal(HttpStatusCode.MisdirectedRequest, await page.StatusAsync(HttpMethod.Get, "/join", with: Other));
        Assert.Null(page.Server.JoinCode);
    }

    // Read back by another library's reader.
    [Fact]
    public async Task The_picture_of_the_code_reads_as_the_address_with_the_code()
    {
        await using var page = await SharedAsync();
        var share = await page.GetAsync("/api/share");
        var size = share.GetProperty("qrSize").GetInt32();
        const int scale = 4;
        var light = new byte[size * scale * size * scale];
        Array.Fill(light, (byte)255);
        foreach (var square in share.GetProperty("qrPath").GetString()!.Split('M', StringSplitOptions.RemoveEmptyEntries))
        {
            var at = square[..square.IndexOf('h', StringComparison.Ordinal)].Split(' ').Select(int.Parse).ToArray();
            for (var y = at[1] * scale; y < (at[1] + 1) * scale; y++)
                Array.Fill(light, (byte)0, (y * size * scale) + (at[0] * scale), scale);
        }

        var read = new BarcodeReaderGeneric { Options = new DecodingOptions { PossibleFormats = [BarcodeFormat.QR_CODE], PureBarcode = true } }
            .Decode(new RGBLuminanceSource(light, size * scale, size * scale, RGBLuminanceSource.BitmapFormat.Gray8));
        Assert.Equal(page.Server.JoinAddress, read?.Text);
        Assert.StartsWith($"http://{OnTheNetwork}:{page.Root.Port}/join#", read!.Text, StringComparison.Ordinal);
        Assert.EndsWith(share.GetProperty("code").GetString()!, read.Text, StringComparison.Ordinal);
    }

    private static Task<RunningPage> SharedAsync() => RunningPage.StartAsync(share: true, hosts: new OwnHosts([OnTheNetwork]));

    private static void Other(HttpRequestMessage request) => request.Headers.Host = $"{OnTheNetwork}:1";

    private static async Task<string> CodeAsync(RunningPage page) => (await page.GetAsync("/api/share")).GetProperty("code").GetString()!;

    private static Task<HttpResponseMessage> JoinAsync(RunningPage page, string code) => page.SendAsync(HttpMethod.Post, "/api/join", RunningPage.Json(JsonSerializer.Serialize(new { code })), Other);
}
