using System.CommandLine;
using BlockingTemplates.Engine.Measure;

namespace BlockingTemplates.Cli.Commands;

/// <summary>Plans project files and writes their packets.</summary>
internal static class PlanCommand
{
    public static Command Create(TextWriter output, TextWriter error)
    {
        var files = new Argument<string[]>("FILE") { Description = "Project files.", Arity = ArgumentArity.OneOrMore };
        files.Validators.Add(FileWords.RefuseOptions);
        var folder = FolderOption();
        var measured = new Option<string?>("--measured") { Description = $"What the printer check's bars measured, short side x long side, such as {MeasuredBars.Example}.", HelpName = "SHORTxLONG" };
        measured.Validators.Add(parsed =>
        {
            if (parsed.GetValueOrDefault<string?>() is { } said && !MeasuredBars.TryRead(said, LengthUnit.Millimetres, out _, out var why))
                parsed.AddError($"\"{said}\" does not read as two lengths{(why is null ? "" : $": {why}")}. Write what the short and the long bar measured, such as {MeasuredBars.Example}.");
        });
        var pictureOnly = new Option<bool>("--picture-only") { Description = "Write only the overview picture." };
        var command = new Command("plan", "Plans project files and writes a packet for each.") { files, folder, measured, pictureOnly };
        command.Validators.Add(parsed =>
        {
            if (parsed.GetResult(folder) is { Tokens.Count: > 0 } && parsed.GetValue(files) is { Length: > 1 })
                parsed.AddError("--out takes one project file; leave it out to plan several.");
        });
        command.SetAction((parsed, cancellation) =>
        {
            var wish = new PacketWish(parsed.GetValue(measured), parsed.GetValue(pictureOnly));
            var worst = ExitCodes.Done;
            foreach (var file in parsed.GetRequiredValue(files))
                worst = Math.Max(worst, PacketRun.Run(() => ProjectText.Load(file), parsed.GetValue(folder), wish, output, error, cancellation));
            return Task.FromResult(worst);
        });
        return command;
    }

    public static Option<string?> FolderOption() => new("--out") { Description = "The folder the packet is written to; templates-out/NAME unless given.", HelpName = "DIR" };
}
