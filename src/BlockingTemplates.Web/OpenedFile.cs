using BlockingTemplates.Engine.Projects.Files;

namespace BlockingTemplates.Web;

/// <summary>A project file that the page is started with and may save to.</summary>
/// <param name="Path">Its full path.</param>
/// <param name="Bytes">What it holds.</param>
/// <param name="Beside">Gives files that stand beside it, or null where there are none.</param>
public sealed record OpenedFile(string Path, byte[] Bytes, Func<string, FileBeside>? Beside = null);
