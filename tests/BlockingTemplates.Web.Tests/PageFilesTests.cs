using System.IO.Compression;
using System.Net;
using System.Text;
using System.Text.RegularExpressions;
using BlockingTemplates.Web.Routes;

namespace BlockingTemplates.Web.Tests;

// The page's own files.
public partial class PageFilesTests
{
    private const int MostBytes = 300_000;

    [Fact]
    public void All_that_the_page_loads_weighs_less_than_300_kB_even_unpacked()
    {
        var loaded = PageFiles.All.Where(f => !f.Key.StartsWith("/join", StringComparison.Ordinal)).ToList();
        Assert.Contains(loaded, f => f.Key.Length == 1);
        Assert.Equal(2, loaded.Count(f => f.Value.Type == "font/ttf"));
        Assert.InRange(loaded.Sum(f => f.Value.Plain.Length), 50_000, MostBytes);
    }

    [Fact]
    public async Task Packed_and_plain_files_are_the_same()
    {
        await using var page = await RunningPage.StartAsync();
        foreach (var (address, file) in PageFiles.All)
        {
            using var packed = await page.SendAsync(HttpMethod.Get, address, with: r => r.Headers.AcceptEncoding.Add(new("gzip")));
            Assert.Equal("gzip", packed.Content.Headers.ContentEncoding.Single());
            await using var unpacked = new GZipStream(await packed.Content.ReadAsStreamAsync(), CompressionMode.Decompress);
            using var kept = new MemoryStream();
            await unpacked.CopyToAsync(kept);
            Assert.Equal(await page.Client.GetByteArrayAsync(address), kept.ToArray());
            Assert.Equal(file.Type.Split(';')[0], packed.Content.Headers.ContentType!.MediaType);
        }
    }

    [Fact]
    public void Nothing_comes_from_another_host()
    {
        foreach (var (address, file) in PageFiles.All.Where(f => f.Value.Type != "font/ttf" && !f.Key.StartsWith("/vendor/", StringComparison.Ordinal)))
            Assert.All(Addresses().Matches(Encoding.UTF8.GetString(file.Plain)).Select(m => m.Value), a => Assert.True(a == "http://www.w3.org/2000/svg", $"{address}: {a}"));
    }

    [Fact]
    public void Pages_hold_no_script_and_no_style_of_their_own()
    {
        foreach (var (address, file) in PageFiles.All.Where(f => f.Value.Type.StartsWith("text/html", StringComparison.Ordinal)))
        {
            var text = Encoding.UTF8.GetString(file.Plain);
            Assert.DoesNotMatch(@"<style|\sstyle=|\son\w+=|javascript:", text);
            Assert.All(Regex.Matches(text, "<script[^>]*>(.*?)</script>", RegexOptions.Singleline), m => Assert.True(m.Groups[1].Value.Length == 0, address));
        }
    }

    [Fact]
    public void Every_file_that_a_script_takes_is_there()
    {
        foreach (var (address, file) in PageFiles.All.Where(f => f.Value.Type.StartsWith("text/javascript", StringComparison.Ordinal)))
        {
            foreach (var taken in Imports().Matches(Encoding.UTF8.GetString(file.Plain)).Select(m => m.Groups[1].Value))
                Assert.True(PageFiles.All.ContainsKey(new Uri(new Uri($"http://page{address}"), taken).AbsolutePath), $"{address}: {taken}");
        }
    }

    [Fact]
    public async Task The_page_answers_to_both_names_of_this_machine_and_to_no_other_network()
    {
        await using var page = await RunningPage.StartAsync();
        Assert.Equal("127.0.0.1", page.Root.Host);
        Assert.Equal(HttpStatusCode.OK, await page.StatusAsync(HttpMethod.Get, "/", with: r => r.Headers.Host = $"localhost:{page.Root.Port}"));
        var listening = System.Net.NetworkInformation.IPGlobalProperties.GetIPGlobalProperties().GetActiveTcpListeners().Where(l => l.Port == page.Root.Port);
        Assert.All(listening, l => Assert.True(IPAddress.IsLoopback(l.Address)));
    }

    [GeneratedRegex(@"https?://[^\s""'`)]+")]
    private static partial Regex Addresses();

    [GeneratedRegex(@"\bfrom [""']([^""']+)[""']")]
    private static partial Regex Imports();
}
