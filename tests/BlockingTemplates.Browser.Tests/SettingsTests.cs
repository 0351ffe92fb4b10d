using System.Text.Json;

namespace BlockingTemplates.Browser.Tests;

// Everything that a project file can say has its field, and what is emptied leaves nothing behind.
[Collection(InBrowser.Name)]
public class SettingsTests(Chromium chromium)
{
    [BrowserFact]
    public async Task Swatch_strips_and_wet_change_go_into_the_file_and_out_of_it()
    {
        await using var server = await RunningPage.StartAsync(stages: RunningPage.GeometryAlone);
        await using var screen = await Screen.OnProjectAsync(chromium, server, new { example = "lace-triangle" });
        await OpenAllAsync(screen);
        (string Path, string Value)[] said =
        [
            ("fabric.swatch.before[0]", "20"), ("fabric.swatch.before[1]", "15"), ("fabric.swatch.after[0]", "24"), ("fabric.swatch.after[1]", "19.5"),
            ("fabric.strips.width", "3"), ("fabric.strips.weight", "40"),
            ("fabric.strips.along.length[0]", "20"), ("fabric.strips.along.length[1]", "24"), ("fabric.strips.along.width", "2.4"),
            ("fabric.strips.across.length[0]", "20"), ("fabric.strips.across.length[1]", "23"),
            ("fabric.strips.slanted.length[0]", "20"), ("fabric.strips.slanted.length[1]", "25"),
            ("fabric.wetChange", "-0.05"), ("timeLimit", "30"),
        ];
        foreach (var (path, value) in said)
            await screen.Field(path).FillAsync(value);
        await Expect(screen.Page.Locator(".problems")).ToBeHiddenAsync();
        await screen.KeptAsync();
        var file = await FileAsync(server, "p1");
        Assert.Equal(15, file.GetProperty("fabric").GetProperty("swatch").GetProperty("before")[1].GetDouble());
        Assert.Equal(2.4, file.GetProperty("fabric").GetProperty("strips").GetProperty("along").GetProperty("width").GetDouble());
        Assert.Equal(25, file.GetProperty("fabric").GetProperty("strips").GetProperty("slanted").GetProperty("length")[1].GetDouble());
        await screen.PictureAsync("settings-cloth");

        await screen.Page.GetByRole(AriaRole.Button, new() { Name = "Changes when wet differently along and across" }).ClickAsync();
        await screen.Field("fabric.wetChange.across").FillAsync("-0.04");
        await screen.KeptAsync();
        Assert.Equal((-0.05, -0.04), ((await FileAsync(server, "p1")).GetProperty("fabric").GetProperty("wetChange") is var both ? both.GetProperty("along").GetDouble() : 0, both.GetProperty("across").GetDouble()));

        foreach (var (path, _) in said.Where(s => s.Path.StartsWith("fabric.s", StringComparison.Ordinal)))
            await screen.Field(path).FillAsync("");
        await Expect(screen.Page.Locator(".problems")).ToBeHiddenAsync();
        await screen.KeptAsync();
        var fabric = (await FileAsync(server, "p1")).GetProperty("fabric");
        Assert.False(fabric.TryGetProperty("swatch", out var swatch) && swatch.ValueKind != JsonValueKind.Null);
        Assert.False(fabric.TryGetProperty("strips", out var strips) && strips.ValueKind != JsonValueKind.Null);
    }

    [BrowserFact]
    public async Task Wires_at_hand_known_stitches_points_and_a_pair_are_lists_of_fields()
    {
        await using var server = await RunningPage.StartAsync(stages: RunningPage.GeometryAlone);
        await using var screen = await Screen.OnProjectAsync(chromium, server, new { example = "lace-triangle" });
        var page = screen.Page;
        await OpenAllAsync(screen);
        for (var i = 0; i < 2; i++)
            await page.Locator("[data-adds='wires.owned']").ClickAsync();
        await screen.Field("wires.owned[0].length").FillAsync("90");
        await screen.Field("wires.owned[1].length").FillAsync("60");
        await screen.Field("wires.owned[1].count").FillAsync("3");
        await screen.Field("piece.edges.top.hold").SelectOptionAsync("wire");
        await screen.Field("piece.edges.left.points.count").FillAsync("5");
        await screen.Field("piece.edges.left.points.depth").FillAsync("2");
        await page.Locator("[data-adds='piece.edges.top.stations']").ClickAsync();
        await screen.Field("piece.edges.top.stations[0].stitch").FillAsync("90");
        await screen.Field("piece.edges.top.stations[0].at").FillAsync("60");
        await screen.Field("piece.pair[0]").FillAsync("first half");
        await screen.Field("piece.pair[1]").FillAsync("second half");
        await Expect(page.Locator(".problems")).ToBeHiddenAsync();
        await screen.KeptAsync();
        var file = await FileAsync(server, "p1");
        Assert.Equal("""[{"length":90,"count":1},{"length":60,"count":3}]""", Compact(file.GetProperty("wires").GetProperty("owned")));
        Assert.Equal("""["first half","second half"]""", Compact(file.GetProperty("piece").GetProperty("pair")));
        Assert.Equal("""[{"stitch":90,"at":60}]""", Compact(file.GetProperty("piece").GetProperty("edges").GetProperty("top").GetProperty("stations")));
        await Expect(page.GetByLabel("Shown", new() { Exact = true }).Locator("option")).ToHaveTextAsync(["first half", "second half"]);
        await screen.PictureAsync("settings-lists");

        await page.GetByRole(AriaRole.Button, new() { Name = "Leave out Wires at hand, 1" }).ClickAsync();
        await Expect(screen.Field("wires.owned[0].length")).ToHaveValueAsync("60");
        await page.GetByRole(AriaRole.Button, new() { Name = "Leave out Wires at hand, 1" }).ClickAsync();
        await Expect(screen.Field("wires.owned[0].length")).ToHaveCountAsync(0);
        foreach (var name in new[] { "count", "depth" })
        {
            // What one empties stays in sight while one is in it.
            await screen.Field($"piece.edges.left.points.{name}").FillAsync("");
            await Expect(screen.Field($"piece.edges.left.points.{name}")).ToBeFocusedAsync();
            await Expect(screen.Field($"piece.edges.left.points.{name}")).ToBeVisibleAsync();
        }

        await screen.Field("piece.pair[0]").FillAsync("");
        await screen.Field("piece.pair[1]").FillAsync("");
        await screen.KeptAsync();
        file = await FileAsync(server, "p1");
        Assert.False(file.TryGetProperty("wires", out var wires) && wires.TryGetProperty("owned", out _));
        Assert.False(file.GetProperty("piece").TryGetProperty("pair", out _));
        Assert.False(file.GetProperty("piece").GetProperty("edges").TryGetProperty("left", out var left) && left.TryGetProperty("points", out _));
    }

    [BrowserFact]
    public async Task A_size_is_added_with_its_own_measurements_and_shown_beside_the_others()
    {
        await using var server = await RunningPage.StartAsync(stages: RunningPage.GeometryAlone);
        await using var screen = await Screen.OnProjectAsync(chromium, server, new { example = "sweater-back-sizes" });
        var page = screen.Page;
        await OpenAllAsync(screen);
        var before = await page.GetByLabel("Shown", new() { Exact = true }).Locator("option").CountAsync();
        await page.Locator("[data-adds='sizes']").ClickAsync();
        await Expect(page.GetByLabel("Shown", new() { Exact = true }).Locator("option")).ToHaveCountAsync(before + 1);
        await screen.Field($"sizes[{before}].name").FillAsync("tall");
        await Expect(page.GetByLabel("Shown", new() { Exact = true }).Locator("option").Last).ToHaveTextAsync("tall");
        var length = page.Locator($"[data-path^='sizes[{before}].finished.']").First;
        Assert.EndsWith("as above", await length.GetAttributeAsync("placeholder"), StringComparison.Ordinal);
        await screen.PictureAsync("settings-sizes");
        await length.FillAsync("nothing");
        await Expect(length).ToHaveAttributeAsync("aria-invalid", "true");
        await page.GetByRole(AriaRole.Button, new() { Name = "Leave out Size tall" }).ClickAsync();
        await Expect(page.Locator(".problems")).ToBeHiddenAsync();
        await Expect(page.GetByLabel("Shown", new() { Exact = true }).Locator("option")).ToHaveCountAsync(before);
    }

    private static async Task OpenAllAsync(Screen screen) => await screen.Page.EvaluateAsync("() => document.querySelectorAll('details').forEach(d => { d.name = ''; d.open = true; })");

    private static async Task<JsonElement> FileAsync(RunningPage server, string id)
    {
        using var read = JsonDocument.Parse((await server.TextAsync(id)).Text, new() { CommentHandling = JsonCommentHandling.Skip, AllowTrailingCommas = true });
        return read.RootElement.Clone();
    }

    private static string Compact(JsonElement element) => JsonSerializer.Serialize(element);
}
