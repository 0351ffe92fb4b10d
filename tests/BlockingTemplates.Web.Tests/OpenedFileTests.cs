using System.Net;
using System.Text;
using BlockingTemplates.Engine.Projects.Files;

namespace BlockingTemplates.Web.Tests;

// A project file that the page was started with.
public sealed class OpenedFileTests : IDisposable
{
    private readonly string _folder = RunningPage.NewFolder();
    private readonly string _file;

    public OpenedFileTests()
    {
        Directory.CreateDirectory(_folder);
        _file = Path.Combine(_folder, "shawl.jsonc");
        File.WriteAllText(_file, Pieces.Small());
    }

    private string State => Path.Combine(_folder, "state");

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public async Task Saving_writes_the_text_with_its_comments_and_only_when_asked()
    {
        await using var page = await RunningPage.StartAsync(State, Opened());
        Assert.EndsWith("/#/p1/measure", page.Server.Address, StringComparison.Ordinal);
        using (await page.EditAsync("p1", 1, Pieces.Small(45)))
        {
            Assert.Equal(Pieces.Small(), await File.ReadAllTextAsync(_file));
            Assert.False((await page.GetAsync("/api/copies/p1")).GetProperty("isSaved").GetBoolean());
        }

        Assert.Equal(HttpStatusCode.OK, await page.StatusAsync(HttpMethod.Post, "/api/copies/p1/save", RunningPage.Json("{}")));
        Assert.Equal(Pieces.Small(45), await File.ReadAllTextAsync(_file));
        Assert.Equal(["shawl.jsonc"], Directory.EnumerateFiles(_folder).Select(f => Path.GetFileName(f)));
    }

    [Fact]
    public async Task A_file_that_another_program_changed_is_not_replaced()
    {
        await using var page = await RunningPage.StartAsync(State, Opened());
        using (await page.EditAsync("p1", 1, Pieces.Small(45)))
            await File.WriteAllTextAsync(_file, Pieces.Small(50));
        Assert.Equal(HttpStatusCode.Conflict, await page.StatusAsync(HttpMethod.Post, "/api/copies/p1/save", RunningPage.Json("{}")));
        Assert.Equal(Pieces.Small(50), await File.ReadAllTextAsync(_file));
    }

    [Fact]
    public async Task Opened_again_unsaved_work_goes_on_and_a_file_changed_meanwhile_is_taken()
    {
        await using (var page = await RunningPage.StartAsync(State, Opened()))
        using (await page.EditAsync("p1", 1, Pieces.Small(45)))
        {
            // Ends without saving.
        }

        await using (var page = await RunningPage.StartAsync(State, Opened()))
        {
            Assert.Equal(Pieces.Small(45), (await page.TextAsync("p1")).Text);
            Assert.Equal(HttpStatusCode.OK, await page.StatusAsync(HttpMethod.Post, "/api/copies/p1/save", RunningPage.Json("{}")));
        }

        await File.WriteAllTextAsync(_file, Pieces.Small(50));
        await using (var page = await RunningPage.StartAsync(State, Opened()))
        {
            Assert.Equal(Pieces.Small(50), (await page.TextAsync("p1")).Text);
            using (await page.EditAsync("p1", (await page.TextAsync("p1")).Version, Pieces.Small(55)))
                await File.WriteAllTextAsync(_file, Pieces.Small(60));
        }

        // Both changed: the file stands beside the work that was not saved.
        await using var last = await RunningPage.StartAsync(State, Opened());
        Assert.EndsWith("/#/p2/measure", last.Server.Address, StringComparison.Ordinal);
        Assert.Equal((Pieces.Small(55), Pieces.Small(60)), ((await last.TextAsync("p1")).Text, (await last.TextAsync("p2")).Text));
    }

    [Fact]
    public async Task Files_that_the_project_names_come_along()
    {
        var leaf = RunningPage.Example("leaf-shawl");
        var opened = new OpenedFile(leaf, await File.ReadAllBytesAsync(leaf), name => new(File.ReadAllBytes(Path.Combine(Path.GetDirectoryName(leaf)!, name)), null));
        await using var page = await RunningPage.StartAsync(State, opened);
        Assert.Empty((await page.AnswerAsync("p1")).GetProperty("problems").EnumerateArray());
        Assert.Equal(["leaf-shawl.csv", "leaf-shawl.svg"], (await page.GetAsync("/api/copies/p1")).GetProperty("beside").EnumerateArray().Select(b => b.GetString()).Order());
    }

    [Fact]
    public async Task A_file_put_beside_the_project_is_read_in_the_next_plan()
    {
        await using var page = await RunningPage.StartAsync(State);
        var id = await page.BeginAsync(await File.ReadAllTextAsync(RunningPage.Example("leaf-shawl")));
        Assert.NotEmpty((await page.AnswerAsync(id)).GetProperty("problems").EnumerateArray());
        foreach (var name in new[] { "leaf-shawl.svg", "leaf-shawl.csv" })
        {
            var body = new ByteArrayContent(await File.ReadAllBytesAsync(Path.Combine(Path.GetDirectoryName(RunningPage.Example("x"))!, name)));
            body.Headers.ContentType = new("application/octet-stream");
            Assert.Equal(HttpStatusCode.OK, await page.StatusAsync(HttpMethod.Put, $"/api/copies/{id}/beside/{name}", body));
        }

        Assert.Empty((await page.AnswerAsync(id)).GetProperty("problems").EnumerateArray());
    }

    private OpenedFile Opened() => new(_file, Encoding.UTF8.GetBytes(File.ReadAllText(_file)), _ => new FileBeside(null, "There is none."));
}
