namespace BlockingTemplates.Web.Answers;

/// <summary>A working copy in a list.</summary>
internal sealed record CopyAnswer(string Id, string Name, long Version, string? FilePath, bool IsSaved, IReadOnlyList<string> Beside);
