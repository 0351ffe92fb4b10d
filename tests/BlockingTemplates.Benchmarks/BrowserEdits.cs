using Microsoft.Playwright;

namespace BlockingTemplates.Benchmarks;

/// <summary>From a key typed into a field to the frame that shows the new drawing, in a headless Chromium of this machine.</summary>
internal static class BrowserEdits
{
    private const int Edits = 60;

    private const string Typed =
        """
        async edits => {
          const field = document.querySelector("[data-path='piece.finished.wingspan']");
          const took = [];
          for (let i = 0; i < edits; i++) {
            await new Promise(done => setTimeout(done, 300));
            const drawings = ["finished", "small"].map(name => document.querySelector(`[data-picture=${name}]`));
            const drawn = Promise.all(drawings.map(d => new Promise(done => new MutationObserver((_, o) => { o.disconnect(); done(); }).observe(d, { childList: true }))));
            const began = performance.now();
            field.focus();
            field.value = (148 + 0.1 * (1 + i % 19)).toFixed(1);
            field.dispatchEvent(new Event("input", { bubbles: true }));
            await drawn;
            await new Promise(done => requestAnimationFrame(() => setTimeout(done, 0)));
            took.push(performance.now() - began);
          }
          return took;
        }
        """;

    /// <summary>How long each edit took, in milliseconds, or null where there is no Chromium.</summary>
    public static async Task<IReadOnlyList<double>?> MeasureAsync(Uri page, string id)
    {
        var path = Environment.GetEnvironmentVariable("CHROMIUM") is { Length: > 0 } said ? said : "/usr/bin/chromium";
        if (!File.Exists(path))
            return null;
        using var playwright = await Playwright.CreateAsync();
        await using var browser = await playwright.Chromium.LaunchAsync(new() { ExecutablePath = path, Args = ["--no-sandbox", "--disable-background-networking", "--disable-component-update", "--disable-gpu", "--disable-dev-shm-usage"] });
        var screen = await browser.NewPageAsync(new() { ViewportSize = new() { Width = 1400, Height = 900 } });
        await screen.GotoAsync(new Uri(page, $"/#/{id}/measure").ToString());
        await screen.Locator("[data-picture=small] svg").WaitForAsync();
        await screen.EvaluateAsync<double[]>(Typed, 10);
        return await screen.EvaluateAsync<double[]>(Typed, Edits);
    }
}
