namespace BlockingTemplates.Web.Answers;

/// <summary>A shipped example: its file name without the ending, and its title.</summary>
internal sealed record ExampleAnswer(string Name, string Title);
