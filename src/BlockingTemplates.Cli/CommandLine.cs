using System.CommandLine;
using BlockingTemplates.Cli.Commands;

namespace BlockingTemplates.Cli;

/// <summary>The command line: reads the request and runs the verb.</summary>
public static class CommandLine
{
    private static readonly string[] Reserved = ["record", "trace", "studio"];

    /// <summary>Runs a command line and answers its exit code.</summary>
    /// <param name="arguments">The words after the program's name.</param>
    /// <param name="output">Where results are told.</param>
    /// <param name="error">Where wrong use and trouble with files are told.</param>
    /// <param name="cancellation">Stops the work; nothing half-written is left.</param>
    public static async Task<int> RunAsync(string[] arguments, TextWriter output, TextWriter error, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(arguments);
        ArgumentNullException.ThrowIfNull(output);
        ArgumentNullException.ThrowIfNull(error);
        if (arguments.Length > 0 && Reserved.Contains(arguments[0]))
        {
            await error.WriteLineAsync($"\"{arguments[0]}\" is a later part of this tool and has not arrived yet.").ConfigureAwait(false);
            return ExitCodes.WrongUse;
        }

        var root = new RootCommand("Plans pins, mats and full-size printed guides for blocking shaped hand-made textiles.")
        {
            DemoCommand.Create(output, error),
            NewCommand.Create(output, error),
            CheckCommand.Create(output, error),
            PlanCommand.Create(output, error),
            PageCommand.Create(output, error),
        };
        var parsed = root.Parse(arguments);
        if (parsed.Errors.Count > 0)
        {
            // Some messages list the choices on lines of their own.
            var messages = parsed.Errors.Select(e => string.Join(' ', e.Message.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries))).Distinct();
            await error.WriteLineAsync($"{string.Join(' ', messages)} Try --help.").ConfigureAwait(false);
            return ExitCodes.WrongUse;
        }

        var configuration = new InvocationConfiguration { Output = output, Error = error, EnableDefaultExceptionHandler = false };
        try
        {
            return await parsed.InvokeAsync(configuration, cancellation).ConfigureAwait(false);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            await error.WriteLineAsync(e.Message).ConfigureAwait(false);
            return ExitCodes.FileTrouble;
        }
        catch (OperationCanceledException)
        {
            await error.WriteLineAsync("Stopped; nothing was written.").ConfigureAwait(false);
            return ExitCodes.FileTrouble;
        }
    }
}
