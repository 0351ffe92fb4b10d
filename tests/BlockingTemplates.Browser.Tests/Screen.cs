using System.Collections.Concurrent;

namespace BlockingTemplates.Browser.Tests;

// One screen on a running page; closing it fails the test if the browser complained of anything.
internal sealed class Screen : IAsyncDisposable
{
    private static readonly string? Pictures = Environment.GetEnvironmentVariable("BLOCKING_TEMPLATES_SCREENSHOTS");
    private const int MostWaitMs = 60_000; // patience with a busy machine, no measure of speed
    private readonly IBrowserContext _context;
    private readonly ConcurrentQueue<string> _complaints = new();

    private Screen(IBrowserContext context, IPage page, RunningPage server) => (_context, Page, Server) = (context, page, server);

    public IPage Page { get; }

    public RunningPage Server { get; }

    // Whether complaints about answers of the program are expected: it was ended, or refused something on purpose.
    public bool ExpectsRefusals { get; set; }

    public static async Task<Screen> OpenAsync(Chromium chromium, RunningPage server, string at = "", int width = 1280, int height = 900, bool isDark = false, bool hasTouch = false, string? root = null)
    {
        var context = await chromium.Browser.NewContextAsync(new()
        {
            ViewportSize = new() { Width = width, Height = height },
            ColorScheme = isDark ? ColorScheme.Dark : ColorScheme.Light,
            HasTouch = hasTouch,
            IsMobile = hasTouch,
            Locale = "en-GB",
            AcceptDownloads = true,
        });
        var page = await context.NewPageAsync();
        page.SetDefaultTimeout(MostWaitMs);
        SetDefaultExpectTimeout(MostWaitMs);
        var screen = new Screen(context, page, server);
        page.Console += (_, message) =>
        {
            if (message.Type is "error" or "warning")
                screen._complaints.Enqueue(message.Text);
        };
        page.PageError += (_, error) => screen._complaints.Enqueue(error);
        await page.GotoAsync((root ?? server.Root.ToString()) + at);
        await Expect(page.Locator("h1")).ToBeVisibleAsync();
        return screen;
    }

    // Begins a project over HTTP and opens one of its parts.
    public static async Task<Screen> OnProjectAsync(Chromium chromium, RunningPage server, object wish, string part = "measure", int width = 1280, int height = 900, bool isDark = false, bool hasTouch = false)
    {
        var id = await (wish is string text ? server.BeginAsync(text) : server.BeginAsync(wish));
        return await OpenAsync(chromium, server, $"#/{id}/{part}", width, height, isDark, hasTouch);
    }

    public ILocator Field(string path) => Page.Locator($"[data-path=\"{path}\"]");

    public async Task PartAsync(string name)
    {
        await Page.GetByRole(AriaRole.Link, new() { Name = name, Exact = true }).ClickAsync();
        await Expect(Page.Locator("h1")).ToHaveTextAsync(name);
    }

    public Task KeptAsync() => Expect(Page.Locator("#sent")).ToHaveTextAsync("Kept");

    public async Task PictureAsync(string name)
    {
        if (Pictures is null)
            return;
        Directory.CreateDirectory(Pictures);
        await Page.ScreenshotAsync(new() { Path = System.IO.Path.Combine(Pictures, name + ".png"), FullPage = true });
    }

    public async ValueTask DisposeAsync()
    {
        await _context.DisposeAsync();
        if (!ExpectsRefusals)
            Assert.Empty(_complaints);
        Assert.DoesNotContain(_complaints, c => c.Contains("Content Security Policy", StringComparison.OrdinalIgnoreCase));
    }
}
