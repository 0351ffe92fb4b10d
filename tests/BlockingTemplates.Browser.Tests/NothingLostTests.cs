namespace BlockingTemplates.Browser.Tests;

// Nothing typed is lost.
[Collection(InAnotherBrowser.Name)]
public class NothingLostTests(Chromium chromium)
{
    [BrowserFact]
    public async Task What_was_typed_right_before_a_reload_is_there()
    {
        await using var server = await RunningPage.StartAsync();
        await using var screen = await Screen.OnProjectAsync(chromium, server, new { example = "lace-triangle" });
        await screen.Field("piece.finished.wingspan").FillAsync("151.5");
        await screen.Page.ReloadAsync();
        await Expect(screen.Field("piece.finished.wingspan")).ToHaveValueAsync("151.5");
        await screen.KeptAsync();
        Assert.Contains("\"wingspan\": 151.5", (await server.TextAsync("p1")).Text, StringComparison.Ordinal);
        screen.ExpectsRefusals = true; // a request may have been cut off by the reload
    }

    [BrowserFact]
    public async Task What_is_typed_while_the_program_is_dead_is_sent_when_it_lives_again()
    {
        var state = RunningPage.NewFolder();
        try
        {
            var server = await RunningPage.StartAsync(state);
            var port = server.Root.Port;
            await using var screen = await Screen.OnProjectAsync(chromium, server, new { example = "lace-triangle" });
            screen.ExpectsRefusals = true;
            await Expect(screen.Field("piece.finished.wingspan")).ToHaveValueAsync("148");
            await server.DisposeAsync();
            await screen.Field("piece.finished.wingspan").FillAsync("152");
            await Expect(screen.Page.Locator("#sent")).ToContainTextAsync("does not answer");
            var settings = new BlockingTemplates.Web.PageSettings(state) { Port = port };
            await using var again = await BlockingTemplates.Web.PageServer.StartAsync(settings, CancellationToken.None);
            await screen.KeptAsync();
            Assert.Contains("\"wingspan\": 152", await File.ReadAllTextAsync(Path.Combine(state, "p1", "project.jsonc")), StringComparison.Ordinal);
        }
        finally
        {
            Directory.Delete(state, recursive: true);
        }
    }

    [BrowserFact]
    public async Task Two_screens_that_change_different_fields_keep_both_changes()
    {
        await using var server = await RunningPage.StartAsync();
        await using var one = await Screen.OnProjectAsync(chromium, server, new { example = "lace-triangle" });
        await using var other = await Screen.OpenAsync(chromium, server, "#/p1/measure");
        (one.ExpectsRefusals, other.ExpectsRefusals) = (true, true); // the second of two edits is refused once, and made again
        await Expect(other.Field("piece.finished.depth")).ToHaveValueAsync("74");
        await Task.WhenAll(one.Field("piece.finished.wingspan").FillAsync("150"), other.Field("piece.finished.depth").FillAsync("76"));
        await Expect(one.Field("piece.finished.depth")).ToHaveValueAsync("76");
        await Expect(other.Field("piece.finished.wingspan")).ToHaveValueAsync("150");
        await one.KeptAsync();
        await other.KeptAsync();
        var text = (await server.TextAsync("p1")).Text;
        Assert.Contains("\"wingspan\": 150, \"depth\": 76", text, StringComparison.Ordinal);
    }
}
