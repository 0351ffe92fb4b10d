namespace BlockingTemplates.Web.Answers;

/// <summary>A working copy in a list; its title is empty where its text has none.</summary>
internal sealed record CopyAnswer(string Id, string Name, string Title, long Version, string? FilePath, bool IsSaved, IReadOnlyList<string> Beside);
