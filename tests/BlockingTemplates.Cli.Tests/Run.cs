namespace BlockingTemplates.Cli.Tests;

// What a command line answered and told.
internal sealed record Run(int Code, string Output, string Error)
{
    public IReadOnlyList<string> OutputLines => Output.Split('\n', StringSplitOptions.RemoveEmptyEntries);

    public IReadOnlyList<string> ErrorLines => Error.Split('\n', StringSplitOptions.RemoveEmptyEntries);

    public IReadOnlyList<string> Problems => [.. OutputLines.Where(l => l.StartsWith("problem: ", StringComparison.Ordinal))];

    public IReadOnlyList<string> Notes => [.. OutputLines.Where(l => l.StartsWith("note: ", StringComparison.Ordinal))];
}
