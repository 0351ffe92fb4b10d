using BlockingTemplates.Engine.Projects.Files;

namespace BlockingTemplates.Web.Stages;

/// <summary>A version of a project file to be computed.</summary>
/// <param name="Version">Its version: greater is newer.</param>
/// <param name="Text">The file's bytes.</param>
/// <param name="Beside">Gives files that stand beside it.</param>
internal sealed record StageRequest(long Version, byte[] Text, Func<string, FileBeside> Beside);
