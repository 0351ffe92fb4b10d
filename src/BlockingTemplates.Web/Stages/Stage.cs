namespace BlockingTemplates.Web.Stages;

/// <summary>One stage of the engine: computes a version, or what the stage before found of it further; null where it has nothing to add.</summary>
/// <param name="request">The version.</param>
/// <param name="before">What the stage before found, or null for the first.</param>
/// <param name="progress">Takes how far it has come.</param>
/// <param name="cancellation">Set when a newer version makes the answer useless.</param>
internal delegate StageResult? Stage(StageRequest request, StageResult? before, Action<StageProgress> progress, CancellationToken cancellation);
