using System.Net;
using System.Text.Json;
using BlockingTemplates.Engine.Shapes;
using BlockingTemplates.Web.Answers;

namespace BlockingTemplates.Web.Tests;

// The pinning: kept by the program, the same on every screen.
public class PinningTests
{
    [Fact]
    public async Task Two_screens_agree_and_the_same_step_from_both_does_no_harm()
    {
        await using var page = await RunningPage.StartAsync(stages: RunningPage.GeometryAlone);
        var id = await page.BeginAsync(Pieces.Small());
        var begun = await StepAsync(page, id, "begin");
        var marks = begun.GetProperty("marks").GetArrayLength();
        Assert.Equal(marks, begun.GetProperty("pins").GetProperty("marks").GetInt32());
        await StepAsync(page, id, "set", 1);
        var both = await Task.WhenAll(StepAsync(page, id, "set", 2), StepAsync(page, id, "set", 2));
        Assert.All(both, s => Assert.Equal([1, 2], Numbers(s, "set")));
        using var other = page.NewClient();
        var told = await RunningPage.JsonOf(await other.GetAsync($"/api/copies/{id}/pins"));
        Assert.Equal([1, 2], Numbers(told, "set"));
        Assert.Equal(3, told.GetProperty("pins").GetProperty("at").GetInt32());
    }

    [Fact]
    public async Task Next_back_and_jump_go_over_all_marks_and_then_every_pin_is_counted_out()
    {
        await using var page = await RunningPage.StartAsync(stages: RunningPage.GeometryAlone);
        var id = await page.BeginAsync(Pieces.Small());
        var marks = (await StepAsync(page, id, "begin")).GetProperty("pins").GetProperty("marks").GetInt32();
        var state = await StepAsync(page, id, "go", 3);
        Assert.Equal(3, At(state));
        state = await StepAsync(page, id, "set", 3);
        Assert.Equal(4, At(state));
        state = await StepAsync(page, id, "unset", 3);
        Assert.Equal((3, 0), (At(state), Numbers(state, "set").Length));
        for (var n = marks; n >= 1; n--)
            state = await StepAsync(page, id, "set", n);
        Assert.Equal(Enumerable.Range(1, marks), Numbers(state, "set"));
        state = await StepAsync(page, id, "dry");
        Assert.True(state.GetProperty("pins").GetProperty("takingOut").GetBoolean());
        foreach (var n in Enumerable.Range(1, marks).Where(n => n != 2))
            state = await StepAsync(page, id, "out", n);
        Assert.Equal([2], Numbers(state, "set").Except(Numbers(state, "out")));
        state = await StepAsync(page, id, "out", 2);
        Assert.Equal(Numbers(state, "set"), Numbers(state, "out"));
    }

    [Fact]
    public async Task A_pin_that_was_never_set_cannot_be_taken_out()
    {
        await using var page = await RunningPage.StartAsync(stages: RunningPage.GeometryAlone);
        var id = await page.BeginAsync(Pieces.Small());
        await StepAsync(page, id, "begin");
        Assert.Equal(HttpStatusCode.BadRequest, await StatusAsync(page, id, """{ "step": "out", "number": 2 }"""));
    }

    [Theory]
    [InlineData("""{ "step": "set", "number": 0 }""")]
    [InlineData("""{ "step": "set", "number": 100000 }""")]
    [InlineData("""{ "step": "set", "number": -1 }""")]
    [InlineData("""{ "step": "burn", "number": 1 }""")]
    [InlineData("""{ "number": 1 }""")]
    [InlineData("""{ "step": 7 }""")]
    [InlineData("[]")]
    [InlineData("")]
    public async Task Other_steps_are_refused_and_change_nothing(string body)
    {
        await using var page = await RunningPage.StartAsync(stages: RunningPage.GeometryAlone);
        var id = await page.BeginAsync(Pieces.Small());
        await StepAsync(page, id, "begin");
        Assert.Equal(HttpStatusCode.BadRequest, await StatusAsync(page, id, body));
        var told = await page.GetAsync($"/api/copies/{id}/pins");
        Assert.Equal((1, 0), (At(told), Numbers(told, "set").Length));
    }

    [Fact]
    public async Task An_edit_after_the_beginning_leaves_the_numbers_that_one_pins_by()
    {
        await using var page = await RunningPage.StartAsync(stages: RunningPage.GeometryAlone);
        var id = await page.BeginAsync(Pieces.Small());
        var begun = await StepAsync(page, id, "begin");
        await StepAsync(page, id, "set", 1);
        using (await page.EditAsync(id, 1, Pieces.Small(60)))
        {
            var told = await page.GetAsync($"/api/copies/{id}/pins");
            Assert.True(told.GetProperty("changedSince").GetBoolean());
            Assert.Equal(begun.GetProperty("marks").GetRawText(), told.GetProperty("marks").GetRawText());
        }

        var anew = await StepAsync(page, id, "begin");
        Assert.True(anew.GetProperty("marks").GetArrayLength() > begun.GetProperty("marks").GetArrayLength());
        Assert.Empty(Numbers(anew, "set"));
        Assert.False(anew.GetProperty("changedSince").GetBoolean());
    }

    [Fact]
    public async Task There_is_no_pinning_while_the_project_has_problems()
    {
        await using var page = await RunningPage.StartAsync(stages: RunningPage.GeometryAlone);
        var id = await page.BeginAsync(Pieces.Broken);
        Assert.Equal(HttpStatusCode.Conflict, await StatusAsync(page, id, """{ "step": "begin", "number": 0 }"""));
        Assert.Equal(HttpStatusCode.NotFound, await page.StatusAsync(HttpMethod.Get, $"/api/copies/{id}/pins/1/mat"));
    }

    [Fact]
    public async Task Each_mark_has_its_words_and_its_picture_on_its_mat()
    {
        await using var page = await RunningPage.StartAsync(stages: RunningPage.GeometryAlone);
        var id = await page.BeginAsync(new { example = "lace-triangle" });
        var marks = (await StepAsync(page, id, "begin")).GetProperty("marks");
        var planned = await RunningPage.JsonOf(await page.Client.GetAsync($"/api/copies/{id}/files/plan.json"));
        foreach (var (mark, pin) in marks.EnumerateArray().Zip(planned.GetProperty("pins").EnumerateArray()))
        {
            Assert.Equal(pin.GetProperty("number").GetInt32(), mark.GetProperty("number").GetInt32());
            Assert.Equal(pin.GetProperty("mat").GetString(), mark.GetProperty("mat").GetString());
            Assert.Equal($"{Math.Round(pin.GetProperty("pullMm").GetDouble(), MidpointRounding.AwayFromZero) / 10:0.0} cm", mark.GetProperty("pull").GetProperty("length").GetString());
        }

        var svg = await page.Client.GetStringAsync($"/api/copies/{id}/pins/7/mat");
        Assert.Contains($">{marks[6].GetProperty("mat").GetString()}<", svg, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Pinning_goes_by_the_whole_plan_with_the_pulls_in_turn()
    {
        await using var page = await RunningPage.StartAsync();
        var id = await page.BeginAsync(Pieces.Small());
        var begun = await StepAsync(page, id, "begin");
        var marks = begun.GetProperty("marks");
        Assert.True(begun.GetProperty("plan").GetProperty("hasCloth").GetBoolean());
        var planned = await RunningPage.JsonOf(await page.Client.GetAsync($"/api/copies/{id}/files/plan.json"));
        Assert.Equal(planned.GetProperty("pins").GetArrayLength(), marks.GetArrayLength());
        Assert.True(marks[0].GetProperty("inTurn").GetProperty("isApproximate").GetBoolean());
        Assert.False(marks.EnumerateArray().Last().GetProperty("inTurn").GetProperty("isApproximate").GetBoolean());
    }

    [Fact]
    public async Task Of_several_sizes_the_one_asked_for_is_pinned_by()
    {
        await using var page = await RunningPage.StartAsync(stages: RunningPage.GeometryAlone);
        var id = await page.BeginAsync(new { example = "sweater-back-sizes" });
        var answer = await page.AnswerAsync(id);
        Assert.Equal(["S", "M", "L"], answer.GetProperty("others").EnumerateArray().Prepend(answer.GetProperty("plan")).Select(p => p.GetProperty("part").GetString()));
        var begun = await StepAsync(page, id, "begin", 2);
        Assert.Equal("L", begun.GetProperty("plan").GetProperty("part").GetString());
        Assert.Equal(answer.GetProperty("others")[1].GetProperty("pins").GetInt32(), begun.GetProperty("pins").GetProperty("marks").GetInt32());
        Assert.Equal(HttpStatusCode.Conflict, await StatusAsync(page, id, """{ "step": "begin", "number": 3 }"""));
        Assert.NotEmpty(await page.Client.GetStringAsync($"/api/copies/{id}/pins/1/mat"));
    }

    // The maker stands at the lower side: up in the frame is away from them.
    [Theory]
    [InlineData(1, 0, "to the right")]
    [InlineData(1, 1, "to the right and away from you")]
    [InlineData(0, 1, "away from you")]
    [InlineData(-1, 1, "to the left and away from you")]
    [InlineData(-1, 0.1, "to the left")]
    [InlineData(-1, -0.1, "to the left")]
    [InlineData(-1, -1, "to the left and toward you")]
    [InlineData(0, -1, "toward you")]
    [InlineData(1, -1, "to the right and toward you")]
    public void A_pull_is_told_as_one_sees_it(double x, double y, string words) => Assert.Equal(words, PullWords.Direction(new Vector(x, y)));

    private static async Task<JsonElement> StepAsync(RunningPage page, string id, string step, int number = 0)
    {
        using var answer = await page.SendAsync(HttpMethod.Post, $"/api/copies/{id}/pins", RunningPage.Json(JsonSerializer.Serialize(new { step, number })));
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        return await RunningPage.JsonOf(answer);
    }

    private static Task<HttpStatusCode> StatusAsync(RunningPage page, string id, string body) => page.StatusAsync(HttpMethod.Post, $"/api/copies/{id}/pins", RunningPage.Json(body));

    private static int[] Numbers(JsonElement state, string which) => [.. state.GetProperty("pins").GetProperty(which).EnumerateArray().Select(n => n.GetInt32())];

    private static int At(JsonElement state) => state.GetProperty("pins").GetProperty("at").GetInt32();
}
