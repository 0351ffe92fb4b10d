using System.CommandLine;
using System.Text;
using BlockingTemplates.Drawing.Forms;
using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Projects;
using BlockingTemplates.Output.Pdf;

namespace BlockingTemplates.Cli.Commands;

/// <summary>Writes a project file with blanks and the measuring form that goes with it.</summary>
internal static class NewCommand
{
    public static Command Create(TextWriter output, TextWriter error)
    {
        var shape = new Argument<string>("SHAPE") { Description = "The kind of piece." };
        shape.AcceptOnlyFromAmong([.. PieceKinds.All.Select(k => k.Shape)]);
        var units = new Option<string>("--units") { Description = "The units the file is written in.", DefaultValueFactory = _ => "cm" };
        units.AcceptOnlyFromAmong("cm", "in", "mm");
        var file = new Option<string?>("--out") { Description = "The project file to write; SHAPE.jsonc unless given.", HelpName = "FILE" };
        var command = new Command("new", "Writes a project file with blanks to fill in, and a one-page measuring form.") { shape, units, file };
        command.SetAction(parsed => Write(
            PieceKinds.Find(parsed.GetRequiredValue(shape))!,
            Enum.GetValues<LengthUnit>().First(u => LengthWords.UnitOf(u) == parsed.GetRequiredValue(units)),
            parsed.GetValue(file),
            output,
            error));
        return command;
    }

    private static int Write(PieceKind kind, LengthUnit units, string? file, TextWriter output, TextWriter error)
    {
        var project = Path.GetFullPath(file ?? $"{kind.Shape}.jsonc");
        var form = Path.Combine(Path.GetDirectoryName(project)!, $"{Path.GetFileNameWithoutExtension(project)}-measuring-form.pdf");
        foreach (var path in new[] { project, form })
        {
            if (!File.Exists(path) && !Directory.Exists(path))
                continue;
            error.WriteLine($"{path} is there already and is not replaced. Name another file with --out.");
            return ExitCodes.FileTrouble;
        }

        var written = new List<string>();
        try
        {
            Directory.CreateDirectory(Path.GetDirectoryName(project)!);
            foreach (var (path, bytes) in new[] { (form, PdfWriter.Write(MeasuringForm.Draw(kind, units))), (project, Encoding.UTF8.GetBytes(BlankProject.For(kind, units))) })
            {
                using var stream = new FileStream(path, FileMode.CreateNew, FileAccess.Write);
                written.Add(path);
                stream.Write(bytes);
            }
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            written.ForEach(File.Delete);
            error.WriteLine(e.Message);
            return ExitCodes.FileTrouble;
        }

        output.WriteLine(project);
        output.WriteLine(form);
        output.WriteLine("Print the form, lay the tape as it shows, fill in the blanks of the project file, then: plan FILE");
        return ExitCodes.Done;
    }
}
