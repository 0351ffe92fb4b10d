using Deque.AxeCore.Playwright;

namespace BlockingTemplates.Browser.Tests;

// For everybody: on every size, light and dark, with large text.
[Collection(InAnotherBrowser.Name)]
public class LooksTests(Chromium chromium)
{
    private static readonly int[] Widths = [1280, 640, 390];
    private static readonly string[] Parts = ["measure", "see", "print", "pin"];

    [BrowserTheory]
    [InlineData("desktop", 1280, 900, false)]
    [InlineData("phone-dark", 390, 780, true)]
    public async Task Axe_finds_nothing_to_mend_and_nothing_runs_over_the_side(string name, int width, int height, bool isDark)
    {
        await using var server = await RunningPage.StartAsync();
        var id = await server.BeginAsync(new { example = "lace-triangle" });
        await server.BeginAsync(new { shape = "rectangle", units = "in" });
        await using var screen = await Screen.OpenAsync(chromium, server, "", width, height, isDark, hasTouch: width < 500);
        await LookAsync(screen, $"projects-{name}");
        foreach (var part in Parts)
        {
            await screen.Page.GotoAsync($"{server.Root}#/{id}/{part}");
            await Expect(screen.Page.Locator($".part-{part} h1")).ToBeVisibleAsync();
            await LookAsync(screen, $"{part}-{name}");
        }

        await screen.Page.GetByRole(AriaRole.Button, new() { Name = "Begin pinning" }).ClickAsync();
        await Expect(screen.Page.Locator("[data-picture=mat] svg")).ToBeVisibleAsync();
        await LookAsync(screen, $"pinning-{name}");
        await screen.Page.GetByText("Done before the last mark?").ClickAsync();
        await screen.Page.GetByRole(AriaRole.Button, new() { Name = "Pin 1 is set" }).ClickAsync();
        await Expect(screen.Page.Locator(".number")).ToHaveTextAsync("2");
        await screen.Page.GetByRole(AriaRole.Button, new() { Name = "Count the 1 pins out" }).ClickAsync();
        await Expect(screen.Page.Locator(".pin-ticks")).ToBeVisibleAsync();
        await LookAsync(screen, $"counting-{name}");

        // A project full of problems, everything opened.
        await screen.Page.GotoAsync($"{server.Root}#/p2/measure");
        await Expect(screen.Page.Locator(".problems")).ToBeVisibleAsync();
        await screen.Page.EvaluateAsync("() => document.querySelectorAll('details').forEach(d => { d.name = ''; d.open = true; })");
        await LookAsync(screen, $"problems-{name}");
    }

    [BrowserFact]
    public async Task With_text_of_200_percent_all_is_there_and_nothing_runs_over_the_side()
    {
        await using var server = await RunningPage.StartAsync();
        await using var screen = await Screen.OnProjectAsync(chromium, server, new { example = "lace-triangle" });
        foreach (var (part, width) in Parts.SelectMany(p => Widths.Select(w => (p, w))))
        {
            await screen.Page.SetViewportSizeAsync(width, 900);
            await screen.Page.GotoAsync($"{server.Root}#/p1/{part}");
            await Expect(screen.Page.Locator($".part-{part} h1")).ToBeVisibleAsync();
            await screen.Page.EvaluateAsync("() => { document.documentElement.style.fontSize = '200%'; dispatchEvent(new Event('resize')); return new Promise(done => setTimeout(done, 50)); }");
            await NothingRunsOverAsync(screen, $"{part} at {width}");
            var cut = await screen.Page.EvaluateAsync<string[]>("() => [...document.querySelectorAll('button, a, label, h1, h2, p')].filter(e => e.offsetParent && !e.classList.contains('unseen') && getComputedStyle(e).overflow === 'hidden' && (e.scrollWidth > e.clientWidth + 1 || e.scrollHeight > e.clientHeight + 1)).map(e => e.textContent)");
            Assert.Empty(cut);
            await screen.PictureAsync($"large-text-{part}-{width}");
        }
    }

    [BrowserFact]
    public async Task Layers_are_switched_and_the_drawing_is_moved_and_magnified_by_wheel_mouse_and_fingers()
    {
        await using var server = await RunningPage.StartAsync();
        await using var screen = await Screen.OnProjectAsync(chromium, server, new { example = "lace-triangle" }, "see");
        var page = screen.Page;
        foreach (var (label, layer) in new[] { ("mats", "mats"), ("numbers", "numbers"), ("pulls", "arrows"), ("lay line", "lay line"), ("outline and marks", "outline and marks") })
        {
            await page.GetByRole(AriaRole.Checkbox, new() { Name = label, Exact = true }).UncheckAsync();
            await Expect(page.Locator($"#view g[data-name='{layer}']")).ToBeHiddenAsync();
            await page.GetByRole(AriaRole.Checkbox, new() { Name = label, Exact = true }).CheckAsync();
            await Expect(page.Locator($"#view g[data-name='{layer}']")).ToBeVisibleAsync();
        }

        foreach (var label in new[] { "sheets", "stretch" })
        {
            await Expect(page.Locator($"#view g[data-name='{label}']")).ToBeHiddenAsync();
            await page.GetByRole(AriaRole.Checkbox, new() { Name = label, Exact = true }).CheckAsync();
            await Expect(page.Locator($"#view g[data-name='{label}']")).ToBeVisibleAsync();
        }

        await screen.PictureAsync("see-all-layers");
        var whole = await BoxAsync(page);
        var at = (await page.Locator("#view").BoundingBoxAsync())!;
        await page.Mouse.MoveAsync(at.X + (at.Width / 4), at.Y + (at.Height / 2));
        await page.Mouse.WheelAsync(0, -400);
        await Expect(page.Locator("#view svg")).Not.ToHaveAttributeAsync("viewBox", string.Join(' ', whole.Select(v => v.ToString(System.Globalization.CultureInfo.InvariantCulture))));
        var near = await BoxAsync(page);
        Assert.True(near[2] < 0.6 * whole[2]);
        Assert.Equal(whole[0] + (whole[2] / 4), near[0] + (near[2] / 4), 0.5); // what lay under the pointer stays there
        await page.Mouse.DownAsync();
        await page.Mouse.MoveAsync(at.X + (at.Width / 4) - 60, at.Y + (at.Height / 2), new() { Steps = 4 });
        await page.Mouse.UpAsync();
        Assert.True((await BoxAsync(page))[0] > near[0]);
        await page.GetByRole(AriaRole.Button, new() { Name = "All", Exact = true }).ClickAsync();
        Assert.Equal(whole, await BoxAsync(page));

        // Two fingers that move apart (pointer events as a touch screen gives them).
        await page.EvaluateAsync(
            """
            () => {
              const view = document.getElementById("view"), box = view.getBoundingClientRect();
              view.setPointerCapture = () => {};
              const send = (type, id, x) => view.dispatchEvent(new PointerEvent(type, { pointerId: id, pointerType: "touch", bubbles: true, clientX: box.left + x, clientY: box.top + 100 }));
              send("pointerdown", 11, 100); send("pointerdown", 12, 200);
              send("pointermove", 11, 50); send("pointermove", 12, 250);
              send("pointerup", 11, 50); send("pointerup", 12, 250);
            }
            """);
        Assert.Equal(whole[2] / 2, (await BoxAsync(page))[2], 1.0);
    }

    private static async Task LookAsync(Screen screen, string name)
    {
        await NothingRunsOverAsync(screen, name);
        await screen.PictureAsync(name);
        var found = await screen.Page.RunAxe();
        Assert.True(found.Violations.Length == 0, $"{name}: {string.Join("; ", found.Violations.Select(v => $"{v.Id} ({v.Help}): {string.Join(", ", v.Nodes.Select(n => n.Html))}"))}");
    }

    private static async Task NothingRunsOverAsync(Screen screen, string name)
    {
        var over = await screen.Page.EvaluateAsync<string[]>(
            "() => document.documentElement.scrollWidth <= innerWidth ? [] : [...document.querySelectorAll('body *')].filter(e => e.getBoundingClientRect().right > innerWidth + 1).map(e => `${e.tagName}.${e.className}`).slice(0, 10)");
        Assert.True(over.Length == 0, $"{name}: {string.Join(", ", over)}");
    }

    private static async Task<double[]> BoxAsync(IPage page) =>
        [.. (await page.Locator("#view svg").GetAttributeAsync("viewBox"))!.Split(' ').Select(v => Math.Round(double.Parse(v, System.Globalization.CultureInfo.InvariantCulture), 3))];
}
