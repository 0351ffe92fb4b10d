using System.CommandLine;

namespace BlockingTemplates.Cli.Commands;

/// <summary>Reads and computes, writes nothing, lists every problem and note.</summary>
internal static class CheckCommand
{
    public static Command Create(TextWriter output, TextWriter error)
    {
        var file = new Argument<string>("FILE") { Description = "The project file." };
        file.Validators.Add(FileWords.RefuseOptions);
        var command = new Command("check", "Reads a project file and plans it, writes nothing, and lists every problem and note.") { file };
        command.SetAction((parsed, cancellation) =>
        {
            var text = ProjectText.Load(parsed.GetRequiredValue(file));
            using var progress = ProgressLine.On(error);
            var planned = PlannedProject.Of(text, null, progress, cancellation);
            progress?.Dispose();
            Listing.Write(planned.Findings, output);
            return Task.FromResult(planned.Plan is null ? ExitCodes.Problems : ExitCodes.Done);
        });
        return command;
    }
}
