namespace BlockingTemplates.Web.Answers;

/// <summary>What a new working copy is made of: a shipped example, blanks for a shape, or a file from the maker's disk.</summary>
internal sealed record NewCopy
{
    public string? Example { get; init; }

    public string? Shape { get; init; }

    public string? Units { get; init; }

    public string? Name { get; init; }

    public string? Text { get; init; }

    public IReadOnlyList<NewBeside>? Beside { get; init; }
}
