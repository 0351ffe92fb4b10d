using BlockingTemplates.Engine.Projects.Files;

namespace BlockingTemplates.Cli;

/// <summary>The folder a project file stands in: gives files of it by their plain names, and nothing from anywhere else.</summary>
/// <param name="folder">The folder.</param>
internal sealed class FolderBeside(string folder)
{
    /// <summary>The file of a plain name; no folder, no link, nothing over 5 MB.</summary>
    public FileBeside Read(string name)
    {
        if (!FileBeside.IsPlainName(name) || Path.GetFileName(name) != name)
            return new(null, $"{name} is not the plain name of a file.");
        try
        {
            var file = new FileInfo(Path.Combine(folder, name));
            if (!file.Exists)
                return new(null, $"{name} was not found beside the project file.");
            if (file.LinkTarget is not null)
                return new(null, $"{name} is a link; it was not followed.");
            if (file.Length > FileBeside.MostBytes)
                return new(null, $"{name} has more than the {FileBeside.MostBytes} bytes of 5 MB; it was not read.");
            return new(File.ReadAllBytes(file.FullName), null);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return new(null, $"{name} cannot be read: {e.Message}");
        }
    }
}
