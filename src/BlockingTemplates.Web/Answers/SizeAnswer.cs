namespace BlockingTemplates.Web.Answers;

/// <summary>A measurement of a kind of piece.</summary>
internal sealed record SizeAnswer(string Name, string Words, string How, bool IsAsked, string? InsteadOf);
