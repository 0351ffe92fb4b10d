using BlockingTemplates.Web.Desk;

namespace BlockingTemplates.Web.Answers;

/// <summary>What a screen that listens is told: versions and progress, from which it knows whether to ask for more.</summary>
internal sealed record ChangeAnswer(long Version, long? AnsweredVersion, int? AnsweredStage, double? Part, string? Words, PinsSoFar? Pins);
