using System.CommandLine;

namespace BlockingTemplates.Cli.Commands;

/// <summary>Plans project files and writes their packets.</summary>
internal static class PlanCommand
{
    public static Command Create(TextWriter output, TextWriter error)
    {
        var files = new Argument<string[]>("FILE") { Description = "Project files, or folders of them.", Arity = ArgumentArity.OneOrMore };
        files.Validators.Add(FileWords.RefuseOptions);
        var folder = FolderOption();
        var measured = new Option<string?>("--measured") { Description = $"What the printer check's bars measured, short side x long side, such as {MeasuredBars.Example}.", HelpName = "SHORTxLONG" };
        measured.Validators.Add(parsed =>
        {
            if (parsed.GetValueOrDefault<string?>() is { } said && !MeasuredBars.TryRead(said, out _, out var why))
                parsed.AddError($"\"{said}\" does not read as two lengths{(why is null ? "" : $": {why}")}. Write what the short and the long bar measured, such as {MeasuredBars.Example}.");
        });
        var pictureOnly = new Option<bool>("--picture-only") { Description = "Write only the overview picture." };
        var command = new Command("plan", "Plans project files and writes a packet for each.") { files, folder, measured, pictureOnly };
        command.Validators.Add(parsed =>
        {
            if (parsed.GetResult(folder) is { Tokens.Count: > 0 } && parsed.GetValue(files) is { } named && ProjectFiles.Named(named).Count > 1)
                parsed.AddError("--out takes one project file; leave it out to plan several.");
        });
        command.SetAction((parsed, cancellation) =>
        {
            var wish = new PacketWish(parsed.GetValue(measured), parsed.GetValue(pictureOnly));
            var named = ProjectFiles.Named(parsed.GetRequiredValue(files));
            return named.Count == 1
                ? Task.FromResult(PacketRun.Run(() => ProjectText.Load(named[0]), parsed.GetValue(folder), wish, output, error, cancellation))
                : SeveralAsync(named, wish, output, error, cancellation);
        });
        return command;
    }

    /// <summary>Plans files side by side on the cores there are; one that fails does not stop the others. Answers the worst exit code.</summary>
    private static async Task<int> SeveralAsync(IReadOnlyList<string> files, PacketWish wish, TextWriter output, TextWriter error, CancellationToken cancellation)
    {
        var taken = files.GroupBy(f => PacketRun.FolderOf(Path.GetFileNameWithoutExtension(f)), StringComparer.OrdinalIgnoreCase).Where(g => g.Count() > 1).ToList();
        if (taken.Count > 0)
        {
            await error.WriteLineAsync($"These files would write to the same folder: {string.Join(", ", taken[0])}. Plan them one by one with --out.").ConfigureAwait(false);
            return ExitCodes.WrongUse;
        }

        var worst = ExitCodes.Done;
        var done = 0;
        using var telling = new SemaphoreSlim(1);
        await Parallel.ForEachAsync(files, cancellation, async (file, stop) =>
        {
            using var told = new StringWriter();
            using var wrong = new StringWriter();
            var code = PacketRun.Run(() => ProjectText.Load(file), null, wish, told, wrong, stop);
            await telling.WaitAsync(stop).ConfigureAwait(false);
            worst = Math.Max(worst, code);
            await output.WriteLineAsync(FormattableString.Invariant($"{++done} of {files.Count}: {file}")).ConfigureAwait(false);
            await output.WriteAsync(told.ToString()).ConfigureAwait(false);
            await error.WriteAsync(wrong.ToString()).ConfigureAwait(false);
            telling.Release();
        }).ConfigureAwait(false);
        return worst;
    }

    public static Option<string?> FolderOption() => new("--out") { Description = "The folder the packet is written to; templates-out/NAME unless given.", HelpName = "DIR" };
}
