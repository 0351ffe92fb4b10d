using System.Text;
using System.Text.Json;
using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Projects;
using BlockingTemplates.Engine.Projects.Files;
using BlockingTemplates.Web.Answers;
using BlockingTemplates.Web.Desk;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;

namespace BlockingTemplates.Web.Routes;

/// <summary>Working copies: their list, their text and the answers to it.</summary>
/// <param name="desk">Where they are kept.</param>
internal sealed class CopyRoutes(WorkDesk desk)
{
    private const int MostNewBytes = 30_000_000;
    private const int MostBeside = 20;

    /// <summary>Serves them.</summary>
    public void Map(IEndpointRouteBuilder routes)
    {
        routes.MapGet("/api/copies", context => Reply.Json(context, [.. desk.All.Select(Told)], PageJson.Default.IReadOnlyListCopyAnswer));
        routes.MapPost("/api/copies", Add);
        routes.MapGet("/api/copies/{id}", context => With(context, copy => Reply.Json(context, Told(copy), PageJson.Default.CopyAnswer)));
        routes.MapDelete("/api/copies/{id}", context => desk.Delete(Id(context)) ? Reply.Json(context, [.. desk.All.Select(Told)], PageJson.Default.IReadOnlyListCopyAnswer) : NotThere(context));
        routes.MapGet("/api/copies/{id}/text", context => With(context, copy => Text(context, copy)));
        routes.MapPut("/api/copies/{id}/text", context => With(context, copy => Edit(context, copy)));
        routes.MapPut("/api/copies/{id}/beside/{name}", context => With(context, copy => Put(context, copy)));
        routes.MapGet("/api/copies/{id}/answer", context => With(context, copy => Answer(context, copy)));
        routes.MapPost("/api/copies/{id}/save", context => With(context, copy => Save(context, copy)));
    }

    /// <summary>The copy that a request's address names.</summary>
    public Task With(HttpContext context, Func<WorkingCopy, Task> then) => desk.Find(Id(context)) is { } copy ? then(copy) : NotThere(context);

    private static string Id(HttpContext context) => context.GetRouteValue("id") as string ?? "";

    private static Task NotThere(HttpContext context) => Reply.Refuse(context, StatusCodes.Status404NotFound, "There is no such project here.");

    private static CopyAnswer Told(WorkingCopy copy)
    {
        var (text, version) = copy.Text;
        var card = copy.Card;
        return new(copy.Id, card.Name, TitleOf(text), version, card.FilePath, card.SavedHash == KeptFiles.HashOf(text), card.Beside);
    }

    private static string TitleOf(byte[] text)
    {
        try
        {
            using var read = JsonDocument.Parse(text, new() { AllowTrailingCommas = true, CommentHandling = JsonCommentHandling.Skip });
            return read.RootElement.ValueKind == JsonValueKind.Object && read.RootElement.TryGetProperty("title", out var title) && title.ValueKind == JsonValueKind.String ? title.GetString()! : "";
        }
        catch (JsonException)
        {
            return "";
        }
    }

    private async Task Add(HttpContext context)
    {
        if (await Reply.Read(context, PageJson.Default.NewCopy, MostNewBytes).ConfigureAwait(false) is not { } wish)
            return;
        if (Made(wish) is not var (name, text, beside))
            await Reply.Refuse(context, StatusCodes.Status400BadRequest, "A new project is made of an example, a kind of piece with its units, or a file of at most 5 MB with files of plain names beside it.").ConfigureAwait(false);
        else if (desk.Add(name, text, beside) is not { } copy)
            await Reply.Refuse(context, StatusCodes.Status409Conflict, "There are too many projects here. Take some away first.").ConfigureAwait(false);
        else
            await Reply.Json(context, Told(copy), PageJson.Default.CopyAnswer, StatusCodes.Status201Created).ConfigureAwait(false);
    }

    private static (string Name, byte[] Text, IReadOnlyList<KeyValuePair<string, byte[]>> Beside)? Made(NewCopy wish)
    {
        if (wish.Example is { } example)
            return Examples.Find(example) is var (text, beside) ? (example, text, beside) : null;
        if (wish.Shape is { } shape)
        {
            var unit = Enum.GetValues<LengthUnit>().Where(u => LengthWords.UnitOf(u) == wish.Units).Select(u => (LengthUnit?)u).FirstOrDefault();
            return PieceKinds.Find(shape) is { } kind && unit is { } units ? (kind.Shape, Encoding.UTF8.GetBytes(BlankProject.For(kind, units)), []) : null;
        }

        if (wish.Text is not { } said || Encoding.UTF8.GetByteCount(said) > ProjectReader.MostBytes)
            return null;
        var files = wish.Beside ?? [];
        if (files.Count > MostBeside || files.Any(f => f is null || !FileBeside.IsPlainName(f.Name ?? "") || f.Bytes is null || f.Bytes.Length > FileBeside.MostBytes))
            return null;
        return (Reply.FileName(Path.GetFileNameWithoutExtension(wish.Name ?? "")), Encoding.UTF8.GetBytes(said), [.. files.DistinctBy(f => f.Name).Select(f => KeyValuePair.Create(f.Name, f.Bytes))]);
    }

    private static Task Text(HttpContext context, WorkingCopy copy)
    {
        var (text, version) = copy.Text;
        context.Response.Headers.ETag = FormattableString.Invariant($"\"{version}\"");
        return Reply.File(context, copy.Card.Name + ".jsonc", "text/plain; charset=utf-8", text);
    }

    private async Task Edit(HttpContext context, WorkingCopy copy)
    {
        if (!long.TryParse(context.Request.Headers.IfMatch.ToString().Trim('"'), System.Globalization.CultureInfo.InvariantCulture, out var madeFrom))
            await Reply.Refuse(context, StatusCodes.Status428PreconditionRequired, "Say in If-Match which version the text was made from.").ConfigureAwait(false);
        else if (await Reply.Body(context, ProjectReader.MostBytes, "text/plain").ConfigureAwait(false) is not { } text)
            return;
        else if (copy.Edit(madeFrom, text, desk.NextOrder()) is not { } version)
            await Reply.Refuse(context, StatusCodes.Status412PreconditionFailed, "The project was changed meanwhile, on another screen.").ConfigureAwait(false);
        else
            await Reply.Json(context, new(version, await AnswerTo(copy, version).ConfigureAwait(false)), PageJson.Default.EditAnswer).ConfigureAwait(false);
    }

    private async Task Put(HttpContext context, WorkingCopy copy)
    {
        var name = context.GetRouteValue("name") as string ?? "";
        if (!FileBeside.IsPlainName(name) || (copy.Card.Beside.Count >= MostBeside && !copy.Card.Beside.Contains(name)))
            await Reply.Refuse(context, StatusCodes.Status400BadRequest, "Only a plain file name, and few of them, may stand beside a project.").ConfigureAwait(false);
        else if (await Reply.Body(context, FileBeside.MostBytes, "application/octet-stream").ConfigureAwait(false) is { } bytes)
        {
            copy.Put(name, bytes, desk.NextOrder());
            await Reply.Json(context, Told(copy), PageJson.Default.CopyAnswer).ConfigureAwait(false);
        }
    }

    private static async Task Answer(HttpContext context, WorkingCopy copy)
    {
        var version = copy.Text.Version;
        await Reply.Json(context, new(version, await AnswerTo(copy, version).ConfigureAwait(false)), PageJson.Default.EditAnswer).ConfigureAwait(false);
    }

    private static async Task<StageAnswer?> AnswerTo(WorkingCopy copy, long version) =>
        await copy.AnswerAsync().ConfigureAwait(false) is { } result && result.Version == version ? Answering.Of(result) : null;

    private static async Task Save(HttpContext context, WorkingCopy copy)
    {
        var (card, text) = (copy.Card, copy.Text.Text);
        if (card.FilePath is not { } path)
        {
            await Reply.Refuse(context, StatusCodes.Status409Conflict, "This project was not opened from a file; download it instead.").ConfigureAwait(false);
            return;
        }

        try
        {
            if (File.Exists(path) && KeptFiles.HashOf(await File.ReadAllBytesAsync(path, context.RequestAborted).ConfigureAwait(false)) != card.SavedHash)
            {
                await Reply.Refuse(context, StatusCodes.Status409Conflict, $"{Path.GetFileName(path)} was changed by another program meanwhile; it is left as it is. Download this project and compare the two.").ConfigureAwait(false);
                return;
            }

            KeptFiles.Replace(path, text);
            copy.Saved(path, text);
            await Reply.Json(context, Told(copy), PageJson.Default.CopyAnswer).ConfigureAwait(false);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            await Reply.Refuse(context, StatusCodes.Status409Conflict, $"{Path.GetFileName(path)} could not be written: {e.Message}").ConfigureAwait(false);
        }
    }
}
