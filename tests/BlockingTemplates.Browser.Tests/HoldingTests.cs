using System.Text.RegularExpressions;

namespace BlockingTemplates.Browser.Tests;

// Wires and combs on the page: what they take, which way to choose, and each kind counted back.
[Collection(InAnotherBrowser.Name)]
public class HoldingTests(Chromium chromium)
{
    [BrowserFact]
    public async Task The_ways_to_hold_each_edge_stand_side_by_side_and_one_press_takes_the_suggested_one()
    {
        await using var server = await RunningPage.StartAsync(stages: RunningPage.GeometryAlone);
        await using var screen = await Screen.OnProjectAsync(chromium, server, new { example = "lace-triangle" }, "see");
        var page = screen.Page;
        var ways = page.GetByRole(AriaRole.Region, new() { Name = "Table of the ways to hold each edge" });
        await Expect(ways.GetByRole(AriaRole.Rowheader)).ToHaveTextAsync(["right", "top", "left"]);
        await Expect(page.Locator("#wires-head")).ToHaveCountAsync(0);
        await page.GetByRole(AriaRole.Button, new() { Name = "Hold the top edge by wires" }).ClickAsync();
        await Expect(page.Locator("#wires-head")).ToBeVisibleAsync();
        await Expect(page.Locator(".counts")).ToContainTextAsync("Stiff wires");
        await Expect(ways.GetByRole(AriaRole.Row, new() { NameRegex = new Regex("^top") })).ToContainTextAsync("wires");
        await screen.KeptAsync();
        Assert.Matches("\"top\":[^}]*\"hold\": \"wire\"", (await server.TextAsync("p1")).Text);
        await screen.PictureAsync("see-wires");
    }

    [BrowserTheory]
    [InlineData("stole-on-wires", "wire")]
    [InlineData("combed-blanket", "comb")]
    public async Task Pins_combs_and_wires_are_counted_back_each_by_its_kind(string example, string kind)
    {
        await using var server = await RunningPage.StartAsync(stages: RunningPage.GeometryAlone);
        await using var screen = await Screen.OnProjectAsync(chromium, server, new { example }, "pin", 820, 1180, hasTouch: true);
        var page = screen.Page;
        await page.GetByRole(AriaRole.Button, new() { Name = "Begin pinning" }).ClickAsync();
        await Expect(page.Locator(".number")).ToHaveTextAsync("1");
        var told = await server.GetAsync("/api/copies/p1/pins");
        var kinds = told.GetProperty("marks").EnumerateArray().Select(m => m.GetProperty("kind").GetString()!).ToList();
        var wires = told.GetProperty("plan").GetProperty("wires").GetArrayLength();
        var combs = kinds.Count(k => k == "comb");
        Assert.True(kind == "wire" ? wires > 0 : combs > 0);
        if (kind == "wire")
            await Expect(page.Locator(".done")).ToContainTextAsync("The wires first");
        var first = kinds.IndexOf(kind) + 1;
        await page.GetByLabel("Go to mark").FillAsync($"{first}");
        await page.Keyboard.PressAsync("Enter");
        await Expect(page.Locator(".now-words")).ToContainTextAsync(kind == "wire" ? "Holds the wire" : "A comb");
        await screen.PictureAsync($"pinning-{kind}");
        await page.Locator("h1").FocusAsync();
        for (var n = 0; n < kinds.Count; n++)
        {
            await page.Keyboard.PressAsync("Space");
            await Expect(page.Locator("circle.set")).ToHaveCountAsync(n + 1);
        }

        await page.Locator("#dry").ClickAsync();
        string Tally(int pins, int ofCombs, int ofWires) => string.Join(", ", new[] { (pins, kinds.Count - combs, "pins"), (ofCombs, combs, "combs"), (ofWires, wires, "wires") }.Where(t => t.Item2 > 0).Select(t => $"{t.Item1} of {t.Item2} {t.Item3}")) + " out";
        await Expect(page.Locator(".so-far")).ToHaveTextAsync(Tally(0, 0, 0));
        await page.Locator("h1").FocusAsync();
        for (var n = 0; n < kinds.Count; n++)
        {
            await page.Keyboard.PressAsync("Space");
            await Expect(page.Locator("circle.set")).ToHaveCountAsync(kinds.Count - n - 1);
        }

        await Expect(page.Locator(".so-far")).ToHaveTextAsync(Tally(kinds.Count - combs, combs, 0));
        await screen.PictureAsync($"count-back-{kind}");
        for (var w = 1; w <= wires; w++)
        {
            await page.GetByRole(AriaRole.Button, new() { Name = $"Wire {w} is out" }).ClickAsync();
            await Expect(page.Locator(".so-far")).ToHaveTextAsync(Tally(kinds.Count - combs, combs, w));
        }

        await Expect(page.Locator("#now-head")).ToContainTextAsync("are out");
        await page.ReloadAsync();
        await Expect(page.Locator("#now-head")).ToContainTextAsync("are out");
    }
}
