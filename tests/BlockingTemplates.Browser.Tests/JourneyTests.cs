using System.IO.Compression;

namespace BlockingTemplates.Browser.Tests;

// From nothing to the packet.
[Collection(InBrowser.Name)]
public class JourneyTests(Chromium chromium)
{
    private const int ClothMs = 240_000;

    [BrowserTheory]
    [InlineData("cm", "148", "74", "128", "92", "5", "-3", "A4", "148.0 cm")]
    [InlineData("in", "58 1/4", "29 1/8", "50 3/8", "36 1/4", "2", "-1 1/8", "Letter", "58 1/4 in")]
    public async Task From_an_empty_page_to_the_packet(string units, string wingspan, string depth, string top, string side, string bow, string topBow, string paper, string said)
    {
        // Once with the cloth, which takes its time.
        await using var server = await RunningPage.StartAsync(stages: units == "cm" ? null : RunningPage.GeometryAlone);
        await using var screen = await Screen.OpenAsync(chromium, server);
        var page = screen.Page;
        await page.GetByRole(AriaRole.Radio, new() { Name = units, Exact = true }).CheckAsync();
        await page.Locator("[data-kind=triangle]").ClickAsync();
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Finished size of the triangle" })).ToBeVisibleAsync();
        await Expect(page.Locator("#problems-head")).ToContainTextAsync("8 problems");
        await screen.PictureAsync($"blank-{units}");

        foreach (var (path, value) in new[]
        {
            ("title", "Journey (invented example)"), ("piece.finished.wingspan", wingspan), ("piece.finished.depth", depth),
            ("piece.unblocked.sides.top", top), ("piece.unblocked.sides.left", side), ("piece.unblocked.sides.right", side),
            ("piece.unblocked.bows.left", bow), ("piece.unblocked.bows.right", bow), ("piece.unblocked.bows.top", topBow),
        })
            await screen.Field(path).FillAsync(value);
        await Expect(page.Locator(".problems")).ToBeHiddenAsync();
        await screen.KeptAsync();
        await screen.PictureAsync($"measure-{units}");

        await screen.PartAsync("See");
        await Expect(page.Locator("#view svg")).ToBeVisibleAsync();
        await Expect(page.GetByRole(AriaRole.Cell, new() { Name = said, Exact = true }).First).ToBeVisibleAsync();
        await Expect(page.Locator(".counts")).ToContainTextAsync("Largest pull");
        await screen.PictureAsync($"see-{units}");

        await screen.PartAsync("Print");
        await Expect(page.GetByRole(AriaRole.Checkbox, new() { Name = paper, Exact = true })).ToBeCheckedAsync();
        await Expect(page.Locator(".cloth")).ToBeHiddenAsync(new() { Timeout = ClothMs });
        var download = await page.RunAndWaitForDownloadAsync(() => page.Locator("#packet").ClickAsync());
        using var zip = ZipFile.OpenRead(await download.PathAsync());
        Assert.Equal(["guide-" + paper + ".pdf", "mats.pdf", "overview.png", "overview.svg", "pins.csv", "plan.json", "plot.pdf", "triangle.jsonc"], zip.Entries.Select(e => e.FullName).Order(StringComparer.Ordinal));
        using var reader = new StreamReader(zip.GetEntry("triangle.jsonc")!.Open());
        var text = await reader.ReadToEndAsync();
        Assert.Contains("// A project file with blanks.", text, StringComparison.Ordinal);
        Assert.Contains(units == "in" ? "\"wingspan\": \"58 1/4\"" : "\"wingspan\": 148", text, StringComparison.Ordinal);
        await screen.PictureAsync($"print-{units}");

        // One file alone; and without the others the packet holds what is ticked.
        var one = await page.RunAndWaitForDownloadAsync(() => page.GetByRole(AriaRole.Link, new() { Name = $"Download guide-{paper}.pdf" }).ClickAsync());
        Assert.Equal(await server.Client.GetByteArrayAsync($"/api/copies/p1/files/guide-{paper}.pdf"), await File.ReadAllBytesAsync(await one.PathAsync()));
        await page.GetByRole(AriaRole.Checkbox, new() { Name = "plot.pdf" }).UncheckAsync();
        var fewer = await page.RunAndWaitForDownloadAsync(() => page.Locator("#packet").ClickAsync());
        using var less = ZipFile.OpenRead(await fewer.PathAsync());
        Assert.Equal(zip.Entries.Count - 1, less.Entries.Count);
    }

    [BrowserFact]
    public async Task With_the_keyboard_alone_from_the_projects_to_the_drawing()
    {
        await using var server = await RunningPage.StartAsync(stages: RunningPage.GeometryAlone);
        await using var screen = await Screen.OpenAsync(chromium, server);
        var page = screen.Page;
        await page.GetByRole(AriaRole.Radio, new() { Name = "cm", Exact = true }).PressAsync("Space");
        await TabToAsync(page, "[data-kind=square]");
        await page.Keyboard.PressAsync("Enter");
        await Expect(page.Locator("h1")).ToHaveTextAsync("Measure");
        await Expect(page.Locator("h1")).ToBeFocusedAsync();
        string[] sides = ["lower", "right", "top", "left"];
        foreach (var (path, value) in sides.SelectMany(s => new[] { ($"sides.{s}", "52"), ($"bows.{s}", "0") }).Select(v => ($"piece.unblocked.{v.Item1}", v.Item2)).Prepend(("piece.finished.side", "60")))
        {
            await TabToAsync(page, $"[data-path='{path}']");
            await page.Keyboard.TypeAsync(value);
        }

        // Opposite sides agree, so the diagonal may be left out.
        await TabToAsync(page, ".field button.link");
        await page.Keyboard.PressAsync("Enter");
        await Expect(page.Locator(".problems")).ToBeHiddenAsync();
        await TabToAsync(page, "nav a[href$=see]");
        await page.Keyboard.PressAsync("Enter");
        await Expect(page.Locator("#view svg")).ToBeVisibleAsync();
        await TabToAsync(page, "#view");
        var before = await page.Locator("#view svg").GetAttributeAsync("viewBox");
        await page.Keyboard.PressAsync("+");
        Assert.NotEqual(before, await page.Locator("#view svg").GetAttributeAsync("viewBox"));
        await page.Keyboard.PressAsync("0");
        Assert.Equal(before, await page.Locator("#view svg").GetAttributeAsync("viewBox"));
        await TabToAsync(page, ".layers input");
        await page.Keyboard.PressAsync("Space");
        await Expect(page.Locator("#view g[data-name=mats]")).ToBeHiddenAsync();
    }

    [BrowserFact]
    public async Task A_saved_file_opens_again_and_its_text_can_be_written_by_hand()
    {
        await using var server = await RunningPage.StartAsync(stages: RunningPage.GeometryAlone);
        await using var screen = await Screen.OpenAsync(chromium, server);
        var page = screen.Page;
        await page.Locator("#open").SetInputFilesAsync(RunningPage.Example("lace-triangle"));
        await Expect(screen.Field("piece.finished.wingspan")).ToHaveValueAsync("148");
        await screen.Field("piece.finished.wingspan").FillAsync("150");
        await page.GetByText("The project's text").ClickAsync();
        await Expect(page.Locator("#text")).ToHaveValueAsync(new System.Text.RegularExpressions.Regex("\"wingspan\": 150"));
        var text = await page.Locator("#text").InputValueAsync();
        await page.Locator("#text").FillAsync(text.Replace("\"wingspan\": 150", "\"wingspan\": 152.5", StringComparison.Ordinal));
        await Expect(screen.Field("piece.finished.wingspan")).ToHaveValueAsync("152.5");
        await screen.KeptAsync();
        var download = await page.RunAndWaitForDownloadAsync(() => page.GetByRole(AriaRole.Link, new() { Name = "Save as a file" }).ClickAsync());
        Assert.Equal(await File.ReadAllTextAsync(RunningPage.Example("lace-triangle")), (await File.ReadAllTextAsync(await download.PathAsync())).Replace("152.5", "148", StringComparison.Ordinal));
    }

    private static async Task TabToAsync(IPage page, string selector)
    {
        for (var i = 0; i < 150; i++)
        {
            await page.Keyboard.PressAsync("Tab");
            if (await page.EvaluateAsync<bool>("s => document.activeElement?.matches(s) ?? false", selector))
                return;
        }

        Assert.Fail($"The Tab key never came to {selector}.");
    }
}
