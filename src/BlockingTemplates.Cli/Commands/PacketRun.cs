using BlockingTemplates.Engine.Measure;
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
            var planned = PlannedProject.Of(text, (project, findings) => Measured(project, wish.Measured, findings));
            if (planned.Plan is not { } plan)
            {
                Listing.Write(planned.Findings, output);
                return ExitCodes.Problems;
            }

            var files = PacketFiles.Of(plan, wish.PictureOnly, cancellation);
            var outcome = new PacketFolder(folder ?? FolderOf(text.Name)).Replace(files, cancellation);
            Summary.Write(plan, outcome.Written, output);
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

    private static Project Measured(Project project, string? measured, Findings findings)
    {
        if (measured is null)
            return project;
        var sides = measured.Split(['x', 'X', '×']);
        string? why = null;
        if (sides.Length == 2
            && LengthText.TryRead(sides[0], project.Units, out var narrow, out why)
            && LengthText.TryRead(sides[1], project.Units, out var wide, out why))
            return project with { Sheets = project.Sheets with { Measured = (narrow, wide) } };
        findings.Problem("--measured", $"\"{measured}\" does not read as two lengths{(why is null ? "" : $": {why}")}", $"Write what the short and the long bar measured with an x between, such as 149.5x239 (in {LengthWords.UnitOf(project.Units)} unless a unit is written).");
        return project;
    }
}
