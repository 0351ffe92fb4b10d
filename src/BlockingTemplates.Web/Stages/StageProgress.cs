namespace BlockingTemplates.Web.Stages;

/// <summary>How far a slow stage has come.</summary>
/// <param name="Version">The version it computes.</param>
/// <param name="Part">From 0 to 1.</param>
/// <param name="Words">What it is doing.</param>
internal sealed record StageProgress(long Version, double Part, string Words);
