namespace BlockingTemplates.Web.Answers;

/// <summary>What came of an edit: the new version, and its answer unless a newer version overtook it.</summary>
internal sealed record EditAnswer(long Version, StageAnswer? Answer);
