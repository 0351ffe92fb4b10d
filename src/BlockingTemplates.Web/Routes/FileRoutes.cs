using System.Globalization;
using System.IO.Compression;
using BlockingTemplates.Drawing.Forms;
using BlockingTemplates.Engine;
using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Output.Packets;
using BlockingTemplates.Output.Pdf;
using BlockingTemplates.Web.Desk;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;

namespace BlockingTemplates.Web.Routes;

/// <summary>The files of a packet, one by one or together: the command line's own.</summary>
/// <param name="copies">Finds the working copy.</param>
internal sealed class FileRoutes(CopyRoutes copies)
{
    // The earliest time a zip file can hold: the same packet gives the same bytes.
    private static readonly DateTimeOffset NoTime = new(1980, 1, 1, 0, 0, 0, TimeSpan.Zero);

    private static readonly Dictionary<string, string> Types = new(StringComparer.Ordinal)
    {
        [".pdf"] = "application/pdf",
        [".svg"] = "image/svg+xml",
        [".png"] = "image/png",
        [".csv"] = "text/csv; charset=utf-8",
        [".json"] = "application/json; charset=utf-8",
    };

    /// <summary>Serves them.</summary>
    public void Map(IEndpointRouteBuilder routes)
    {
        routes.MapGet("/api/copies/{id}/files/{**name}", context => copies.With(context, copy => WithPlan(context, copy, parts => One(context, parts))));
        routes.MapGet("/api/copies/{id}/packet", context => copies.With(context, copy => WithPlan(context, copy, parts => Packet(context, copy, parts))));
        routes.MapGet("/api/copies/{id}/form", context => copies.With(context, copy => Form(context, copy)));
    }

    /// <summary>The plan of the newest version; refused where it is not the version asked for, or has problems.</summary>
    private static async Task WithPlan(HttpContext context, WorkingCopy copy, Func<IReadOnlyList<PlannedPart>, Task> then)
    {
        var asked = context.Request.Query["version"].ToString();
        if (asked.Length > 0 && asked != copy.Text.Version.ToString(CultureInfo.InvariantCulture))
            await Reply.Refuse(context, StatusCodes.Status409Conflict, "The project was changed since. Load the page again.").ConfigureAwait(false);
        else if (await copy.FinalAnswerAsync(context.RequestAborted).ConfigureAwait(false) is not { Parts: { Count: > 0 } parts })
            await Reply.Refuse(context, StatusCodes.Status409Conflict, "The project has problems; there is nothing to print yet.").ConfigureAwait(false);
        else
            await then(parts).ConfigureAwait(false);
    }

    private static Task One(HttpContext context, IReadOnlyList<PlannedPart> parts)
    {
        var name = context.GetRouteValue("name") as string ?? "";
        return PartFiles.One(parts, name) is { } file
            ? Reply.File(context, Path.GetFileName(file.Name), Types[Path.GetExtension(file.Name)], file.Bytes, inline: file.Name.EndsWith(".pdf", StringComparison.Ordinal))
            : Reply.Refuse(context, StatusCodes.Status404NotFound, "There is no such file in this packet.");
    }

    private static async Task Packet(HttpContext context, WorkingCopy copy, IReadOnlyList<PlannedPart> parts)
    {
        var asked = context.Request.Query["file"];
        if (asked.Any(name => name != ProjectName && !PartFiles.Names(parts).Contains(name)))
        {
            await Reply.Refuse(context, StatusCodes.Status404NotFound, "There is no such file in this packet.").ConfigureAwait(false);
            return;
        }

        using var kept = new MemoryStream();
        using (var zip = new ZipArchive(kept, ZipArchiveMode.Create, leaveOpen: true))
        {
            foreach (var name in asked.Count > 0 ? PartFiles.Names(parts).Where(asked.Contains) : PartFiles.Names(parts))
                Add(zip, name, PartFiles.One(parts, name!)!.Bytes);
            if (asked.Contains(ProjectName))
            {
                Add(zip, Reply.FileName(copy.Card.Name) + ".jsonc", copy.Text.Text);
                foreach (var beside in copy.Card.Beside)
                    Add(zip, beside, copy.Beside(beside).Bytes ?? []);
            }
        }

        await Reply.File(context, $"{Reply.FileName(copy.Card.Name)}.zip", "application/zip", kept.ToArray()).ConfigureAwait(false);
    }

    /// <summary>How the project file is asked for among the packet's.</summary>
    private const string ProjectName = "project";

    private static void Add(ZipArchive zip, string name, ReadOnlyMemory<byte> bytes)
    {
        var entry = zip.CreateEntry(name);
        entry.LastWriteTime = NoTime;
        using var stream = entry.Open();
        stream.Write(bytes.Span);
    }

    private static async Task Form(HttpContext context, WorkingCopy copy)
    {
        if (await copy.AnswerAsync().ConfigureAwait(false) is not { Project: { } project })
            await Reply.Refuse(context, StatusCodes.Status409Conflict, "The kind of piece cannot be read yet.").ConfigureAwait(false);
        else
            await Reply.File(context, "measuring-form.pdf", Types[".pdf"], PdfWriter.Write(MeasuringForm.Draw(project.Kind, project.Units == LengthUnit.Millimetres ? LengthUnit.Centimetres : project.Units)), inline: true).ConfigureAwait(false);
    }
}
