using System.CommandLine;

namespace BlockingTemplates.Cli.Commands;

/// <summary>Plans the shipped example and writes its packet.</summary>
internal static class DemoCommand
{
    public static Command Create(TextWriter output, TextWriter error)
    {
        var folder = PlanCommand.FolderOption();
        var command = new Command("demo", "Plans the shipped example and writes its packet.") { folder };
        command.SetAction((parsed, cancellation) => Task.FromResult(
            PacketRun.Run(ProjectText.Example, parsed.GetValue(folder), new(), output, error, cancellation)));
        return command;
    }
}
