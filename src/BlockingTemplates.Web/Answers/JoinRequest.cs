namespace BlockingTemplates.Web.Answers;

/// <summary>The code that a screen says.</summary>
internal sealed record JoinRequest(string Code);
