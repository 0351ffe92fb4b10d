using BlockingTemplates.Engine.Projects;
using BlockingTemplates.Output.Packets;

namespace BlockingTemplates.Cli.Commands;

/// <summary>Plans one project, writes its packet, and tells both.</summary>
internal static class PacketRun
{
    private const string ResultsFolder = "templates-out";

    public static int Run(Func<ProjectText> load, string? folder, PacketWish wish, TextWriter output, TextWriter error, CancellationToken cancellation)
    {
        try
        {
            var text = load();
            using var progress = ProgressLine.On(error);
            var planned = PlannedProject.Of(text, (project, _) => Measured(project, wish.Measured), progress, cancellation);
            progress?.Dispose();
            if (planned.Plan is null)
            {
                Listing.Write(planned.Findings, output);
                return ExitCodes.Problems;
            }

            var files = PartFiles.Of(planned.Parts, wish.PictureOnly, cancellation);
            var outcome = new PacketFolder(folder ?? FolderOf(text.Name)).Replace(files, cancellation);
            Summary.Write(planned.Parts, outcome.Written, output);
            foreach (var left in outcome.LeftAlone)
                output.WriteLine($"{left} of an earlier run was changed since and is left as it is.");
            Listing.Write(planned.Findings, output);
            return ExitCodes.Done;
        }
        catch (IOException e)
        {
            error.WriteLine(e.Message);
            return ExitCodes.FileTrouble;
        }
    }

    /// <summary>The folder of a packet unless one is named, by the project file's name without its ending.</summary>
    public static string FolderOf(string name) => Path.Combine(ResultsFolder, SafeFileName.From(name));

    private static Project Measured(Project project, string? measured) => measured is not null && MeasuredBars.TryRead(measured, out var bars, out _)
        ? project with { Sheets = project.Sheets with { Measured = bars } }
        : project;
}
