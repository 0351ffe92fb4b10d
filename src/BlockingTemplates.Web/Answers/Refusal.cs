namespace BlockingTemplates.Web.Answers;

/// <summary>Why a request was refused.</summary>
internal sealed record Refusal(string What);
