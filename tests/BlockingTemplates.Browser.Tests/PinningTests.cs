namespace BlockingTemplates.Browser.Tests;

// Pinning on a phone beside the mats, with the desktop looking on.
[Collection(InBrowser.Name)]
public class PinningTests(Chromium chromium)
{
    [BrowserFact]
    public async Task Pins_set_on_one_screen_are_set_on_the_other_and_a_reload_loses_nothing()
    {
        await using var server = await RunningPage.StartAsync(stages: RunningPage.GeometryAlone);
        await using var phone = await Screen.OnProjectAsync(chromium, server, Pieces.Small(), "pin", 390, 780, hasTouch: true);
        var page = phone.Page;
        await page.GetByRole(AriaRole.Button, new() { Name = "Begin pinning" }).ClickAsync();
        await Expect(page.Locator(".number")).ToHaveTextAsync("1");
        for (var n = 1; n <= 3; n++)
        {
            await page.GetByRole(AriaRole.Button, new() { Name = $"Pin {n} is set" }).TapAsync();
            await Expect(page.Locator(".number")).ToHaveTextAsync($"{n + 1}");
        }

        await Expect(page.Locator("[data-picture=mat] svg")).ToBeVisibleAsync();
        await phone.PictureAsync("pin-phone");
        await page.ReloadAsync();
        await Expect(page.Locator(".number")).ToHaveTextAsync("4");
        await Expect(page.Locator(".so-far")).ToContainTextAsync("3 of");

        await using var desktop = await Screen.OpenAsync(chromium, server, "#/p1/pin");
        await Expect(desktop.Page.Locator(".number")).ToHaveTextAsync("4");
        await desktop.Page.Keyboard.PressAsync("Space");
        await Expect(desktop.Page.Locator(".number")).ToHaveTextAsync("5");
        await Expect(page.Locator(".number")).ToHaveTextAsync("5");
        await Expect(page.Locator("circle.set")).ToHaveCountAsync(4);
        await page.GetByRole(AriaRole.Button, new() { Name = "Back" }).TapAsync();
        await Expect(desktop.Page.Locator(".number")).ToHaveTextAsync("4");
        await desktop.PictureAsync("pin-desktop");
    }

    [BrowserFact]
    public async Task With_the_space_bar_to_the_last_pin_and_back_until_every_pin_is_out()
    {
        await using var server = await RunningPage.StartAsync(stages: RunningPage.GeometryAlone);
        await using var screen = await Screen.OnProjectAsync(chromium, server, Pieces.Small(), "pin");
        var page = screen.Page;
        await page.GetByRole(AriaRole.Button, new() { Name = "Begin pinning" }).PressAsync("Enter");
        await Expect(page.Locator(".number")).ToHaveTextAsync("1");
        await page.Locator("h1").FocusAsync();
        var marks = (await server.GetAsync("/api/copies/p1/pins")).GetProperty("pins").GetProperty("marks").GetInt32();
        await page.GetByLabel("Go to mark").FillAsync("7");
        await page.Keyboard.PressAsync("Enter");
        await Expect(page.Locator(".number")).ToHaveTextAsync("7");
        await page.GetByLabel("Go to mark").FillAsync("1");
        await page.Keyboard.PressAsync("Enter");
        await Expect(page.Locator(".number")).ToHaveTextAsync("1");
        await page.Locator("h1").FocusAsync();
        for (var n = 1; n <= marks; n++)
        {
            await page.Keyboard.PressAsync("Space");
            await Expect(page.Locator(".so-far")).ToContainTextAsync($"{n} of {marks} pins set");
        }

        await Expect(page.Locator(".done")).ToContainTextAsync("no spot feels cool or damp");
        await page.Locator("#dry").ClickAsync();
        await Expect(page.Locator(".so-far")).ToContainTextAsync($"0 of {marks} pins out");
        await screen.PictureAsync("count-back");
        await page.GetByRole(AriaRole.Button, new() { Name = "Pin 3", Exact = true }).ClickAsync();
        await Expect(page.Locator(".so-far")).ToContainTextAsync($"1 of {marks} pins out");
        await page.Locator("h1").FocusAsync();
        for (var n = 2; n <= marks; n++)
        {
            await page.Keyboard.PressAsync("Space");
            await Expect(page.Locator(".so-far")).ToContainTextAsync($"{n} of {marks} pins out");
        }

        await Expect(page.Locator("#now-head")).ToHaveTextAsync($"All {marks} pins are out");
    }

    [BrowserFact]
    public async Task Buttons_to_press_beside_the_mats_are_large()
    {
        await using var server = await RunningPage.StartAsync(stages: RunningPage.GeometryAlone);
        await using var phone = await Screen.OnProjectAsync(chromium, server, Pieces.Small(), "pin", 390, 780, hasTouch: true);
        await phone.Page.GetByRole(AriaRole.Button, new() { Name = "Begin pinning" }).ClickAsync();
        foreach (var id in new[] { "#set", "#back" })
        {
            // 44 CSS pixels: WCAG 2.2, 2.5.5 target size (enhanced).
            var box = (await phone.Page.Locator(id).BoundingBoxAsync())!;
            Assert.True(box.Width >= 88 && box.Height >= 66, $"{id}: {box.Width} by {box.Height}");
            Assert.InRange(box.Y + box.Height, 0, 780);
        }
    }

    [BrowserFact]
    public async Task Another_screen_joins_with_the_code_and_sees_nothing_before()
    {
        await using var server = await RunningPage.StartAsync(share: true, stages: RunningPage.GeometryAlone, hosts: new([Chromium.NameOnTheNetwork]));
        var id = await server.BeginAsync(Pieces.Small());
        var root = $"http://{Chromium.NameOnTheNetwork}:{server.Root.Port}/";
        await using var tablet = await Screen.OpenAsync(chromium, server, "", 820, 1180, hasTouch: true, root: root);
        tablet.ExpectsRefusals = true;
        await Expect(tablet.Page.Locator("h1")).ToHaveTextAsync("Join from this screen");
        await tablet.Page.GetByLabel("Code").FillAsync("AAAA-AAAA");
        await tablet.Page.GetByRole(AriaRole.Button, new() { Name = "Join" }).ClickAsync();
        await Expect(tablet.Page.Locator("#said")).ToContainTextAsync("not the code");

        await using var desktop = await Screen.OpenAsync(chromium, server);
        await desktop.Page.GetByRole(AriaRole.Button, new() { Name = "Other screens" }).ClickAsync();
        await Expect(desktop.Page.GetByRole(AriaRole.Img, new() { Name = "QR code" })).ToBeVisibleAsync();
        await desktop.PictureAsync("share");
        var code = await desktop.Page.Locator(".code").InnerTextAsync();
        await tablet.Page.GotoAsync($"{root}join#{code}");
        await tablet.Page.ReloadAsync();
        await tablet.Page.GotoAsync($"{root}join?again#{code}");
        await Expect(tablet.Page.GetByLabel("Code")).ToHaveValueAsync(code);
        await tablet.Page.GetByRole(AriaRole.Button, new() { Name = "Join" }).ClickAsync();
        await Expect(tablet.Page.Locator("h1")).ToHaveTextAsync("Projects");
        await tablet.Page.GotoAsync($"{root}#/{id}/see");
        await Expect(tablet.Page.Locator("#view svg")).ToBeVisibleAsync();
        await Expect(tablet.Page.GetByRole(AriaRole.Button, new() { Name = "Other screens" })).ToHaveCountAsync(0);
    }
}
