namespace BlockingTemplates.Browser.Tests;

// One headless Chromium of this machine for all tests; nothing is downloaded.
public sealed class Chromium : IAsyncLifetime
{
    // A name that leads to this machine, as the tablet's address does at home.
    public const string NameOnTheNetwork = "shawl.test";

    private static readonly string[] Places = ["/usr/bin/chromium", "/usr/bin/chromium-browser", "/snap/bin/chromium", "/Applications/Chromium.app/Contents/MacOS/Chromium"];
    private IPlaywright? _playwright;
    private IBrowser? _browser;

    // The program, or null where there is none.
    public static string? Path { get; } = Environment.GetEnvironmentVariable("CHROMIUM") is { Length: > 0 } said ? said : Places.FirstOrDefault(File.Exists);

    public IBrowser Browser => _browser ?? throw new InvalidOperationException($"No Chromium was found at {string.Join(", ", Places)}, and CHROMIUM names none.");

    public async Task InitializeAsync()
    {
        if (Path is null)
            return;
        _playwright = await Playwright.CreateAsync();
        _browser = await _playwright.Chromium.LaunchAsync(new()
        {
            ExecutablePath = Path,
            Headless = true,
            Args =
            [
                "--no-sandbox", "--disable-background-networking", "--disable-component-update", "--disable-default-apps", "--disable-sync", "--disable-domain-reliability",
                "--no-first-run", "--disable-gpu", "--disable-dev-shm-usage", $"--host-resolver-rules=MAP {NameOnTheNetwork} 127.0.0.1",
            ],
        });
    }

    public async Task DisposeAsync()
    {
        if (_browser is not null)
            await _browser.DisposeAsync();
        _playwright?.Dispose();
    }
}
