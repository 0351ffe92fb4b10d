using System.CommandLine;

namespace BlockingTemplates.Cli.Commands;

/// <summary>Plans project files and writes their packets.</summary>
internal static class PlanCommand
{
    public static Command Create(TextWriter output, TextWriter error)
    {
        var files = new Argument<string[]>("FILE") { Description = "Project files.", Arity = ArgumentArity.OneOrMore };
        var folder = FolderOption();
        var measured = new Option<string?>("--measured") { Description = "What the printer check's bars measured, short side x long side, such as 149.5x239.", HelpName = "SHORTxLONG" };
        var pictureOnly = new Option<bool>("--picture-only") { Description = "Write only the overview picture." };
        var command = new Command("plan", "Plans project files and writes a packet for each.") { files, folder, measured, pictureOnly };
        command.Validators.Add(parsed =>
        {
            if (parsed.GetValue(folder) is not null && parsed.GetValue(files) is { Length: > 1 })
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
