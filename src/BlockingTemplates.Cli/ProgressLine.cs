using BlockingTemplates.Engine.Fabrics;

namespace BlockingTemplates.Cli;

/// <summary>Tells on one line of a terminal how far the computation is; the line is wiped at the end.</summary>
internal sealed class ProgressLine : IProgress<ComputingStep>, IDisposable
{
    private readonly TextWriter _terminal;
    private readonly Lock _lock = new();
    private int _width;

    private ProgressLine(TextWriter terminal) => _terminal = terminal;

    /// <summary>A line on the standard error where that is a terminal; else null.</summary>
    public static ProgressLine? On(TextWriter error) => ReferenceEquals(error, Console.Error) && !Console.IsErrorRedirected ? new(error) : null;

    /// <inheritdoc/>
    public void Report(ComputingStep value)
    {
        var text = $"The cloth: {value.Doing} ...";
        lock (_lock)
        {
            _terminal.Write($"\r{text.PadRight(_width)}");
            _width = text.Length;
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        lock (_lock)
        {
            if (_width > 0)
                _terminal.Write($"\r{new string(' ', _width)}\r");
            _width = 0;
        }
    }
}
