using System.Globalization;
using System.Text.Json;

namespace BlockingTemplates.Browser.Tests;

// Fields, handles and what is said at them.
[Collection(InAnotherBrowser.Name)]
public class FieldsTests(Chromium chromium)
{
    [BrowserTheory]
    [InlineData("lace-triangle", "piece.unblocked.bows.left", "Bow, left edge")]
    [InlineData("round-doily", "piece.unblocked.width", "Width")]
    public async Task Dragging_a_place_of_the_unblocked_piece_changes_its_measurement(string example, string path, string name)
    {
        await using var server = await RunningPage.StartAsync(stages: RunningPage.GeometryAlone);
        await using var screen = await Screen.OnProjectAsync(chromium, server, new { example });
        var page = screen.Page;
        var handle = page.GetByRole(AriaRole.Slider, new() { Name = name, Exact = true });
        var before = await ValueAsync(screen, path);
        await handle.ScrollIntoViewIfNeededAsync();
        var box = (await handle.Locator(".knob").BoundingBoxAsync())!;
        var (x, y) = (box.X + (box.Width / 2), box.Y + (box.Height / 2));
        await page.Mouse.MoveAsync(x, y);
        await page.Mouse.DownAsync();

        // The left edge of the triangle faces left and down; the width's tape ends at the right.
        var (dx, dy) = path.EndsWith("left", StringComparison.Ordinal) ? (-25f, 25f) : (25f, 0f);
        await page.Mouse.MoveAsync(x + dx, y + dy, new() { Steps = 8 });
        await screen.PictureAsync($"drag-{example}");
        await page.Mouse.UpAsync();
        await Expect(screen.Field(path)).Not.ToHaveValueAsync(before.ToString(CultureInfo.InvariantCulture));
        var after = await ValueAsync(screen, path);
        Assert.True(after > before, $"{before} to {after}");
        await screen.KeptAsync();
        using var kept = JsonDocument.Parse((await server.TextAsync("p1")).Text, new() { CommentHandling = JsonCommentHandling.Skip, AllowTrailingCommas = true });
        var value = path.Split('.').Aggregate(kept.RootElement, (at, step) => at.GetProperty(step));
        Assert.Equal(after, value.GetDouble());

        await handle.FocusAsync();
        await page.Keyboard.PressAsync("ArrowDown");
        await Expect(screen.Field(path)).ToHaveValueAsync((after - 0.1).ToString("0.#", CultureInfo.InvariantCulture));
    }

    [BrowserTheory]
    [InlineData("-5")]
    [InlineData("1,24 m")]
    [InlineData("a lot")]
    [InlineData("1000000")]
    [InlineData("<b>12</b>")]
    public async Task Bad_input_is_told_at_its_field_in_words_and_goes_when_it_is_mended(string bad)
    {
        await using var server = await RunningPage.StartAsync(stages: RunningPage.GeometryAlone);
        await using var screen = await Screen.OnProjectAsync(chromium, server, new { example = "lace-triangle" });
        var page = screen.Page;
        var field = screen.Field("piece.finished.wingspan");
        await field.FillAsync(bad);
        await Expect(field).ToHaveAttributeAsync("aria-invalid", "true");
        var described = await field.GetAttributeAsync("aria-describedby");
        var words = page.Locator($"#{described!.Split(' ')[^1]}");
        await Expect(words).ToBeVisibleAsync();
        var expected = (await server.AnswerAsync("p1")).GetProperty("problems").EnumerateArray().First(p => p.GetProperty("path").GetString() == "piece.finished.wingspan");
        await Expect(words).ToHaveTextAsync($"{expected.GetProperty("what").GetString()} {expected.GetProperty("do").GetString()}");
        await screen.PictureAsync("bad-input");

        // The list above leads to the field.
        await page.Locator("[data-goes='piece.finished.wingspan']").ClickAsync();
        await Expect(field).ToBeFocusedAsync();
        await field.FillAsync("1.5 m");
        await Expect(field).Not.ToHaveAttributeAsync("aria-invalid", "true");
        await Expect(page.Locator(".problems")).ToBeHiddenAsync();
    }

    [BrowserFact]
    public async Task Every_problem_stands_at_its_field_at_once()
    {
        await using var server = await RunningPage.StartAsync(stages: RunningPage.GeometryAlone);
        await using var screen = await Screen.OnProjectAsync(chromium, server, new { shape = "kite", units = "in" });
        var problems = (await server.AnswerAsync("p1")).GetProperty("problems").EnumerateArray().Select(p => p.GetProperty("path").GetString()!).ToList();
        Assert.True(problems.Count > 5);
        foreach (var path in problems)
            await Expect(screen.Field(path)).ToHaveAttributeAsync("aria-invalid", "true");
        await Expect(screen.Page.Locator("[data-goes]")).ToHaveCountAsync(problems.Count);
        await screen.PictureAsync("kite-blank");
    }

    [BrowserFact]
    public async Task Another_unit_keeps_every_length()
    {
        await using var server = await RunningPage.StartAsync(stages: RunningPage.GeometryAlone);
        await using var screen = await Screen.OnProjectAsync(chromium, server, new { example = "lace-triangle" });
        var before = await server.Client.GetStringAsync("/api/copies/p1/files/plan.json");
        await screen.Page.GetByLabel("Units", new() { Exact = true }).SelectOptionAsync("in");
        await Expect(screen.Field("piece.finished.wingspan")).ToHaveValueAsync("148 cm");
        await screen.KeptAsync();
        var after = await server.Client.GetStringAsync("/api/copies/p1/files/plan.json");
        Assert.Equal(Pins(before), Pins(after));
        await screen.PartAsync("See");
        await Expect(screen.Page.Locator("table").First).ToContainTextAsync("58 1/4 in");

        static string Pins(string plan)
        {
            using var read = JsonDocument.Parse(plan);
            return string.Join(' ', read.RootElement.GetProperty("pins").EnumerateArray().Select(p => p.GetProperty("at").GetRawText() + p.GetProperty("rest").GetRawText()));
        }
    }

    [BrowserFact]
    public async Task Fields_of_every_kind_stand_clear_of_each_other_beside_the_drawing()
    {
        await using var server = await RunningPage.StartAsync(stages: RunningPage.GeometryAlone);
        var kinds = (await server.GetAsync("/api/start")).GetProperty("kinds").EnumerateArray().Select(k => k.GetProperty("shape").GetString()!).ToList();
        await using var screen = await Screen.OpenAsync(chromium, server, width: 1500);
        foreach (var shape in kinds)
        {
            var id = await server.BeginAsync(new { shape, units = "cm" });
            await screen.Page.GotoAsync($"{server.Root}#/{id}/measure");
            await Expect(screen.Page.Locator("#finished-head")).ToContainTextAsync(shape);
            await Expect(screen.Page.Locator(".room .field").First).ToBeVisibleAsync();
            var touching = await screen.Page.EvaluateAsync<string[]>(
                """
                () => [...document.querySelectorAll(".room")].flatMap(room => {
                  const boxes = [...room.querySelectorAll(".field")].map(f => [f.textContent.trim().slice(0, 20), f.getBoundingClientRect()]);
                  return boxes.flatMap(([a, p], i) => boxes.slice(i + 1).filter(([, q]) => p.left < q.right - 1 && q.left < p.right - 1 && p.top < q.bottom - 1 && q.top < p.bottom - 1).map(([b]) => `${a} / ${b}`));
                })
                """);
            Assert.True(touching.Length == 0, $"{shape}: {string.Join("; ", touching)}");
            await screen.PictureAsync($"kind-{shape}");
        }
    }

    private static async Task<double> ValueAsync(Screen screen, string path) => double.Parse(await screen.Field(path).InputValueAsync(), CultureInfo.InvariantCulture);
}
