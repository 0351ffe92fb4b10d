namespace BlockingTemplates.Web.Answers;

/// <summary>A problem or a note with its place in the project file.</summary>
internal sealed record FoundAnswer(string Path, string What, string Do, int? Line);
