using System.CommandLine;
using System.ComponentModel;
using System.Diagnostics;
using BlockingTemplates.Engine.Projects;
using BlockingTemplates.Web;

namespace BlockingTemplates.Cli.Commands;

/// <summary>Starts the page in the browser and answers until it is stopped.</summary>
internal static class PageCommand
{
    private const int HighestPort = 65535;

    public static Command Create(TextWriter output, TextWriter error)
    {
        var file = new Argument<string?>("FILE") { Description = "The project file to begin with.", Arity = ArgumentArity.ZeroOrOne };
        file.Validators.Add(FileWords.RefuseOptions);
        var port = new Option<int?>("--port") { Description = $"The port to answer on, 0 for any free one; {PageSettings.UsualPort} unless given.", HelpName = "N" };
        port.Validators.Add(parsed =>
        {
            if (parsed.Tokens is [var said] && (!int.TryParse(said.Value, out var number) || number is < 0 or > HighestPort))
                parsed.AddError($"--port takes a number from 0 to {HighestPort}.");
        });
        var noOpen = new Option<bool>("--no-open") { Description = "Do not open the browser." };
        var share = new Option<bool>("--share") { Description = "Answer on the home network too, to screens that say the code." };
        var pinning = new Option<bool>("--pinning") { Description = "Begin with the part for pinning." };
        var state = new Option<string?>("--state") { Description = "The folder in which work is kept; one in your home unless given.", HelpName = "DIR" };
        var command = new Command("page", "Starts the page in the browser: measure, see, print, pin.") { file, port, noOpen, share, pinning, state };
        command.SetAction((parsed, cancellation) =>
        {
            var named = parsed.GetValue(file);
            var settings = new PageSettings(Path.GetFullPath(parsed.GetValue(state) ?? UsualState()))
            {
                Port = parsed.GetValue(port),
                Opened = named is null ? null : Opened(named),
                Share = parsed.GetValue(share),
                Pinning = parsed.GetValue(pinning),
            };
            return RunAsync(settings, !parsed.GetValue(noOpen), output, error, cancellation);
        });
        return command;
    }

    private static string UsualState() =>
        Path.Combine(Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData, Environment.SpecialFolderOption.DoNotVerify), "blocking-templates", "page");

    private static OpenedFile Opened(string path)
    {
        var text = ProjectText.Load(path);
        return ProjectReader.TooLong(text.Length) is { } tooLong
            ? throw new IOException($"{path}: {tooLong.What}")
            : new(Path.GetFullPath(path), text.Bytes, text.Folder is { } folder ? new FolderBeside(folder).Read : null);
    }

    private static async Task<int> RunAsync(PageSettings settings, bool opens, TextWriter output, TextWriter error, CancellationToken cancellation)
    {
        await using var server = await PageServer.StartAsync(settings, cancellation).ConfigureAwait(false);
        await output.WriteLineAsync($"The page is at {server.Address}").ConfigureAwait(false);
        await output.WriteLineAsync($"Work is kept in {settings.StateFolder}").ConfigureAwait(false);
        if (server.JoinCode is { } code)
        {
            await output.WriteLineAsync(server.JoinAddress is { } address
                ? $"Other screens on this network: {address} (the code {code} works once; the page shows the next one)\n{server.JoinPicture}"
                : "This machine is on no network; only its own browser reaches the page.").ConfigureAwait(false);
        }

        await output.WriteLineAsync("Ctrl+C ends it.").ConfigureAwait(false);
        if (opens)
            Open(server.Address, error);
        try
        {
            await Task.Delay(Timeout.Infinite, cancellation).ConfigureAwait(false);
        }
        catch (OperationCanceledException)
        {
            await output.WriteLineAsync("Ended; everything typed is kept.").ConfigureAwait(false);
        }

        return ExitCodes.Done;
    }

    private static void Open(string address, TextWriter error)
    {
        try
        {
            using var browser = Process.Start(new ProcessStartInfo(address) { UseShellExecute = true });
        }
        catch (Exception e) when (e is Win32Exception or InvalidOperationException or PlatformNotSupportedException or FileNotFoundException)
        {
            error.WriteLine($"No browser could be opened; open {address} yourself.");
        }
    }
}
